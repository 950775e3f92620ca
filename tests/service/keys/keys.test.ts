import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { LIMITS } from '../../../src/service/settings.js'
import { MOST_KEYS } from '../../../src/submittals/keys/keys.js'
import type { ProblemAnswer } from '../running.js'
import { guarded, type Guarded } from './guarded.js'

/** The keys of an organisation over HTTP. Labels and names are invented. */

interface Key {
  id: string
  label: string
  scopes: string[]
  rate: number | null
  expiresAt: string | null
  revokedAt: string | null
  lastUsedAt: string | null
  key?: string
}

let service: Guarded
let admin: string
beforeAll(async () => {
  service = await guarded()
  admin = await service.key(['admin'], { label: 'Admin', rate: 900 })
})
afterAll(() => service.close())

const as = (token: string) => ({ authorization: `Bearer ${token}` })
const ask = () => request(service.app.server)
const make = (body: object, token = admin) => ask().post('/v1/keys').set(as(token)).send(body)
const list = async (token = admin) => {
  const listed = await ask().get('/v1/keys').set(as(token)).expect(200)
  return (listed.body as { keys: Key[] }).keys
}

describe('keys over HTTP', () => {
  it('are made, shown once and listed without their secret', async () => {
    const response = await make({ label: 'Storefront', scopes: ['write', 'check'], expires: '2999-06-30' }).expect(201)
    expect(response.headers['cache-control']).toBe('no-store')
    const { key = '', ...made } = response.body as Key
    expect(made).toMatchObject({
      label: 'Storefront',
      scopes: ['check', 'write'],
      rate: 900,
      expiresAt: '2999-06-30T23:59:59.999Z',
      revokedAt: null,
      lastUsedAt: null,
    })
    await ask().get('/v1/standards').set(as(key)).expect(200)
    const listed = await list()
    expect(listed.map(({ label }) => label)).toEqual(['Admin', 'Storefront'])
    expect(listed[1]?.lastUsedAt).toMatch(/^20/u)
    expect(JSON.stringify(listed)).not.toContain(key.split('_')[2])
  })

  it('are revoked, also the one that is used to do it, and stay in the list', async () => {
    const { key = '', id } = (await make({ label: 'Second', scopes: ['admin'] }).expect(201)).body as Key
    await ask().delete(`/v1/keys/${id}`).set(as(key)).expect(204)
    await ask().get('/v1/keys').set(as(key)).expect(401)
    await ask().delete(`/v1/keys/${id}`).set(as(admin)).expect(204)
    expect((await list()).find((one) => one.id === id)?.revokedAt).toMatch(/^20/u)
  })

  it.each([
    [{ label: 'x' }, '/scopes'],
    [{ label: 'x', scopes: [] }, '/scopes'],
    [{ label: 'x', scopes: ['all'] }, '/scopes/0'],
    [{ label: ' ', scopes: ['read'] }, '/label'],
    [{ label: 'FingerTrue', scopes: ['read'] }, '/label'],
    [{ label: 'x', scopes: ['read'], expires: '2027-02-30' }, '/expires'],
    [{ label: 'x', scopes: ['read'], rate: 100_000 }, '/rate'],
  ])('are not made of %j', async (body, pointer) => {
    const response = await make(body).expect(422)
    expect((response.body as ProblemAnswer).errors?.map((error) => error.pointer)).toContain(pointer)
  })

  it('are not made of what is no JSON, too long, or of another type', async () => {
    const send = (body: string, type = 'application/json') =>
      ask().post('/v1/keys').set(as(admin)).set('content-type', type).send(body)
    const answers = [
      await send('{'),
      await send(JSON.stringify({ label: 'x'.repeat(LIMITS.json), scopes: ['read'] })),
      await send('<svg/>', 'image/svg+xml'),
    ]
    expect(answers.map(({ status, body }) => [status, (body as ProblemAnswer).type])).toEqual([
      [400, '/docs/problems/malformed-json'],
      [413, '/docs/problems/too-large'],
      [415, '/docs/problems/unsupported-media-type'],
    ])
  })

  it('are not made beyond the number that may work at once', async () => {
    const many = { organisation: 'Many Keys' }
    const first = await service.key(['admin'], many)
    for (let made = 1; made < MOST_KEYS; made++) await service.key(['read'], many)
    const response = await make({ label: 'x', scopes: ['read'] }, first).expect(409)
    expect(response.body as ProblemAnswer).toMatchObject({
      type: '/docs/problems/organisation-limit',
      limit: MOST_KEYS,
      actual: MOST_KEYS + 1,
    })
  })

  it('of another organisation are neither seen nor revoked', async () => {
    const theirs = await service.key(['admin'], { organisation: 'Seed Library', label: 'Librarian' })
    const mine = (await list()).map(({ id }) => id)
    expect((await list(theirs)).map(({ label }) => label)).toEqual(['Librarian'])
    for (const id of mine) await ask().delete(`/v1/keys/${id}`).set(as(theirs)).expect(404)
    await ask().get('/v1/keys').set(as(admin)).expect(200)
  })

  it('are made by the command alone where none are asked for', async () => {
    const open = await guarded({ auth: 'off' })
    try {
      const answers = [
        await request(open.app.server)
          .post('/v1/keys')
          .send({ label: 'x', scopes: ['read'] }),
        await request(open.app.server).get('/v1/keys'),
        await request(open.app.server).delete('/v1/keys/AAAAAAAAAAAA'),
      ]
      expect(answers.map(({ status }) => status)).toEqual([403, 403, 403])
    } finally {
      await open.close()
    }
  })
})
