import type { Client } from './client.js'
import { pause } from './retry.js'
import type { components } from './schema.js'

/** Sets of signs that the service keeps: handing them in, and waiting for their reports. */

export type Submittal = components['schemas']['Submittal']

/** A drawing, a zip, a schedule or a description. */
export interface NamedFile {
  name: string
  content: Uint8Array | string | Blob
}

export interface SubmitOptions {
  name?: string
  standards?: string[]
  options?: components['schemas']['CheckOptions']
  /** Names this upload, so that it is kept once however often it is sent. Without it a random one is made. */
  idempotencyKey?: string
  signal?: AbortSignal
}

/** Uploads a set of signs. When this ends, all of it is kept. @throws {ProblemError} */
export async function submit(
  client: Client,
  files: readonly NamedFile[],
  { name, standards, options, idempotencyKey = globalThis.crypto.randomUUID(), signal }: SubmitOptions = {},
): Promise<Submittal> {
  const form = new FormData()
  if (name !== undefined) form.append('name', name)
  if (standards) form.append('standards', standards.join(','))
  if (options) form.append('options', JSON.stringify(options))
  for (const { name, content } of files) form.append('files', new Blob([content]), name)
  const { data } = await client.POST('/v1/submittals', {
    params: { header: { 'Idempotency-Key': `"${idempotencyKey}"` } },
    body: { files: [] },
    bodySerializer: () => form,
    ...(signal && { signal }),
  })
  return present(data)
}

export interface WaitOptions {
  /** Told of the submittal each time that it was looked at. */
  onProgress?: (submittal: Submittal) => void
  signal?: AbortSignal
}

/** Milliseconds between two looks: at first, and at most. */
const FIRST_PAUSE = 200
const LONGEST_PAUSE = 5000

/**
 * Waits until every sign has its report or the submittal was cancelled.
 * @throws {ProblemError} @throws the reason of the signal when it says to stop
 */
export async function waitUntilDone(
  client: Client,
  submittal: string,
  { onProgress, signal }: WaitOptions = {},
): Promise<Submittal> {
  for (let wait = FIRST_PAUSE; ; wait = Math.min(2 * wait, LONGEST_PAUSE)) {
    const { data } = await client.GET('/v1/submittals/{submittal}', {
      params: { path: { submittal } },
      ...(signal && { signal }),
    })
    const now = present(data)
    onProgress?.(now)
    if (now.state === 'done' || now.state === 'cancelled') return now
    await pause(wait, signal)
  }
}

export type SignOfSet = components['schemas']['SubmittalSignList']['signs'][number]

/** The signs of a submittal with their reports, page by page. @throws {ProblemError} */
export async function* signsOf(client: Client, submittal: string): AsyncGenerator<SignOfSet> {
  let cursor: string | null = null
  do {
    const query: { cursor?: string } = cursor === null ? {} : { cursor }
    const answer: { data?: components['schemas']['SubmittalSignList'] } = await client.GET(
      '/v1/submittals/{submittal}/signs',
      {
        params: { path: { submittal }, query },
      },
    )
    const { signs, next } = present(answer.data)
    yield* signs
    cursor = next
  } while (cursor !== null)
}

/** A success always has its answer. */
function present<T>(data: T | undefined): T {
  if (data === undefined) throw new Error('The service answered with success and without an answer.')
  return data
}
