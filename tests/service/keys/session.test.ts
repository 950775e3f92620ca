import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { GLAZE } from '../submittals/kept.js'
import { guarded, KEYED, type Guarded } from './guarded.js'

/** Signing in to the pages: cookies by RFC 6265 and its successor's SameSite. Names and addresses are invented. */

let service: Guarded
let key: string
beforeAll(async () => {
  service = await guarded()
  key = await service.key(KEYED)
})
afterAll(() => service.close())

const ask = () => request(service.app.server)
const SAME = { 'sec-fetch-site': 'same-origin' }

const signIn = (headers: Record<string, string> = {}, given = key) =>
  ask()
    .post('/sign-in')
    .set({ ...SAME, ...headers })
    .type('form')
    .send({ key: given, to: '/submittals' })

async function cookieOf(call: PromiseLike<request.Response>): Promise<{ pair: string; attributes: string[] }> {
  const { headers, status } = await call
  expect(status).toBe(303)
  const [pair = '', ...attributes] = ((headers['set-cookie'] as unknown as string[])[0] ?? '').split('; ')
  return { pair, attributes: attributes.sort() }
}

describe('whoever signs in', () => {
  it('gets a cookie that no script reads and no other site sends, by HTTPS alone over a network', async () => {
    const far = await cookieOf(signIn({ host: 'signs.example' }))
    expect(far.attributes).toEqual(['HttpOnly', 'Max-Age=43200', 'Path=/', 'SameSite=Strict', 'Secure'])
    for (const host of ['localhost:8080', '127.0.0.1:8080', '[::1]:8080']) {
      const { attributes } = await cookieOf(signIn({ host }))
      expect(attributes, host).toEqual(['HttpOnly', 'Max-Age=43200', 'Path=/', 'SameSite=Strict'])
    }
    expect(far.pair).not.toContain(key)
  })

  it('sees the pages until they sign out', async () => {
    const { pair: cookie } = await cookieOf(signIn())
    await ask().get('/submittals').set({ cookie }).expect(200)
    await ask()
      .post('/sign-out')
      .set({ cookie, ...SAME })
      .expect(303)
    await ask().get('/submittals').set({ cookie }).expect(303)
  })

  it('with a key that does not work, or from another site, gets none', async () => {
    const refused = [await signIn({}, `${key}x`), await signIn({ 'sec-fetch-site': 'cross-site' })]
    for (const { status, headers } of refused) {
      expect(status).toBe(403)
      expect(headers).not.toHaveProperty('set-cookie')
    }
  })
})

describe('the pages', () => {
  it('lead those who are not signed in to where they can, and back', async () => {
    const { headers } = await ask().get('/submittals?page=2').expect(303)
    expect(headers.location).toBe('/sign-in?to=%2Fsubmittals%3Fpage%3D2')
    const posted = await ask().post('/submittals').set(SAME).attach('files', GLAZE, 'G-1.svg').expect(303)
    expect(posted.headers.location).toBe('/sign-in')
    await ask().get('/sign-in').expect(200)
  })

  it('take no key in a header in place of a session', () =>
    ask()
      .get('/submittals')
      .set({ authorization: `Bearer ${key}` })
      .expect(303))

  it('do what the key allows, for their own forms alone', async () => {
    const post = (cookie: string, headers: Record<string, string>) =>
      ask()
        .post('/submittals')
        .set({ cookie, ...headers })
        .field('name', 'Pottery')
        .field('standards', 'us-ada-2010')
        .attach('files', GLAZE, 'G-1.svg')
    const cookie = await service.session(key)
    await post(cookie, { 'sec-fetch-site': 'cross-site' }).expect(403)
    await post(cookie, { origin: 'https://elsewhere.example' }).expect(403)
    await post(cookie, {}).expect(403)
    await post(await service.session(await service.key(['read'])), SAME).expect(403)
    const list = () => ask().get('/v1/submittals').set({ cookie }).expect(200)
    expect((await list()).text).not.toContain('Pottery')
    await post(cookie, SAME).expect(303)
    expect((await list()).text).toContain('Pottery')
  })

  it('show on the first one nothing of what is kept to those who are not signed in', async () => {
    const anybody = await ask().get('/').expect(200)
    expect(anybody.text).not.toContain('Pottery')
    const { text } = await ask()
      .get('/')
      .set({ cookie: await service.session(key) })
      .expect(200)
    expect(text).toContain('Pottery')
    const other = await service.session(await service.key(KEYED, { organisation: 'Seed Library' }))
    expect((await ask().get('/').set({ cookie: other }).expect(200)).text).not.toContain('Pottery')
  })
})
