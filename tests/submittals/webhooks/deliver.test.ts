import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { NOBODY, type Keeping } from '../../../src/submittals/keeping.js'
import { TableQueue } from '../../../src/submittals/queue/table-queue.js'
import { openStore, type Store } from '../../../src/submittals/store/connect.js'
import { deliver } from '../../../src/submittals/webhooks/deliver.js'
import { addEndpoint, removeEndpoint } from '../../../src/submittals/webhooks/endpoints.js'
import type { Message, Sent } from '../../../src/submittals/webhooks/send.js'
import { tell } from '../../../src/submittals/webhooks/tell.js'

/** What becomes of a message whatever the receiver says (Standard Webhooks 1.0.0: retries, 410, addresses that fail for days). */

const START = Date.parse('2026-03-02T08:00:00Z')
const HOUR = 3600

let store: Store
let keeping: Keeping
let time: number
let sent: Message[]
beforeEach(async () => {
  store = await openStore(undefined, () => undefined)
  await store.db
    .insertInto('organisations')
    .values({ id: NOBODY.organisation, name: 'local', created_at: new Date(START).toISOString() })
    .execute()
  keeping = { store, queue: new TableQueue(store.db), awaken: () => undefined }
  time = START
  sent = []
})
afterEach(() => store.close())

async function endpoint(events: ('submittal.checked' | 'submittal.cancelled')[] | null = null): Promise<string> {
  let id = ''
  await addEndpoint(keeping, NOBODY, 'https://shop.example/', events, (_transaction, row) => {
    id = row.id
    return Promise.resolve()
  })
  return id
}

const news = (kind: 'submittal.checked' | 'submittal.cancelled' = 'submittal.checked') =>
  store.db
    .transaction()
    .execute((transaction) => tell(transaction, keeping.queue, NOBODY.organisation, kind, { submittal: 'sub_1' }))

const deliveries = () => store.db.selectFrom('deliveries').selectAll().orderBy('id').execute()
const endpoints = () => store.db.selectFrom('endpoints').selectAll().orderBy('id').execute()

const perform = (id: string, answer: Sent) =>
  deliver(
    { id: 'job', data: { delivery: id }, attempt: 1 },
    {
      store,
      send: (message) => {
        sent.push(message)
        return Promise.resolve(answer)
      },
    },
    () => new Date(time),
  )

/** Sends until nothing is left to do. @returns the seconds from the first sending to each */
async function all(id: string, answer: Sent): Promise<number[]> {
  const times: number[] = []
  for (;;) {
    times.push((time - START) / 1000)
    const again = await perform(id, answer)
    if (again === undefined) return times
    time += again * 1000
  }
}

describe('a message', () => {
  it('is queued with its news, once for each address that asked for it', async () => {
    await endpoint()
    await endpoint(['submittal.cancelled'])
    await news()
    await news('submittal.cancelled')
    expect((await deliveries()).map(({ kind }) => kind).sort()).toEqual([
      'submittal.cancelled',
      'submittal.cancelled',
      'submittal.checked',
    ])
    expect(await keeping.queue.take('notifications', 10)).toHaveLength(3)
  })

  it('is sent once when it is taken', async () => {
    await endpoint()
    await news()
    const [message] = await deliveries()
    expect(await perform(message?.id ?? '', { status: 200, retryAfter: 0 })).toBeUndefined()
    expect(await perform(message?.id ?? '', { status: 200, retryAfter: 0 })).toBeUndefined()
    expect(sent).toHaveLength(1)
    expect(JSON.parse(sent[0]?.body ?? '')).toMatchObject({ type: 'submittal.checked', data: { submittal: 'sub_1' } })
    expect(await deliveries()).toMatchObject([{ state: 'delivered', attempts: 1, last_status: 200 }])
  })

  it.each<[string, Sent]>([
    ['an error', { status: 500, retryAfter: 0 }],
    ['a redirect', { status: 302, retryAfter: 0 }],
    ['nothing', { error: 'No connection.' }],
  ])(
    'is sent ten times within four days to who answers with %s, and the address is then given up',
    async (_, answer) => {
      await endpoint()
      await news()
      const [message] = await deliveries()
      const times = await all(message?.id ?? '', answer)
      expect(times).toHaveLength(10)
      const least = [0, 5, 305, 2105, 2105 + 2 * HOUR, 2105 + 7 * HOUR, 2105 + 17 * HOUR, 2105 + 31 * HOUR]
      least.push(2105 + 51 * HOUR, 2105 + 75 * HOUR)
      for (const [i, seconds] of times.entries()) {
        expect(seconds).toBeGreaterThanOrEqual(least[i] ?? 0)
        expect(seconds).toBeLessThanOrEqual((least[i] ?? 0) * 1.1 + times.length)
      }
      expect(await deliveries()).toMatchObject([{ state: 'given-up', attempts: 10 }])
      const [address] = await endpoints()
      expect(address?.disabled_at).not.toBeNull()
      expect(address?.disabled_why).toMatch(/^It has taken nothing since 2026-03-02T08:00:00/u)
      // The same message has the same id and another time whenever it is sent.
      expect(new Set(sent.map(({ headers }) => headers['webhook-id'])).size).toBe(1)
      expect(new Set(sent.map(({ headers }) => headers['webhook-timestamp'])).size).toBe(10)
    },
  )

  it('is not sent again to an address that is gone, and nor is any other', async () => {
    await endpoint()
    await news()
    await news()
    const [first, second] = await deliveries()
    expect(await perform(first?.id ?? '', { status: 410, retryAfter: 0 })).toBeUndefined()
    expect(await perform(second?.id ?? '', { status: 200, retryAfter: 0 })).toBeUndefined()
    expect(sent).toHaveLength(1)
    expect((await deliveries()).map(({ state }) => state)).toEqual(['given-up', 'given-up'])
    expect(await endpoints()).toMatchObject([{ disabled_why: 'It answered with 410 (Gone).' }])
    await news()
    expect(await deliveries()).toHaveLength(2)
  })

  it('waits as long as a busy address asks for', async () => {
    await endpoint()
    await news()
    const [message] = await deliveries()
    expect(await perform(message?.id ?? '', { status: 503, retryAfter: 900 })).toBe(900)
    expect(await deliveries()).toMatchObject([{ state: 'waiting', attempts: 1, last_status: 503 }])
  })

  it('keeps an address that takes something in between', async () => {
    await endpoint()
    await news()
    await news()
    const [first, second] = await deliveries()
    await perform(first?.id ?? '', { status: 500, retryAfter: 0 })
    expect((await endpoints())[0]?.failing_since).not.toBeNull()
    time += 70 * HOUR * 1000
    await perform(second?.id ?? '', { status: 200, retryAfter: 0 })
    expect((await endpoints())[0]?.failing_since).toBeNull()
    time += 70 * HOUR * 1000
    expect(await perform(first?.id ?? '', { status: 500, retryAfter: 0 })).toBeDefined()
    expect((await endpoints())[0]?.disabled_at).toBeNull()
  })

  it('goes with its address', async () => {
    const id = await endpoint()
    await news()
    const [message] = await deliveries()
    await removeEndpoint(keeping, NOBODY, id)
    expect(await perform(message?.id ?? '', { status: 200, retryAfter: 0 })).toBeUndefined()
    expect(sent).toEqual([])
    expect(await deliveries()).toEqual([])
  })
})
