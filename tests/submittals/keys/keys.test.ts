import { setTimeout as wait } from 'node:timers/promises'
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest'
import { AtLimit, NotKept, type Keeping } from '../../../src/submittals/keeping.js'
import { KeyRing, REMEMBERED_SECONDS } from '../../../src/submittals/keys/key-ring.js'
import { createKey, listKeys, MOST_KEYS, revokeKey, type NewKey } from '../../../src/submittals/keys/keys.js'
import { organisationNamed } from '../../../src/submittals/keys/organisations.js'
import { closeSession, openSession, SESSION_LENGTH, sessionHolder } from '../../../src/submittals/keys/sessions.js'
import { readToken } from '../../../src/submittals/keys/token.js'
import { TableQueue } from '../../../src/submittals/queue/table-queue.js'
import { openStore, type Place, type Store } from '../../../src/submittals/store/connect.js'
import { Postgres, WITHOUT_POSTGRES } from '../postgres.js'

/** Keys and sessions in both stores. Labels, names and times are invented. */

const KEY: NewKey = { label: 'Inspector', scopes: ['read', 'write'], expires: null, rate: null }
const fail = (error: unknown): never => {
  throw error
}

let postgres: Postgres | undefined
const PLACES: [string, () => Promise<Place | undefined>][] = [
  ['SQLite', () => Promise.resolve(undefined)],
  [
    'PostgreSQL',
    async () => {
      postgres ??= await Postgres.make()
      return { url: await postgres.database() }
    },
  ],
]
afterAll(() => postgres?.remove())
afterEach(() => vi.useRealTimers())

