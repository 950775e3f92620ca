import { setTimeout as wait } from 'node:timers/promises'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { Postgres, WITHOUT_POSTGRES } from '../submittals/postgres.js'
import { startProcess, type RunningProcess } from './process.js'
import { asking, proveSubmittal } from './proof.js'
import { progressOf, send, signsNamed, untilDone, type Marked } from './set.js'

/** Several processes on one PostgreSQL: some are killed, one is frozen, and the database itself goes away for a while. */

const LONGEST = 300_000
/** Characters of the log of each process that are shown when a test fails. */
const LAST_WORDS = 4000

describe.skipIf(WITHOUT_POSTGRES)('processes that share one PostgreSQL', () => {
  let postgres: Postgres
  let url: string
  let running: RunningProcess[] = []
  beforeAll(async () => {
    postgres = await Postgres.make()
  })
  beforeEach(async () => {
    url = await postgres.database()
  })
  afterEach(async ({ task }) => {
    if (task.result?.state === 'fail') for (const { text } of running) console.error(text().slice(-LAST_WORDS))
    await Promise.all(running.map(({ end }) => end('SIGKILL')))
    running = []
  })
  afterAll(() => postgres.remove())

  const start = async (ROLE: 'api' | 'worker' | 'all') => {
    const made = await startProcess({ DATABASE_URL: url, ROLE })
    running.push(made)
    return made
  }

  const prove = (id: string, signs: readonly Marked[]) =>
    asking({ url }, (ask) =>
      proveSubmittal(
        ask,
        id,
        signs.map(({ mark }) => mark),
      ),
    )

  it(
    'two api and two worker processes do 1,000 signs once, one of each killed on the way',
    { timeout: LONGEST },
    async () => {
      // All four make the tables at the same moment.
      const [api, otherApi, worker] = await Promise.all([start('api'), start('api'), start('worker'), start('worker')])
      const signs = signsNamed('S', 1000)
      const told = await send(api.base, signs.slice(0, 500))
      expect(told).toMatchObject({ status: 202 })
      const id = told?.id ?? ''
      const more = send(otherApi.base, signs.slice(500), id)
      await untilDone(otherApi.base, id, 100)
      await worker.end('SIGKILL')
      await api.end('SIGKILL')
      expect((await more)?.status).toBe(202)
      expect(await untilDone(otherApi.base, id, 1000)).toMatchObject({
        state: 'done',
        signs: { total: 1000, done: 1000 },
      })
      await prove(id, signs)
    },
  )

  it('takes over the jobs of a frozen worker, and nothing doubles when it wakes', { timeout: LONGEST }, async () => {
    const [api, frozen, other] = await Promise.all([start('api'), start('worker'), start('worker')])
    const signs = signsNamed('F', 300)
    const told = await send(api.base, signs)
    expect(told).toMatchObject({ status: 202 })
    const id = told?.id ?? ''
    await untilDone(api.base, id, 60)
    frozen.child.kill('SIGSTOP')
    await untilDone(api.base, id, 300)
    frozen.child.kill('SIGCONT')
    await wait(3000)
    expect(await progressOf(api.base, id)).toMatchObject({ state: 'done', signs: { total: 300, done: 300 } })
    await prove(id, signs)
    // It is of use again.
    await other.end('SIGKILL')
    const again = signsNamed('G', 20)
    const second = await send(api.base, again)
    await untilDone(api.base, second?.id ?? '', 20)
    await prove(second?.id ?? '', again)
    expect(await frozen.end('SIGTERM')).toBe(0)
  })

  it(
    'says so while the database is away, loses nothing, and goes on when it is back',
    { timeout: LONGEST },
    async () => {
      const { base } = await start('all')
      const signs = signsNamed('D', 300)
      const id = (await send(base, signs))?.id ?? ''
      await untilDone(base, id, 50)
      for (const signal of ['SIGINT', 'SIGQUIT'] as const) {
        await postgres.stop(signal)
        expect(await send(base, signsNamed('never', 3))).toMatchObject({
          status: 503,
          type: '/docs/problems/store-unavailable',
          retryAfter: expect.stringMatching(/^\d+$/u) as string,
        })
        expect((await fetch(`${base}/v1/submittals/${id}`)).status).toBe(503)
        const ready = await fetch(`${base}/readyz`)
        expect([ready.status, ready.headers.get('retry-after')]).toEqual([503, expect.stringMatching(/^\d+$/u)])
        expect((await fetch(`${base}/livez`)).status).toBe(200)
        await wait(4000)
        await postgres.start()
        const { signs: before } = await progressOf(base, id)
        await untilDone(base, id, Math.min(300, before.done + 30))
        expect((await fetch(`${base}/readyz`)).status).toBe(200)
      }
      await untilDone(base, id, 300)
      await prove(id, signs)
      expect(await asking({ url }, (ask) => ask(`SELECT id FROM signs WHERE mark LIKE 'never%'`))).toEqual([])
    },
  )

  it('waits at its start for a database that is not up yet', { timeout: LONGEST }, async () => {
    await postgres.stop()
    const starting = start('all')
    await wait(4000)
    await postgres.start()
    const { base } = await starting
    expect((await fetch(`${base}/readyz`)).status).toBe(200)
  })
  it('does not wait for it without end', { timeout: LONGEST }, async () => {
    // Nothing listens on the discard port (RFC 863).
    const refused = startProcess({ DATABASE_URL: 'postgres://nobody@127.0.0.1:9/none' })
    await expect(refused).rejects.toThrow(/ECONNREFUSED/u)
  })
})
