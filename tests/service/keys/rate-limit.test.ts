import type { FastifyInstance } from 'fastify'
import { parseList } from 'structured-headers'
import request, { type Response } from 'supertest'
import { afterEach, describe, expect, it } from 'vitest'
import type { ProblemAnswer } from '../running.js'
import { guarded, type Guarded } from './guarded.js'

/**
 * The fields of draft-ietf-httpapi-ratelimit-headers-11, sections 3 and 4: lists of strings with the parameters q, w and r, t.
 * They are read by an independent reader of structured fields (RFC 9651). The limits are invented.
 */

let open: Guarded | FastifyInstance | undefined
afterEach(() => open?.close())

interface Item {
  name: string
  parameters: Record<string, number>
}

/** The one item of a field. */
function itemOf(response: Response, field: string): Item {
  const list = parseList(String(response.headers[field]))
  expect(list).toHaveLength(1)
  const [name, parameters] = list[0] as [string, Map<string, number>]
  return { name, parameters: Object.fromEntries(parameters) }
}

const fields = (response: Response) => {
  const [policy, limit] = ['ratelimit-policy', 'ratelimit'].map((field) => itemOf(response, field))
  return { policy: { name: policy?.name, ...policy?.parameters }, limit: { name: limit?.name, ...limit?.parameters } }
}

describe('requests with a key', () => {
  it('are told what is left, and refused beyond the limit, each key for itself', async () => {
    const service = await guarded({ rateLimit: 3 })
    open = service
    const [one, other] = [await service.key(['check']), await service.key(['check'])]
    const get = (token: string) =>
      request(service.app.server).get('/v1/standards').set('authorization', `Bearer ${token}`)
    for (const left of [2, 1, 0]) {
      const { policy, limit } = fields(await get(one).expect(200))
      expect(policy).toEqual({ name: 'key', q: 3, w: 60 })
      expect(limit).toMatchObject({ name: 'key', r: left })
    }
    const refused = await get(one)
      .expect(429)
      .expect('content-type', /problem/)
    const { limit } = fields(refused)
    expect(limit).toMatchObject({ name: 'key', r: 0 })
    expect(Number(refused.headers['retry-after'])).toBe(itemOf(refused, 'ratelimit').parameters.t)
    expect(refused.body as ProblemAnswer).toMatchObject({
      type: '/docs/problems/too-many-requests',
      status: 429,
      limit: 3,
      actual: 4,
    })
    await get(other).expect(200)
    expect(Object.keys(refused.headers).filter((name) => name.startsWith('x-ratelimit'))).toEqual([])
  })

  it('have the limit of the key where it has one', async () => {
    const service = await guarded({ rateLimit: 100 })
    open = service
    const token = await service.key(['check'], { rate: 1 })
    const get = () => request(service.app.server).get('/v1/standards').set('authorization', `Bearer ${token}`)
    expect(fields(await get().expect(200)).policy).toMatchObject({ q: 1 })
    await get().expect(429)
  })
})

describe('requests without a key that works', () => {
  it('are counted by address, and health is not counted at all', async () => {
    const service = await guarded({ rateLimit: 2 })
    open = service
    const get = (path: string) => request(service.app.server).get(path).set('authorization', 'Bearer wrong')
    expect(fields(await get('/v1/standards').expect(401)).policy).toEqual({ name: 'address', q: 2, w: 60 })
    await get('/v1/keys').expect(401)
    await get('/v1/standards').expect(429)
    for (let call = 0; call < 5; call++) {
      const { headers } = await get('/livez').expect(200)
      expect(headers).not.toHaveProperty('ratelimit')
    }
    // Whoever has a key is not kept out by those who have none.
    const token = await service.key(['check'])
    await request(service.app.server).get('/v1/standards').set('authorization', `Bearer ${token}`).expect(200)
  })

  it('have no limit where none is set', async () => {
    const service = await guarded({ auth: 'off' })
    open = service
    const { headers } = await request(service.app.server).get('/v1/standards').expect(200)
    expect(headers).not.toHaveProperty('ratelimit')
  })

  it('have one by address where one is set although no keys are asked for', async () => {
    const service = await guarded({ auth: 'off', rateLimit: 1 })
    open = service
    await request(service.app.server).get('/v1/standards').expect(200)
    await request(service.app.server).get('/v1/standards').expect(429)
  })
})
