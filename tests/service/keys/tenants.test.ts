import type { FastifyInstance } from 'fastify'
import request, { type Response } from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { GuardedRoute } from '../../../src/service/keys/guard.js'
import { SCOPES } from '../../../src/submittals/keys/scopes.js'
import { GLAZE } from '../submittals/kept.js'
import { guarded, KEYED, type Guarded } from './guarded.js'

/**
 * One organisation never sees another's data. Every route of the service that names a kept thing is walked, as the service
 * itself lists them; a route that is added later is walked without a change here, and one with a parameter that is not known
 * here fails. All names and values are invented.
 */

/** Words of what “Kiln & Wheel” keeps; no answer to anybody else may hold one. */
const SECRETS = ['Bellweather', 'Crosscut', 'Driftwood', 'Everbloom']

let service: Guarded
let app: FastifyInstance
let ours: string
let theirs: string
/** Values of the parameters of addresses, all of them ours. */
let named: Record<string, string>

const as = (token: string) => ({ authorization: `Bearer ${token}` })

beforeAll(async () => {
  service = await guarded()
  app = service.app
  ours = await service.key(KEYED, { label: 'Bellweather' })
  theirs = await service.key(KEYED, { organisation: 'Seed Library', label: 'Librarian' })
  named = { key: ours.split('_')[1] ?? '', revision: '1', ...(await keepSomething()) }
}, 120_000)
afterAll(() => service.close())

async function keepSomething(): Promise<Record<string, string>> {
  const made = await request(app.server)
    .post('/v1/submittals')
    .set(as(ours))
    .field('name', 'Crosscut')
    .attach('files', GLAZE, 'Driftwood-1.svg')
    .expect(202)
  const submittal = (made.body as { id: string }).id
  const at = `/v1/submittals/${submittal}`
  let report: { findings: { fingerprint: string; verdict: string }[] } | undefined
  let sign = ''
  while (!report) {
    const list = await request(app.server).get(`${at}/signs`).set(as(ours)).expect(200)
    const [first] = (list.body as { signs: { id: string; report: typeof report }[] }).signs
    sign = first?.id ?? ''
    report = first?.report ?? undefined
  }
  const post = async (path: string, sent: object) =>
    (await request(app.server).post(path).set(as(ours)).send(sent).expect(201)).body as { id: string }
  const fingerprint = report.findings.find(({ verdict }) => verdict === 'fail')?.fingerprint ?? ''
  const waiver = await post(`${at}/signs/${sign}/waivers`, { fingerprint, reason: 'Everbloom', authority: 'V-1' })
  await post(`${at}/signs/${sign}/notes`, { text: 'Everbloom' })
  const webhooks = app.hasRoute({ method: 'POST', url: '/v1/webhooks' })
  const hook = webhooks ? await post('/v1/webhooks', { url: 'https://bellweather.example/hook' }) : { id: '' }
  return { submittal, sign, fingerprint, waiver: waiver.id, webhook: hook.id, endpoint: hook.id }
}

/** Pages and what is kept; problems and standards are everybody's. */
const KEPT = /^\/(v1\/(submittals|webhooks|keys)|submittals)\b/u

interface Call extends GuardedRoute {
  method: string
  path: string
}

/** Every call that names something kept. */
const calls = (): Call[] =>
  app.guarded
    .filter(({ url }) => KEPT.test(url) && url.includes(':'))
    .flatMap((route) => route.methods.map((method) => ({ ...route, method, path: filled(route.url) })))
    .sort((a, b) => Number(isChange(a)) - Number(isChange(b)))

const isChange = ({ method }: { method: string }): boolean => method !== 'GET' && method !== 'HEAD'

const filled = (url: string): string =>
  url.replace(/:(\w+)/gu, (_, name: string) => {
    const value = named[name]
    if (value === undefined) throw new Error(`Nothing is kept here for :${name} of ${url}.`)
    return value
  })

/** A body that the route takes: the example of the OpenAPI document, where it has one. */
async function bodyOf({ url, method }: Call): Promise<object | undefined> {
  const paths = (await app.describe()).paths as Record<
    string,
    Record<string, { requestBody?: Body } | undefined> | undefined
  >
  const operation = paths[url.replace(/:(\w+)/gu, '{$1}')]?.[method.toLowerCase()]
  const examples = operation?.requestBody?.content['application/json']?.examples ?? {}
  const body = Object.values(examples)[0]?.value
  if (body === undefined || !url.endsWith('/waivers')) return body as object | undefined
  return { ...(body as object), reason: 'of nobody' }
}
interface Body {
  content: Record<string, { examples?: Record<string, { value: unknown }> } | undefined>
}

async function send(
  call: Call,
  headers: Record<string, string>,
): Promise<{ status: number; text: string; location?: string }> {
  const form = call.access.for === 'signed-in' && isChange(call)
  const payload = form ? new URLSearchParams({ fingerprint: named.fingerprint ?? '' }).toString() : await bodyOf(call)
  const response = await app.inject({
    method: call.method as 'GET',
    url: call.path,
    headers: { ...headers, ...(form && { 'content-type': 'application/x-www-form-urlencoded' }) },
    ...(payload !== undefined && { payload }),
  })
  return { status: response.statusCode, text: response.body, location: response.headers.location }
}

const tellsNothing = (text: string) => {
  for (const secret of SECRETS) expect(text).not.toContain(secret)
}

