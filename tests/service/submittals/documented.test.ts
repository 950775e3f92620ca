import { randomUUID } from 'node:crypto'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import type { ProblemType } from '../../../src/service/problem-table.js'
import { Problem, problemAddress } from '../../../src/service/problems.js'
import { LIMITS, DEFAULT_SETTINGS } from '../../../src/service/settings.js'
import { POTTERY_ROOM } from '../../../src/sign/examples.js'
import { MOST_ENDPOINTS } from '../../../src/submittals/webhooks/endpoints.js'
import { STUCK } from '../replays.js'
import { keptWorld, type KeptWorld } from './kept-world.js'

/** Each problem that the OpenAPI document promises for an operation on what is kept is provoked. The values are invented. */

interface Sent {
  method: string
  path: string
  headers: Record<string, string>
  body?: string
}
interface Answered {
  status: number
  body: unknown
}

const STUCK_EVIDENCE = new URL('./stuck-evidence.mjs', import.meta.url)
const EVIDENCE_WORKER = new URL('../../../dist/service/submittals/evidence-worker.js', import.meta.url)

let plain: KeptWorld
let busy: KeptWorld
let slow: KeptWorld
let operations: { id: string; method: string; path: string; problems: ProblemType[] }[]
beforeAll(async () => {
  const evidence = { ...DEFAULT_SETTINGS.evidence, worker: EVIDENCE_WORKER }
  plain = await keptWorld()
  busy = await keptWorld({ ...STUCK, evidence: { ...evidence, queueLimit: -1 } })
  slow = await keptWorld({ ...STUCK, queueLimit: 2, evidence: { ...evidence, worker: STUCK_EVIDENCE, timeLimit: 200 } })
  const Operation = z.object({
    operationId: z.string(),
    responses: z.record(z.string(), z.object({ content: z.record(z.string(), z.unknown()).optional() })),
  })
  const Examples = z.object({ examples: z.record(z.string(), z.unknown()).optional() })
  const { paths } = z
    .object({ paths: z.record(z.string(), z.record(z.string(), Operation)) })
    .parse((await request(plain.app.server).get('/openapi.json')).body)
  operations = Object.entries(paths)
    .filter(([path]) => /^\/(readyz|v1\/(submittals|webhooks))/.test(path))
    .flatMap(([path, methods]) =>
      Object.entries(methods).map(([method, { operationId, responses }]) => ({
        id: operationId,
        method,
        path,
        problems: Object.values(responses).flatMap(({ content }) =>
          Object.keys(Examples.parse(content?.['application/problem+json'] ?? {}).examples ?? {}),
        ) as ProblemType[],
      })),
    )
})
afterAll(() => Promise.all([plain, busy, slow].map(({ app }) => app.close())))

type Operation = (typeof operations)[number]

const BODIES: Record<string, unknown> = {
  createSubmittal: { signs: [{ sign: POTTERY_ROOM }] },
  addSigns: { signs: [{ sign: POTTERY_ROOM }] },
  addMeasurements: [{ quantity: 'braille.dotHeight', values: [0.7], unit: 'mm' }],
  setInstallation: { side: 'latch' },
  addWaiver: { fingerprint: 'f', reason: 'r', authority: 'a' },
  addNote: { text: 'seen' },
  createWebhook: { url: 'https://example.org/hook' },
}

async function webhookOf({ store, app }: KeptWorld): Promise<string> {
  await store.db.deleteFrom('endpoints').execute()
  const response = await request(app.server)
    .post('/v1/webhooks')
    .send(BODIES.createWebhook as object)
  return (response.body as { id: string }).id
}

/** The operation as it is done rightly. */
async function right(world: KeptWorld, { id, method, path }: Operation, given: Partial<KeptWorld> = {}): Promise<Sent> {
  const { submittal, sign } = { ...world, ...given }
  const names: Record<string, string> = { submittal, sign, revision: '1', waiver: 'wav_0', webhook: 'end_0' }
  if (id === 'createWebhook') await world.store.db.deleteFrom('endpoints').execute()
  if (path.includes('{webhook}')) names.webhook = await webhookOf(world)
  const body = BODIES[id]
  return {
    method,
    path: path.replace(/\{(\w+)\}/gu, (_, name: string) => names[name] ?? ''),
    headers: body === undefined ? {} : { 'content-type': 'application/json' },
    ...(body !== undefined && { body: JSON.stringify(body) }),
  }
}

async function send({ app }: KeptWorld, { method, path, headers, body }: Sent): Promise<Answered> {
  const response = await app.inject({
    method: method.toUpperCase() as 'GET',
    url: path,
    headers,
    ...(body !== undefined && { payload: body }),
  })
  return { status: response.statusCode, body: response.json<unknown>() }
}

async function inTrouble(is: 'away' | 'full', operation: Operation): Promise<Answered> {
  const sent = await right(plain, operation)
  plain.trouble.is = is
  try {
    return await send(plain, sent)
  } finally {
    plain.trouble.is = 'none'
  }
}

