import { createHash, webcrypto } from 'node:crypto'
import type { FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import type { Keeping } from '../../submittals/keeping.js'
import {
  CLAIM_SECONDS,
  claimKey,
  giveBack,
  keepAnswer,
  REPLAY_HOURS,
  type Claim,
  type KeptAnswer,
} from '../../submittals/replays.js'
import type { InTransaction } from '../../submittals/store/tables.js'
import { actorOf } from '../actor.js'
import { LongJson } from '../json.js'
import { ServiceProblem } from '../problems.js'

/** Requests that create: their answer is made and kept in the transaction that creates, so that it can be given again. */

export interface Answer {
  status: number
  headers?: Record<string, string>
  body: unknown
}

/** To be called as the last thing of the transaction. */
export type Keep = (transaction: InTransaction, answer: Answer) => Promise<void>

const LONGEST_KEY = 255
/** Seconds after which a request that is still being answered may be sent again. */
const RETRY = '2'

export const OnceHeaders = z.object({
  'Idempotency-Key': z
    .string()
    .optional()
    .describe(
      `Names this request: sent again with the same key and the same body within ${REPLAY_HOURS} hours, it gets the same answer and creates nothing more. A quoted string of 1 to ${LONGEST_KEY} characters (draft-ietf-httpapi-idempotency-key-header-07); without quotes it is taken as well.`,
    ),
})

/**
 * Has something made once. @param content what the request says, to tell it from others
 * @throws {ServiceProblem} `idempotency-key-reused`, `request-in-progress`, `malformed-request`
 */
export async function once(
  keeping: Keeping,
  request: FastifyRequest,
  reply: FastifyReply,
  content: readonly (Uint8Array | string)[],
  make: (keep: Keep) => Promise<unknown>,
): Promise<FastifyReply> {
  const key = keyIn(request)
  const claimed = key === undefined ? {} : await claim(keeping, request, key, content)
  if ('answer' in claimed) return send(reply, claimed.answer)
  const { claim: ours } = claimed
  let made: KeptAnswer | undefined
  try {
    await make(async (transaction, { status, headers = {}, body }) => {
      const answer = { status, headers, body: JSON.stringify(body) }
      if (ours && !(await keepAnswer(transaction, ours, answer))) throw inProgress()
      made = answer
    })
  } catch (error) {
    // Where the store is gone the claim runs out by itself.
    if (ours) await giveBack(keeping, ours).catch(() => undefined)
    throw error
  }
  if (!made) throw new Error('something was made and no answer kept')
  return send(reply, made)
}

/** The body of JSON as content. */
export const jsonContent = ({ body }: FastifyRequest): (Uint8Array | string)[] => [
  body instanceof LongJson ? body.bytes : JSON.stringify(body ?? null),
]

type Ours = { claim?: Claim } | { answer: KeptAnswer }

async function claim(
  keeping: Keeping,
  request: FastifyRequest,
  key: string,
  content: readonly (Uint8Array | string)[],
): Promise<Ours> {
  const path = request.url.split('?', 1)[0] ?? ''
  const claimed = await claimKey(keeping, actorOf(request), key, await digestOf([request.method, path, ...content]))
  if (claimed === 'reused')
    throw new ServiceProblem('idempotency-key-reused', 'The Idempotency-Key was sent before with another request.')
  if (claimed === 'running') throw inProgress()
  return claimed
}

const inProgress = (): ServiceProblem =>
  new ServiceProblem(
    'request-in-progress',
    `The request with this Idempotency-Key is still being answered. If it was lost, its key is free after ${CLAIM_SECONDS} seconds.`,
    [],
    undefined,
    { 'retry-after': RETRY },
  )

const send = (reply: FastifyReply, { status, headers, body }: KeptAnswer) =>
  reply.code(status).headers(headers).type('application/json; charset=utf-8').send(body)

/** A string of RFC 9651: printable ASCII in quotes, with quotes and backslashes escaped. */
const QUOTED = /^"((?:[ !#-[\]-~]|\\["\\])*)"$/u
/** A token of RFC 9651, beginning with whatever it may go on with: keys of many clients begin with a digit. */
const BARE = /^[!#$%&'*+\-.^_`|~:/=0-9A-Za-z]+$/u

/** @throws {ServiceProblem} `malformed-request` */
function keyIn(request: FastifyRequest): string | undefined {
  const header = request.headers['idempotency-key']
  if (header === undefined) return undefined
  const text = String(header)
  const key = BARE.test(text) ? text : QUOTED.exec(text)?.[1]?.replace(/\\(["\\])/gu, '$1')
  if (key !== undefined && key.length >= 1 && key.length <= LONGEST_KEY) return key
  const detail = `The Idempotency-Key must be one string of 1 to ${LONGEST_KEY} printable ASCII characters, in quotes.`
  throw new ServiceProblem('malformed-request', detail)
}

/** SHA-256 over the digests of the parts, which are made beside the event loop: an upload is long. */
async function digestOf(parts: readonly (Uint8Array | string)[]): Promise<string> {
  const whole = createHash('sha256')
  for (const part of parts) {
    const bytes = typeof part === 'string' ? new TextEncoder().encode(part) : part
    whole.update(new Uint8Array(await webcrypto.subtle.digest('SHA-256', bytes)))
  }
  return whole.digest('hex')
}
