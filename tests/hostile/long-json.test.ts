import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { LIMITS } from '../../src/service/settings.js'
import { POTTERY_ROOM } from '../../src/sign/examples.js'
import { runningService, type ProblemAnswer } from '../service/running.js'

/** Bodies of JSON that a thread reads, since reading them would hold up others; they are answered as short ones are. */

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

const post = (url: string, payload: string) =>
  app.inject({ method: 'POST', url, headers: { 'content-type': 'application/json' }, payload })
const padded = (json: string, bytes: number): string => json + ' '.repeat(bytes - Buffer.byteLength(json))
const CHECK = JSON.stringify({ sign: POTTERY_ROOM })
const TRANSLATION = JSON.stringify({ text: 'kiln room' })

describe('a check', () => {
  it('is the same whether its body is short or long', async () => {
    const [short, long] = await Promise.all([post('/v1/checks', CHECK), post('/v1/checks', padded(CHECK, 50_000))])
    expect([short.statusCode, long.statusCode]).toEqual([200, 200])
    expect(long.body).toBe(short.body)
  })
  it('is read up to the limit of a body, and refused beyond it', async () => {
    expect((await post('/v1/checks', padded(CHECK, LIMITS.json))).statusCode).toBe(200)
    const over = await post('/v1/checks', padded(CHECK, LIMITS.json + 1))
    expect(over.json<ProblemAnswer>()).toMatchObject({ status: 413, limit: LIMITS.json, actual: LIMITS.json + 1 })
  })
  // RFC 8259: what ends too early, or holds what no value begins with, is no JSON.
  it.each([
    ['broken in its fourth line', `{\n${' '.repeat(5_000)}\n\n"a":b}`, { line: 4, column: 5 }],
    ['left open', `{"sign":"${'a'.repeat(5_000)}`, { line: 1, column: 5_010 }],
  ])('%s, is refused with the place', async (_, body, place) => {
    const problem = (await post('/v1/checks', body)).json<ProblemAnswer>()
    expect(problem).toMatchObject({ status: 400, type: '/docs/problems/malformed-json', errors: [place] })
  })
  it('that would reach a prototype is refused, and so is a description with an error, by its pointer', async () => {
    const forbidden = `{"sign":{"__proto__":{"use":"gift"}},"a":"${'a'.repeat(5_000)}"}`
    expect((await post('/v1/readings', forbidden)).json<ProblemAnswer>().type).toBe('/docs/problems/malformed-json')
    const wrong = padded('{"sign":{"use":"shed","lettering":[{"text":"A"}]}}', 5_000)
    expect((await post('/v1/checks', wrong)).json<ProblemAnswer>()).toMatchObject({
      type: '/docs/problems/invalid-description',
      errors: [{ pointer: '/sign/use' }],
    })
  })
})

it('a translation is read up to a limit of its own, and refused beyond it', async () => {
  expect((await post('/v1/translations', padded(TRANSLATION, LIMITS.translation))).statusCode).toBe(200)
  const over = await post('/v1/translations', padded(TRANSLATION, LIMITS.translation + 1))
  expect(over.json<ProblemAnswer>()).toMatchObject({ status: 413, limit: LIMITS.translation })
})