const withBody = (sent: Sent, body: string): Sent => ({ ...sent, body })
const withHeader = (sent: Sent, name: string, value: string): Sent => ({
  ...sent,
  headers: { ...sent.headers, [name]: value },
})

/** How each problem comes about, whichever operation it is. */
const PROVOKED: Partial<Record<ProblemType, (operation: Operation) => Promise<Answered>>> = {
  'not-found': async (operation) => {
    const sent = await right(plain, operation, { submittal: 'sub_0' })
    return send(plain, { ...sent, path: sent.path.replace(/end_\w+/, 'end_0') })
  },
  'invalid-parameters': async (operation) => {
    const sent = await right(plain, operation)
    return send(plain, { ...sent, path: `${sent.path}?colour=red` })
  },
  'store-unavailable': (operation) => inTrouble('away', operation),
  'storage-full': (operation) => inTrouble('full', operation),
  'malformed-json': async (operation) => send(plain, withBody(await right(plain, operation), '{')),
  'malformed-request': async (operation) =>
    send(plain, withHeader(await right(plain, operation), 'idempotency-key', '"')),
  'invalid-description': async (operation) => send(plain, withBody(await right(plain, operation), '{"colour":1}')),
  'no-signs': async (operation) => send(plain, withBody(await right(plain, operation), '{"signs":[{}]}')),
  'unknown-standard': async (operation) => {
    const body = { ...(BODIES[operation.id] as object), standards: ['none'] }
    return send(plain, withBody(await right(plain, operation), JSON.stringify(body)))
  },
  'unsupported-media-type': async (operation) =>
    send(plain, withHeader(await right(plain, operation), 'content-type', 'text/csv')),
  'too-large': async (operation) => {
    if (operation.method === 'get') return send(plain, await right(plain, operation, { submittal: plain.huge }))
    const sent = await right(plain, operation)
    return send(plain, withHeader(sent, 'content-length', String(LIMITS.upload + 1)))
  },
  'too-complex': async (operation) => send(slow, await right(slow, operation)),
  busy: async (operation) => {
    if (operation.id === 'isReady') {
      slow.app.drain()
      return send(slow, await right(slow, operation))
    }
    if (operation.id !== 'watchSubmittal') {
      const sent = await right(busy, operation)
      const both = await Promise.all([send(busy, sent), send(busy, sent)])
      return both.find(({ status }) => status === 503) ?? both[0]
    }
    const { streams } = LIMITS
    LIMITS.streams = 0
    try {
      return await send(plain, await right(plain, operation))
    } finally {
      LIMITS.streams = streams
    }
  },
  'not-now': async (operation) => {
    const { cancelled, cancelledSign, store } = plain
    const sent = await right(plain, operation, { submittal: cancelled, sign: cancelledSign })
    if (operation.id === 'cancelSubmittal') {
      await store.db.updateTable('submittals').set({ state: 'done', open: 0 }).where('id', '=', plain.huge).execute()
      return send(plain, { ...sent, path: sent.path.replace(cancelled, plain.huge) })
    }
    await store.db.updateTable('endpoints').set({ disabled_at: '2026-01-01T00:00:00.000Z' }).execute()
    return send(plain, sent)
  },
  'organisation-limit': async (operation) => {
    const sent = await right(plain, operation)
    for (let made = 0; made < MOST_ENDPOINTS; made++) await send(plain, sent)
    return send(plain, sent)
  },
  'idempotency-key-reused': async (operation) => {
    const key = randomUUID()
    const note = operations.find(({ id }) => id === 'addNote') ?? operation
    await send(plain, withHeader(withBody(await right(plain, note), '{"text":"other"}'), 'idempotency-key', key))
    return send(plain, withHeader(await right(plain, operation), 'idempotency-key', key))
  },
  'request-in-progress': async (operation) => {
    const key = randomUUID()
    const sent = withHeader(await right(plain, operation), 'idempotency-key', key)
    await send(plain, sent)
    const { db } = plain.store
    const created_at = new Date().toISOString()
    await db.updateTable('replays').set({ status: null, created_at }).where('key', '=', key).execute()
    return send(plain, sent)
  },
}

describe('every problem that is documented of an operation on what is kept', () => {
  it('is answered when it comes about', async () => {
    const different: string[] = []
    let provoked = 0
    for (const operation of operations)
      for (const type of operation.problems) {
        const answered = await PROVOKED[type]?.(operation)
        const problem = Problem.safeParse(answered?.body)
        if (problem.data?.type === problemAddress(type)) provoked++
        else different.push(`${operation.id} ${type}: ${answered?.status} ${JSON.stringify(answered?.body)}`)
      }
    expect(different).toEqual([])
    expect(provoked).toBeGreaterThan(100)
  })
})
