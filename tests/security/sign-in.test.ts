import request from 'supertest'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { guarded, KEYED, type Guarded } from '../service/keys/guarded.js'

/** Where signing in leads: OWASP, Unvalidated Redirects and Forwards. The other site is invented. */

let service: Guarded
beforeAll(async () => {
  service = await guarded({ role: 'api' })
})
afterAll(() => service.close())

it.each([
  '//attacker.example',
  '/\\attacker.example',
  '\\\\attacker.example',
  'https://attacker.example/',
  'https:attacker.example',
  '/\t/attacker.example',
  ' //attacker.example',
  'javascript:alert(1)',
  '/submittals\r\nlocation: https://attacker.example',
])('leads to no other site: %j', async (to) => {
  const answer = await request(service.app.server)
    .post('/sign-in')
    .set('sec-fetch-site', 'same-origin')
    .type('form')
    .send({ key: await service.key(KEYED), to })
    .expect(303)
  const base = 'https://signs.example'
  expect(new URL(answer.headers.location ?? '', base).origin).toBe(base)
})
