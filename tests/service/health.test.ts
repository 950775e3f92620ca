import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { runningService } from './running.js'

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

it('is alive and ready, and stays alive but not ready while it drains', async () => {
  const get = (path: string) => request(app.server).get(path)
  await get('/livez').expect(200, { status: 'ok' })
  await get('/readyz').expect(200, { status: 'ok' })
  app.drain()
  await get('/livez').expect(200)
  const refused = await get('/readyz')
    .expect(503)
    .expect('content-type', /problem\+json/)
  expect(refused.body).toMatchObject({ type: '/docs/problems/busy' })
  expect(refused.headers['retry-after']).toMatch(/^\d+$/)
  // What still comes is answered: a load balancer takes a moment to look.
  await get('/v1/standards').expect(200)
})

it('answers for its health alone where it only checks signs', async () => {
  const worker = await runningService({ role: 'worker' })
  const get = (path: string) => request(worker.server).get(path)
  await get('/livez').expect(200, { status: 'ok' })
  await get('/readyz').expect(200, { status: 'ok' })
  for (const path of ['/', '/docs', '/v1/standards', '/v1/submittals', '/nowhere']) await get(path).expect(404)
  await worker.close()
})
