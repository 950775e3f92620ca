import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readEnvironment } from '../../../src/service/environment.js'
import { hostName } from '../../../src/service/keys/hosts.js'
import { runningService, type ProblemAnswer } from '../running.js'
import type { FastifyInstance } from 'fastify'

/** By which names the service may be asked. 421 is RFC 9110, 15.5.20; the names are invented, under .example (RFC 2606). */

const hostsOf = (variables: Record<string, string>) => {
  const read = readEnvironment(variables)
  if ('refused' in read) throw new Error(read.refused.join())
  return read.settings.hosts
}

describe('a service on this machine that asks for no keys', () => {
  let app: FastifyInstance
  beforeAll(async () => {
    app = await runningService({ hosts: hostsOf({}) })
  })
  afterAll(() => app.close())
  const ask = (host: string) => request(app.server).get('/v1/standards').set('host', host)

  it.each(['127.0.0.1', '127.0.0.1:8080', 'localhost:8080', 'LOCALHOST', 'localhost.:8080', '[::1]:8080', '127.1:80'])(
    'is asked by the name %s',
    async (host) => void (await ask(host).expect(200)),
  )

  // DNS rebinding: the name of the page's own site, made to lead to this machine; the browser sends it as the Host.
  it.each([
    'attacker.example',
    'attacker.example:8080',
    'localhost.attacker.example',
    '127.0.0.1.attacker.example',
    'attacker.example@localhost',
    'localhost/attacker.example',
    '192.0.2.7',
    'not a name',
  ])('answers nothing to a page of another site whose name leads to it: %s', async (host) => {
    const refused = await ask(host).expect(421)
    expect(refused.body as ProblemAnswer).toMatchObject({ type: '/docs/problems/misdirected-request', status: 421 })
    const written = request(app.server)
      .post('/v1/submittals')
      .set('host', host)
      .attach('files', Buffer.from('x'), 'a.svg')
    await written.expect(421)
  })

  it('answers nothing on its pages either', async () => {
    for (const path of ['/', '/docs', '/openapi.json', '/metrics', '/submittals'])
      await request(app.server).get(path).set('host', 'attacker.example').expect(421)
  })
})

describe('a service that is told its names', () => {
  // The check of the image asks 127.0.0.1, probes of Kubernetes (httpGet) the address of the pod: neither is among the names that are said.
  it('tells a probe all the same whether it lives and is ready', async () => {
    const app = await runningService({ hosts: hostsOf({ ALLOWED_HOSTS: 'signs.example' }) })
    try {
      for (const host of ['127.0.0.1:8080', '192.0.2.7:8080'])
        for (const path of ['/livez', '/readyz']) {
          const answered = await request(app.server).get(path).set('host', host).expect(200)
          expect(answered.body).toEqual({ status: 'ok' })
        }
      await request(app.server).get('/metrics').set('host', '127.0.0.1:8080').expect(421)
    } finally {
      await app.close()
    }
  })
})

describe('the names', () => {
  it('are those of the machine, where it listens on loopback and asks for no keys', () => {
    for (const HOST of ['127.0.0.1', '::1', 'localhost'])
      expect(hostsOf({ HOST })).toEqual(['127.0.0.1', '[::1]', 'localhost'])
  })

  // A container listens on all addresses and cannot know by which name it is asked; a key cannot be sent by a page of another site.
  it('are any, where keys are asked for or the service listens elsewhere', () => {
    const elsewhere: Record<string, string>[] = [
      { AUTH: 'keys' },
      { HOST: '0.0.0.0', AUTH: 'off' },
      { HOST: '0.0.0.0' },
    ]
    for (const variables of elsewhere) expect(hostsOf(variables)).toBeUndefined()
  })

  it('are those that are said, wherever it listens', async () => {
    expect(hostsOf({ HOST: '0.0.0.0', AUTH: 'off', ALLOWED_HOSTS: 'Signs.Example, ::1' })).toEqual([
      'signs.example',
      '[::1]',
    ])
    const app = await runningService({ hosts: hostsOf({ ALLOWED_HOSTS: 'signs.example' }) })
    try {
      await request(app.server).get('/v1/standards').set('host', 'signs.example:443').expect(200)
      await request(app.server).get('/v1/standards').set('host', 'localhost').expect(421)
    } finally {
      await app.close()
    }
    const open = await runningService({ hosts: hostsOf({ ALLOWED_HOSTS: '*' }) })
    try {
      await request(open.server).get('/v1/standards').set('host', 'attacker.example').expect(200)
    } finally {
      await open.close()
    }
  })

  it('must be names of hosts, or the service does not start', () => {
    for (const ALLOWED_HOSTS of [
      'https://signs.example',
      'signs.example/x',
      'a b',
      'localhost,',
      'me@signs.example',
      '*.signs.example',
    ])
      expect(readEnvironment({ ALLOWED_HOSTS }), ALLOWED_HOSTS).toMatchObject({
        refused: [expect.stringContaining('ALLOWED_HOSTS')],
      })
  })

  // The URL Standard, host parser: addresses have one spelling.
  it('are compared in one spelling', () => {
    expect(['127.1', '0x7f000001', 'LocalHost:1', '[0:0:0:0:0:0:0:1]:9', '::1'].map(hostName)).toEqual(
      ['127.0.0.1', '127.0.0.1', 'localhost', '[::1]', '[::1]'], // prettier-ignore
    )
  })
})