/** What is kept, as its owner sees it. */
async function seen(): Promise<unknown[]> {
  const paths = ['', '/signs', '/history', `/signs/${named.sign}`].map(
    (path) => `/v1/submittals/${named.submittal}${path}`,
  )
  return Promise.all(
    [...paths, '/v1/keys'].map(async (path) => {
      const answer = await request(app.server).get(path).set(as(ours)).expect(200)
      // When a key was last used changes by looking.
      return JSON.parse(answer.text, (key, value: unknown) => (key === 'lastUsedAt' ? undefined : value)) as unknown
    }),
  )
}

describe('what one organisation keeps', () => {
  it('is walked: there are routes that read and change submittals, signs and what was added to them', () => {
    const walked = calls().map(({ method, url }) => `${method} ${url}`)
    for (const known of [
      'GET /v1/submittals/:submittal',
      'DELETE /v1/submittals/:submittal',
      'POST /v1/submittals/:submittal/signs',
      'GET /v1/submittals/:submittal/signs/:sign/reports/:revision',
      'DELETE /v1/submittals/:submittal/signs/:sign/waivers/:waiver',
      'DELETE /v1/keys/:key',
    ])
      expect(walked).toContain(known)
  })

  it('is not there for a key of another, whatever it asks for', async () => {
    const before = await seen()
    const session = { cookie: await service.session(theirs), 'sec-fetch-site': 'same-origin' }
    for (const call of calls()) {
      const { status, text } = await send(call, call.access.for === 'signed-in' ? session : as(theirs))
      expect(status, `${call.method} ${call.url}: ${text}`).toBe(404)
      tellsNothing(text)
    }
    expect(await seen()).toEqual(before)
  })

  it('is not there for a session of another where sessions are taken', async () => {
    const session = { cookie: await service.session(theirs), 'sec-fetch-site': 'same-origin' }
    const taken = calls().filter(({ access }) => access.for === 'keys' && access.sessions)
    expect(taken.length).toBeGreaterThan(3)
    for (const call of taken) {
      const { status, text } = await send(call, session)
      expect(status, `${call.method} ${call.url}`).toBe(404)
      tellsNothing(text)
    }
  })

  it('is closed to whoever has no key', async () => {
    for (const call of calls()) {
      const { status, text, location } = await send(call, {})
      if (call.access.for === 'signed-in') expect([status, location?.startsWith('/sign-in')]).toEqual([303, true])
      else expect(status, `${call.method} ${call.url}`).toBe(401)
      tellsNothing(text)
    }
  })

  it('is closed to a key of its own that lacks the scope', async () => {
    for (const call of calls()) {
      const { access } = call
      if (access.for !== 'keys' && access.for !== 'signed-in') throw new Error(`${call.url} asks for nothing`)
      const key = await service.key(SCOPES.filter((scope) => scope !== access.scope))
      const session = async () => ({ cookie: await service.session(key), 'sec-fetch-site': 'same-origin' })
      const { status, text } = await send(call, access.for === 'keys' ? as(key) : await session())
      expect(status, `${call.method} ${call.url}`).toBe(403)
      tellsNothing(text)
    }
  }, 60_000)

  it('is in no list of another, and no cursor or request key leads to it', async () => {
    const get = (path: string, token = theirs) => request(app.server).get(path).set(as(token)).expect(200)
    const lists = app.guarded.filter(
      ({ url, methods }) => KEPT.test(url) && !url.includes(':') && methods.includes('GET'),
    )
    expect(lists.map(({ url }) => url)).toEqual(expect.arrayContaining(['/v1/submittals', '/v1/keys']))
    for (const { url } of lists.filter(({ access }) => access.for === 'keys')) tellsNothing((await get(url)).text)

    const after = `${named.submittal}~`
    const [mine, their] = await Promise.all(
      [ours, theirs].map((token) => get(`/v1/submittals?cursor=${encodeURIComponent(after)}`, token)),
    )
    expect(mine?.text).toContain('Crosscut')
    tellsNothing(their?.text ?? 'Crosscut')

    const create = (token: string): PromiseLike<Response> =>
      request(app.server)
        .post('/v1/submittals')
        .set({ ...as(token), 'idempotency-key': '"same"' })
        .send({ name: 'Crosscut', signs: [{ sign: { use: 'permanent-room', lettering: [{ text: 'KILN' }] } }] })
    const [made, again, another] = [await create(ours), await create(ours), await create(theirs)]
    expect([made, again, another].map(({ status }) => status)).toEqual([202, 202, 202])
    const [id, same, other] = [made, again, another].map(({ body }) => (body as { id: string }).id)
    expect(same).toBe(id)
    expect(other).not.toBe(id)
  })

  it('is there for its owner at every one of these addresses', async () => {
    const session = { cookie: await service.session(ours), 'sec-fetch-site': 'same-origin' }
    const missing: string[] = []
    for (const known of calls().filter(({ url }) => !url.startsWith('/v1/keys'))) {
      // What one call changed or took away, the next one needs as it was.
      if (isChange(known)) named = { ...named, ...(await keepSomething()) }
      const call = { ...known, path: filled(known.url) }
      const { status, text } = await send(call, call.access.for === 'signed-in' ? session : as(ours))
      if ([401, 403, 404].includes(status)) missing.push(`${call.method} ${call.url} ${text}`)
    }
    expect(missing).toEqual([])
  }, 240_000)
})
