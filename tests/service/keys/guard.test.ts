import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { SCOPES } from '../../../src/submittals/keys/scopes.js'
import type { ProblemAnswer } from '../running.js'
import { GLAZE } from '../submittals/kept.js'
import { guarded, KEYED, type Guarded } from './guarded.js'

/** Who is let in. Keys, names and addresses are invented; the header is RFC 6750, the site is W3C Fetch Metadata. */

let service: Guarded
let all: string
beforeAll(async () => {
  service = await guarded()
  all = await service.key(KEYED)
})
afterAll(() => service.close())

const ask = () => request(service.app.server)
const bearer = (token: string) => ({ authorization: `Bearer ${token}` })

describe('without a key', () => {
  it.each(['/livez', '/readyz', '/docs', '/docs/problems', '/docs/problems/unauthorized', '/openapi.json', '/'])(
    '%s is answered',
    async (path) => void (await ask().get(path).expect(200)),
  )

  it.each([
    ['no header', {}, undefined],
    ['another scheme', { authorization: 'Basic YTpi' }, undefined],
    ['a key in the address alone', {}, 'key=fingertrue_a_b'],
    ['a scheme without a key', { authorization: 'Bearer' }, undefined],
  ])('a call is refused, with the scheme that is asked for: %s', async (_, headers: Record<string, string>, query) => {
    const refused = await ask()
      .get('/v1/standards')
      .query(query ?? '')
      .set(headers)
      .expect(401)
    expect(refused.body as ProblemAnswer).toMatchObject({ type: '/docs/problems/unauthorized', status: 401 })
    expect(refused.headers['www-authenticate']).toBe('Bearer realm="Fingertrue"')
  })

  it('that works, the answer does not tell why not', async () => {
    const swapped = all.replace(/_\w{12}_/u, '_AAAAAAAAAAAA_')
    const answers = await Promise.all(
      ['wrong', swapped, `${all}0`].map((token) => ask().get('/v1/standards').set(bearer(token)).expect(401)),
    )
    expect(new Set(answers.map(({ body }) => (body as ProblemAnswer).detail)).size).toBe(1)
    expect(answers[0]?.headers['www-authenticate']).toBe('Bearer realm="Fingertrue", error="invalid_token"')
  })

  it.each([
    '/%76%31/standards',
    '//v1/standards',
    '/v1/./standards',
    '/v1/standards/',
    '/V1/standards',
    '/v1/standards?x',
  ])('the address written as %s leads no further', async (path) => {
    const response = await service.app.inject({ method: 'GET', url: path })
    expect([401, 404]).toContain(response.statusCode)
  })

  it('a large body is read away, so that the answer is seen', async () => {
    const response = await ask()
      .post('/v1/checks')
      .set('content-type', 'image/svg+xml')
      .send(Buffer.alloc(4_000_000, 32))
    expect(response.status).toBe(401)
  })
})

describe('with a key', () => {
  it('the scheme may be written in any case (RFC 9110, 11.1)', () =>
    ask()
      .get('/v1/standards')
      .set({ authorization: `bEaReR  ${all}` })
      .expect(200))

  it.each([
    ['check', 'post', '/v1/checks'],
    ['read', 'get', '/v1/submittals'],
    ['write', 'post', '/v1/submittals'],
    ['admin', 'get', '/v1/keys'],
  ] as const)('the scope %s is needed for %s %s, and no other does', async (needed, method, path) => {
    for (const scope of SCOPES) {
      const token = await service.key([scope])
      const call =
        method === 'get' ? ask().get(path) : ask().post(path).set('content-type', 'application/json').send('{')
      const answer = await call.set(bearer(token))
      if (scope === needed) expect([200, 400], scope).toContain(answer.status)
      else {
        expect(answer.status, scope).toBe(403)
        expect((answer.body as ProblemAnswer).detail).toContain(`“${needed}”`)
      }
    }
  })

  it('the history says its label', async () => {
    const token = await service.key(['read', 'write'], { label: 'R. Ferrante, city' })
    const made = await ask().post('/v1/submittals').set(bearer(token)).attach('files', GLAZE, 'G-1.svg').expect(202)
    const { id } = made.body as { id: string }
    const history = await ask().get(`/v1/submittals/${id}/history`).set(bearer(token)).expect(200)
    expect((history.body as { events: { actor: string }[] }).events[0]?.actor).toBe('R. Ferrante, city')
  })

  it('that ended, or was revoked through the service, nothing is answered any more', async () => {
    const ended = await service.key(KEYED, { expires: '2026-01-01' })
    await ask().get('/v1/standards').set(bearer(ended)).expect(401)
    const token = await service.key(['check'])
    await ask().get('/v1/standards').set(bearer(token)).expect(200)
    await ask()
      .delete(`/v1/keys/${token.split('_')[1]}`)
      .set(bearer(all))
      .expect(204)
    await ask().get('/v1/standards').set(bearer(token)).expect(401)
  })
})

