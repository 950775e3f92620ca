import { gzipSync } from 'node:zlib'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { DEFAULT_SETTINGS } from '../../src/service/settings.js'
import { POTTERY_ROOM } from '../../src/sign/examples.js'
import { runningService, type ProblemAnswer } from '../service/running.js'
import { page, repeat, WORD } from './attacks/make.js'

/** JSON that was made to hurt, all invented here; what is no JSON is told by RFC 8259. */

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
  // The first drawing waits for a thread to start.
  await post(JSON.stringify({ drawing: page(WORD) }))
})
afterAll(() => app.close())

const post = (payload: string | Buffer, headers: Record<string, string> = {}) =>
  app.inject({
    method: 'POST',
    url: '/v1/checks',
    headers: { 'content-type': 'application/json', ...headers },
    payload,
  })

const sign = (more: string): string => `{"sign":{"use":"gift","lettering":[{"text":"A"}]${more}}}`
const deep = (open: string, close: string, depth: number) => open.repeat(depth) + close.repeat(depth)

/** What is sent, and the status and type of the answer; no type for a report. */
const BODIES: Record<string, [body: string | Buffer, status: number, type?: string]> = {
  'arrays a hundred thousand deep': [`{"sign":${deep('[', ']', 100_000)}}`, 422, 'invalid-description'],
  'objects a hundred thousand deep': [
    `{"sign":${deep('{"a":', '}', 100_000).replace('}', '1}')}}`,
    422,
    'invalid-description',
  ],
  'arrays left open': ['['.repeat(1_000_000), 400, 'malformed-json'],
  'a key twice: the last one counts': [sign(',"use":"parking"'), 200],
  'a key twice, the last one wrong': [sign(',"use":"shed"'), 422, 'invalid-description'],
  'the prototype as a key': [sign(',"__proto__":{"admin":true}'), 400, 'malformed-json'],
  'the constructor as a key': [sign(',"constructor":{"prototype":{"admin":true}}'), 400, 'malformed-json'],
  'a method of all objects as a key': [sign(',"toString":1,"hasOwnProperty":1'), 422, 'invalid-description'],
  'half of a surrogate pair': [sign(',"mark":"\\ud800"'), 422, 'invalid-description'],
  'a NUL': [sign(',"mark":"a\\u0000b"'), 422, 'invalid-description'],
  'characters that turn the direction': [sign(',"mark":"\u202eabc\u2066"'), 200],
  'a number beyond all': [sign(',"panel":{"width":1e999}'), 422, 'invalid-description'],
  'a number next to nothing': [sign(',"panel":{"width":1e-320}'), 200],
  'minus zero': [sign(',"panel":{"width":-0}'), 422, 'invalid-description'],
  'a number of four thousand digits': [sign(`,"panel":{"width":${'9'.repeat(4_000)}}`), 422, 'invalid-description'],
  'ten thousand sets of lettering': [
    `{"sign":{"use":"gift","lettering":[${'{},'.repeat(10_000)}{}]}}`,
    422,
    'invalid-description',
  ],
  'ten thousand keys': [sign(`,${repeat(10_000, (i) => `"k${i}":0,`)}"k":0`), 422, 'invalid-description'],
  'a text of five million characters': [sign(`,"mark":"${'a'.repeat(5_000_000)}"`), 422, 'invalid-description'],
  'a drawing in a string': [JSON.stringify({ drawing: page(WORD) }), 200],
  'a drawing of entities in a string': [
    JSON.stringify({ drawing: page('&a;', '<!DOCTYPE svg [<!ENTITY a SYSTEM "file:///etc/hostname">]>') }),
    400,
    'entities-not-accepted',
  ],
  'UTF-16': [Buffer.from(`\ufeff${sign('')}`, 'utf16le'), 400, 'malformed-json'],
  gzip: [gzipSync(sign('')), 400, 'malformed-json'],
  'not a number': ['{"sign":NaN}', 400, 'malformed-json'],
  'a comment': ['{"sign":{}/**/}', 400, 'malformed-json'],
}

describe('a JSON body with', () => {
  it.each(Object.entries(BODIES))('%s', async (_, [body, status, type]) => {
    const response = await post(body)
    expect(response.statusCode, response.body.slice(0, 300)).toBe(status)
    if (type === undefined) return
    expect(response.headers['content-type']).toMatch(/^application\/problem\+json/)
    expect(response.json<ProblemAnswer>().type).toBe(`/docs/problems/${type}`)
    expect(({} as { admin?: boolean }).admin).toBeUndefined()
  })

  it('compression, told by its header, is not read: neither small nor a bomb', async () => {
    for (const body of [gzipSync(sign('')), gzipSync(Buffer.alloc(50_000_000, 32))]) {
      const response = await post(body, { 'content-encoding': 'gzip' })
      expect([response.statusCode, response.json<ProblemAnswer>().type]).toEqual([
        415,
        '/docs/problems/unsupported-media-type',
      ])
    }
  })

  it('as much of everything as is allowed is answered, or stopped by the clock', async () => {
    const body = {
      sign: {
        use: 'permanent-room',
        lettering: Array(100).fill({ lines: Array(40).fill('POTTERY'.repeat(10)) }),
        braille: Array(100).fill({ lines: Array(40).fill('pottery'.repeat(10)) }),
      },
    }
    const service = await runningService({ timeLimit: DEFAULT_SETTINGS.timeLimit })
    const payload = JSON.stringify(body)
    const response = await service.inject({
      method: 'POST',
      url: '/v1/checks',
      headers: { 'content-type': 'application/json' },
      payload,
    })
    await service.close()
    if (response.statusCode === 200) return
    expect(response.statusCode).toBe(422)
    expect(response.json<ProblemAnswer>()).toMatchObject({
      type: '/docs/problems/too-complex',
      limit: DEFAULT_SETTINGS.timeLimit,
    })
  })

  it('nothing wrong is still answered', async () => {
    expect((await post(JSON.stringify({ sign: POTTERY_ROOM }))).statusCode).toBe(200)
  })
})