describe.each(PLACES)('keys in %s', (name, place) => {
  const test = it.skipIf(name === 'PostgreSQL' && WITHOUT_POSTGRES)
  let store: Store
  let keeping: Keeping
  let ours: string
  beforeAll(async () => {
    if (name === 'PostgreSQL' && WITHOUT_POSTGRES) return
    // A connection that is idle when the server stops is no fault here.
    store = await openStore(await place(), () => undefined)
    keeping = { store, queue: new TableQueue(store.db), awaken: () => undefined }
    ours = (await organisationNamed(store.db, 'Kiln & Wheel')).id
  })
  afterAll(() => store?.close())
  const ring = () => new KeyRing(store.db, fail)

  test('an organisation of one name is made once, also by several at the same time', async () => {
    const made = await Promise.all([1, 2, 3].map(() => organisationNamed(store.db, 'Glaze Lab')))
    expect(new Set(made.map(({ id }) => id)).size).toBe(1)
    expect(made[0]?.id).not.toBe(ours)
  })

  test('the secret is nowhere kept, and whoever shows it is known', async () => {
    const { row, token } = await createKey(store.db, ours, KEY)
    const secret = readToken(token)?.secret ?? ''
    expect(JSON.stringify(await listKeys(store.db))).not.toContain(secret)
    expect(await ring().holder(token)).toEqual({
      key: row.id,
      actor: { organisation: ours, name: 'Inspector' },
      scopes: ['read', 'write'],
      rate: null,
    })
  })

  test('the right id with another secret, and another id with the right secret, are nobody', async () => {
    const [one, two] = [await createKey(store.db, ours, KEY), await createKey(store.db, ours, KEY)]
    const swapped = one.token.replace(one.row.id, two.row.id)
    expect(await ring().holder(swapped)).toBeUndefined()
    expect(await ring().holder(one.token.replace(one.row.id, 'A'.repeat(12)))).toBeUndefined()
    expect(await ring().holder(one.token)).toBeDefined()
  })

  test('two keys work at once, and revoking one leaves the other', async () => {
    const [old, next] = [await createKey(store.db, ours, KEY), await createKey(store.db, ours, KEY)]
    await revokeKey(store.db, old.row.id, ours)
    expect(await ring().holder(old.token)).toBeUndefined()
    expect(await ring().holder(next.token)).toBeDefined()
    const at = async () => (await listKeys(store.db, ours)).find(({ id }) => id === old.row.id)?.revoked_at
    const first = await at()
    expect(first).toBeTypeOf('string')
    await wait(5)
    await revokeKey(store.db, old.row.id, ours)
    expect(await at()).toBe(first)
  })

  test('a process that remembers a key forgets it after the time that is said, or when it is told', async () => {
    vi.useFakeTimers({ toFake: ['performance'] })
    const [here, elsewhere] = [ring(), ring()]
    const { row, token } = await createKey(store.db, ours, KEY)
    expect(await here.holder(token)).toBeDefined()
    expect(await elsewhere.holder(token)).toBeDefined()
    await revokeKey(store.db, row.id)
    here.forget(row.id)
    expect(await here.holder(token)).toBeUndefined()
    vi.advanceTimersByTime(REMEMBERED_SECONDS * 1000 + 1)
    expect(await elsewhere.holder(token)).toBeUndefined()
  })

  test('a key works on its last day and not after it, although it is remembered', async () => {
    const { token } = await createKey(store.db, ours, { ...KEY, expires: '2031-03-31' })
    const known = ring()
    vi.useFakeTimers({ toFake: ['Date'], now: new Date('2031-03-31T23:59:59.000Z') })
    expect(await known.holder(token)).toBeDefined()
    expect(await openSession(keeping, token)).toBeDefined()
    vi.setSystemTime(new Date('2031-04-01T00:00:00.000Z'))
    expect(await known.holder(token)).toBeUndefined()
    expect(await openSession(keeping, token)).toBeUndefined()
  })

  test('its last use is noted, once a minute at most', async () => {
    const { row, token } = await createKey(store.db, ours, KEY)
    const used = async () => (await listKeys(store.db, ours)).find(({ id }) => id === row.id)?.last_used_at
    expect(await used()).toBeNull()
    vi.useFakeTimers({ toFake: ['Date'], now: new Date('2030-01-01T08:00:00.000Z') })
    const known = ring()
    await known.holder(token)
    vi.setSystemTime(new Date('2030-01-01T08:00:59.000Z'))
    await known.holder(token)
    expect(await used()).toBe('2030-01-01T08:00:00.000Z')
    vi.setSystemTime(new Date('2030-01-01T08:01:01.000Z'))
    await known.holder(token)
    expect(await used()).toBe('2030-01-01T08:01:01.000Z')
  })

  test('a key of another organisation cannot be revoked, and one that is not there neither', async () => {
    const theirs = await organisationNamed(store.db, 'Seed Library')
    const { row, token } = await createKey(store.db, theirs.id, KEY)
    await expect(revokeKey(store.db, row.id, ours)).rejects.toThrow(NotKept)
    await expect(revokeKey(store.db, 'A'.repeat(12))).rejects.toThrow(NotKept)
    expect(await ring().holder(token)).toBeDefined()
    expect((await listKeys(store.db, theirs.id)).map(({ id }) => id)).toEqual([row.id])
  })

  test('only so many keys work at once; those that ended do not count', async () => {
    const { id } = await organisationNamed(store.db, 'Many Keys')
    const first = await createKey(store.db, id, KEY)
    await createKey(store.db, id, { ...KEY, expires: '2020-01-01' })
    for (let made = 1; made < MOST_KEYS; made++) await createKey(store.db, id, KEY)
    await expect(createKey(store.db, id, KEY)).rejects.toThrow(AtLimit)
    await revokeKey(store.db, first.row.id)
    await createKey(store.db, id, KEY)
  })

  test('a session is its key, until it is closed, grows old or its key is revoked', async () => {
    const { row, token } = await createKey(store.db, ours, KEY)
    const open = async () => (await openSession(keeping, token)) ?? ''
    const session = await open()
    expect(await sessionHolder(keeping, session)).toMatchObject({ key: row.id, actor: { name: 'Inspector' } })
    const kept = await store.db.selectFrom('sessions').selectAll().execute()
    expect(JSON.stringify(kept)).not.toContain(session)

    await closeSession(keeping, session)
    expect(await sessionHolder(keeping, session)).toBeUndefined()

    const old = await open()
    vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + SESSION_LENGTH + 1 })
    expect(await sessionHolder(keeping, old)).toBeUndefined()
    vi.useRealTimers()

    const last = await open()
    await revokeKey(store.db, row.id)
    expect(await sessionHolder(keeping, last)).toBeUndefined()
    expect(await openSession(keeping, token)).toBeUndefined()
    expect(await openSession(keeping, 'no key')).toBeUndefined()
  })
})
