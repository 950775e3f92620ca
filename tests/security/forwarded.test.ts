import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { FastifyInstance } from 'fastify'
import { runningService } from '../service/running.js'

/**
 * Headers by which a proxy tells what it was asked (RFC 7239 and its forerunners). Whoever calls can write them, and nothing is told which
 * proxy to believe: none is believed. The addresses are those of RFC 5737, for documentation.
 */
const FORWARDED = (n: number) => ({
  'x-forwarded-for': `192.0.2.${n}`,
  'x-real-ip': `192.0.2.${n}`,
  forwarded: `for=192.0.2.${n};host=localhost;proto=https`,
  'x-forwarded-host': 'localhost',
  'x-forwarded-proto': 'https',
})

describe('headers of a proxy that anybody may write', () => {
  let app: FastifyInstance
  beforeAll(async () => {
    app = await runningService({ rateLimit: 3, hosts: ['localhost'] })
  })
  afterAll(() => app.close())

  it('do not count a client as several', async () => {
    const statuses: number[] = []
    for (let n = 1; n <= 5; n++) {
      const { status } = await request(app.server).get('/v1/standards').set('host', 'localhost').set(FORWARDED(n))
      statuses.push(status)
    }
    expect(statuses).toEqual([200, 200, 200, 429, 429])
  })

  it('do not lend the service another name', async () => {
    await request(app.server).get('/docs/problems').set('host', 'attacker.example').set(FORWARDED(9)).expect(421)
  })

  it('do not make a page of another site one of this service', async () => {
    const headers = { host: 'localhost', origin: 'https://attacker.example', 'x-forwarded-host': 'attacker.example' }
    await request(app.server).post('/v1/submittals').set(headers).attach('files', Buffer.from('x'), 'a.svg').expect(403)
  })
})

describe('a trace that a caller claims to be in', () => {
  // W3C Trace Context: malformed values are to be ignored.
  it.each([
    '00-00000000000000000000000000000000-0000000000000000-01',
    'ff-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01',
    `00-${'4'.repeat(4000)}-00f067aa0ba902b7-01`,
    "'; drop table events; --",
  ])('changes no answer and is in none: %s', async (traceparent) => {
    const app = await runningService()
    try {
      const headers = { traceparent, tracestate: traceparent, baggage: `a=${traceparent}` }
      const plain = await request(app.server).get('/v1/standards').expect(200)
      const traced = await request(app.server).get('/v1/standards').set(headers).expect(200)
      expect(traced.text).toBe(plain.text)
      expect(JSON.stringify(traced.headers)).not.toContain(traceparent.slice(0, 40))
    } finally {
      await app.close()
    }
  })
})
