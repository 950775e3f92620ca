import { execFile } from 'node:child_process'
import { randomUUID } from 'node:crypto'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { createParser } from 'eventsource-parser'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { asking, proveSubmittal } from '../faults/proof.js'
import { startProcess, type RunningProcess } from '../faults/process.js'
import { signsNamed } from '../faults/set.js'
import { Postgres, WITHOUT_POSTGRES } from '../submittals/postgres.js'
import { balance, type Balancer } from './proxy.js'

/**
 * Two processes on one PostgreSQL behind a load balancer that sends each request to the other one in turn: no client can tell that
 * there are two. Then one of them is killed. Expectations: RFC 6750 (keys), RFC 6265 (cookies), the draft on Idempotency-Key
 * (draft-ietf-httpapi-idempotency-key-header-07), WHATWG HTML 9.2 (events). Signs are invented.
 */

const LONGEST = 180_000
const KEYS = fileURLToPath(new URL('../../dist/keys-command.js', import.meta.url))

interface Progress {
  id: string
  state: string
  signs: { total: number; done: number }
}

describe.skipIf(WITHOUT_POSTGRES)('two processes behind a load balancer', () => {
  let postgres: Postgres
  let url: string
  let processes: RunningProcess[] = []
  let front: Balancer
  let key: string

  beforeAll(async () => {
    postgres = await Postgres.make()
    url = await postgres.database()
    const environment = { DATABASE_URL: url, AUTH: 'keys', RATE_LIMIT: '0' }
    processes = await Promise.all([startProcess(environment), startProcess(environment)])
    front = await balance(processes.map(({ base }) => base))
    const order = ['--disable-warning=ExperimentalWarning', KEYS, 'create', '--organisation', 'Kiln', '--label', 'Shop']
    const made = await promisify(execFile)(process.execPath, order, {
      env: { PATH: process.env.PATH, DATABASE_URL: url },
    })
    key = made.stdout.trim()
  }, LONGEST)
  afterAll(async () => {
    await front.close()
    await Promise.all(processes.map(({ end }) => end('SIGKILL')))
    await postgres.remove()
  }, LONGEST)

  const ask = (path: string, init: RequestInit = {}) =>
    fetch(front.base + path, {
      redirect: 'manual',
      ...init,
      headers: { authorization: `Bearer ${key}`, ...(init.headers as Record<string, string>) },
    })
  const byBoth = (answers: Response[]) => new Set(answers.map(({ headers }) => headers.get('x-served-by'))).size === 2
  const upload = (prefix: string, count: number, headers: Record<string, string> = {}) =>
    ask('/v1/submittals', {
      method: 'POST',
      headers: { 'content-type': 'application/json', ...headers },
      body: JSON.stringify({ name: prefix, signs: signsNamed(prefix, count) }),
    })
  const progressOf = async (id: string) => (await (await ask(`/v1/submittals/${id}`)).json()) as Progress
  const done = (id: string) =>
    expect.poll(async () => (await progressOf(id).catch(() => undefined))?.state, { timeout: LONGEST }).toBe('done')

  it('know a key that was made beside them, and refuse another one, whichever is asked', async () => {
    const answers = [await ask('/v1/submittals'), await ask('/v1/submittals')]
    expect([answers.map(({ status }) => status), byBoth(answers)]).toEqual([[200, 200], true])
    const wrong = { headers: { authorization: 'Bearer fingertrue_none' } }
    const refused = [await ask('/v1/submittals', wrong), await ask('/v1/submittals', wrong)]
    expect([refused.map(({ status }) => status), byBoth(refused)]).toEqual([[401, 401], true])
  })

  it('share the session of somebody who signed in at one of them', async () => {
    const signedIn = await fetch(`${front.base}/sign-in`, {
      method: 'POST',
      redirect: 'manual',
      headers: { 'content-type': 'application/x-www-form-urlencoded', origin: front.base },
      body: new URLSearchParams({ key }).toString(),
    })
    expect(signedIn.status).toBe(303)
    const cookie = signedIn.headers
      .getSetCookie()
      .map((one) => one.split(';')[0])
      .join('; ')
    const pages = await Promise.all(
      [1, 2].map(() => fetch(`${front.base}/submittals`, { headers: { cookie }, redirect: 'manual' })),
    )
    expect([pages.map(({ status }) => status), byBoth(pages)]).toEqual([[200, 200], true])
  })

  it(
    'do once what is asked for twice with one Idempotency-Key',
    async () => {
      const headers = { 'idempotency-key': randomUUID() }
      const answers = [await upload('I', 3, headers), await upload('I', 3, headers)]
      expect([answers.map(({ status }) => status), byBoth(answers)]).toEqual([[202, 202], true])
      const [first, second] = await Promise.all(answers.map(async (one) => (await one.json()) as Progress))
      expect(second?.id).toBe(first?.id)
      await done(first?.id ?? '')
      const rows = await asking({ url }, (all) => all(`SELECT id FROM submittals WHERE name = 'I'`))
      expect(rows).toHaveLength(1)
    },
    LONGEST,
  )

  it(
    'stream the progress of a set whichever of them checks it',
    async () => {
      const { id } = (await (await upload('E', 40)).json()) as Progress
      const events: string[] = []
      const parser = createParser({ onEvent: ({ event = 'message' }) => void events.push(event) })
      const stream = await ask(`/v1/submittals/${id}/events`)
      const text = new TextDecoder()
      for await (const chunk of stream.body ?? []) parser.feed(text.decode(chunk as Uint8Array, { stream: true }))
      expect([stream.status, events.at(-1)]).toEqual([200, 'done'])
      expect(await progressOf(id)).toMatchObject({ state: 'done', signs: { total: 40, done: 40 } })
    },
    LONGEST,
  )

  // The last one, since one process is gone afterwards.
  it(
    'lose nothing that was acknowledged when one of them is killed',
    async () => {
      const signs = signsNamed('K', 150)
      const { id } = (await (await upload('K', 150)).json()) as Progress
      const more = upload('L', 150).then(
        async (answer) => (answer.status === 202 ? ((await answer.json()) as Progress).id : undefined),
        // Not acknowledged: the connection broke, and the client knows nothing.
        () => undefined,
      )
      await expect.poll(async () => (await progressOf(id)).signs.done, { timeout: LONGEST }).toBeGreaterThan(10)
      await processes[0]?.end('SIGKILL')
      const other = await more
      await done(id)
      await asking({ url }, (all) =>
        proveSubmittal(
          all,
          id,
          signs.map(({ mark }) => mark),
        ),
      )
      if (other !== undefined) {
        await done(other)
        await asking({ url }, (all) =>
          proveSubmittal(
            all,
            other,
            signsNamed('L', 150).map(({ mark }) => mark),
          ),
        )
      }
      // All is answered by the one that is left.
      const answers = await Promise.all([1, 2, 3, 4].map(() => ask('/v1/submittals')))
      expect(answers.map(({ status, headers }) => [status, headers.get('x-served-by')])).toEqual(
        Array(4).fill([200, '1']),
      )
    },
    LONGEST,
  )
})
