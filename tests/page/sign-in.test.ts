import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { guarded, KEYED, type Guarded } from '../service/keys/guarded.js'

/** Where somebody who signs in is led to. Addresses elsewhere are invented. */

let service: Guarded
let key: string
beforeAll(async () => {
  service = await guarded()
  key = await service.key(KEYED)
})
afterAll(() => service.close())

const signIn = (to: string, given = key) =>
  request(service.app.server)
    .post('/sign-in')
    .set('sec-fetch-site', 'same-origin')
    .type('form')
    .send({ key: given, to })

describe('whoever signs in', () => {
  // OWASP, unvalidated redirects and forwards.
  it.each([
    ['/submittals?page=2', '/submittals?page=2'],
    ['//elsewhere.example/', '/'],
    ['/\\elsewhere.example', '/'],
    ['/\t/elsewhere.example', '/'],
    ['https://elsewhere.example/', '/'],
    ['javascript:alert(1)', '/'],
    ['', '/'],
  ])('is led to an address of this service alone: %j', async (to, led) => {
    const { headers } = await signIn(to).expect(303)
    expect(headers.location).toBe(led)
  })

  it('is asked again for a key that does not work, with what is wrong, and without the key', async () => {
    const { text } = await signIn('/submittals', 'fingertrue_wrong').expect(403)
    expect(text).toContain('This key does not work here')
    expect(text).not.toContain('fingertrue_wrong')
    expect(text).toContain('value="/submittals"')
  })

  it('is asked for a key on the first page, which shows nobody’s sets', async () => {
    const { text } = await request(service.app.server).get('/').expect(200)
    expect(text).toContain('href="/sign-in"')
    expect(text).not.toContain('Handed in last')
    const { headers } = await request(service.app.server).get('/submittals').expect(303)
    expect(headers.location).toBe('/sign-in?to=%2Fsubmittals')
  })
})