describe('with a session', () => {
  const same = { 'sec-fetch-site': 'same-origin' }
  let cookie: string
  beforeAll(async () => {
    cookie = await service.session(all)
  })

  it('submittals can be read, and nothing else is done', async () => {
    await ask()
      .get('/v1/submittals')
      .set({ cookie, ...same })
      .expect(200)
    await ask().get('/v1/submittals').set({ cookie }).expect(200)
    await ask()
      .get('/v1/keys')
      .set({ cookie, ...same })
      .expect(401)
    await ask()
      .get('/v1/standards')
      .set({ cookie, ...same })
      .expect(401)
    await ask()
      .post('/v1/checks')
      .set({ cookie, ...same })
      .send({})
      .expect(401)
    await ask()
      .post('/v1/submittals')
      .set({ cookie, ...same })
      .send({})
      .expect(401)
  })

  it.each(['cross-site', 'same-site'])('nothing is answered to a page that is %s', async (site) => {
    await ask().get('/v1/submittals').set({ cookie, 'sec-fetch-site': site }).expect(401)
    await ask().post('/v1/submittals').set({ cookie, 'sec-fetch-site': site }).send({}).expect(403)
  })

  it('that is unknown, it is as if there were none', () =>
    ask()
      .get('/v1/submittals')
      .set({ cookie: 'fingertrue-session=unknown', ...same })
      .expect(401))
})

describe('a request that another site makes in the same browser', () => {
  it('changes nothing, whether keys are asked for or not', async () => {
    const open = await guarded({ auth: 'off' })
    try {
      const post = (headers: Record<string, string>) =>
        request(open.app.server).post('/v1/submittals').set(headers).attach('files', GLAZE, 'G-1.svg')
      await post({ 'sec-fetch-site': 'cross-site' }).expect(403)
      await post({ origin: 'https://elsewhere.example' }).expect(403)
      await post({ origin: 'null' }).expect(403)
      const address = await request(open.app.server).get('/v1/submittals').expect(200)
      expect((address.body as { submittals: unknown[] }).submittals).toEqual([])
      await post({}).expect(202)
      await post({ 'sec-fetch-site': 'same-origin' }).expect(202)
      await post({ host: 'signs.example', origin: 'https://signs.example' }).expect(202)
    } finally {
      await open.close()
    }
  })
})

describe('more signs than may wait', () => {
  it('are refused as a whole, and others are not held up', async () => {
    const few = await guarded({ openSigns: 1, role: 'api' })
    try {
      const post = (token: string, ...names: string[]) => {
        const call = request(few.app.server).post('/v1/submittals').set(bearer(token))
        for (const name of names) void call.attach('files', GLAZE, name)
        return call
      }
      const ours = await few.key(['read', 'write'])
      const refused = await post(ours, 'A-1.svg', 'A-2.svg').expect(409)
      expect(refused.body as ProblemAnswer).toMatchObject({
        type: '/docs/problems/organisation-limit',
        limit: 1,
        actual: 2,
      })
      const list = await request(few.app.server).get('/v1/submittals').set(bearer(ours)).expect(200)
      expect((list.body as { submittals: unknown[] }).submittals).toEqual([])
      const made = await post(ours, 'A-1.svg').expect(202)
      await request(few.app.server)
        .post(`/v1/submittals/${(made.body as { id: string }).id}/signs`)
        .set(bearer(ours))
        .attach('files', GLAZE, 'A-2.svg')
        .expect(409)
      await post(await few.key(['write'], { organisation: 'Seed Library' }), 'S-1.svg').expect(202)
    } finally {
      await few.close()
    }
  })
})
