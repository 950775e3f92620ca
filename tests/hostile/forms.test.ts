import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { runningService, type ProblemAnswer } from '../service/running.js'

/** Forms whose parts do not say what RFC 7578 asks of them (4.2: a name; a file may come without its own). All were found by fuzzing. */

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

const SCHEDULE = 'Mark,Text,Use\r\nP-1,KILN ROOM,permanent-room\r\n'

const form = (url: string, head: string, content: string) =>
  app.inject({
    method: 'POST',
    url,
    headers: { 'content-type': 'multipart/form-data; boundary=b' },
    payload: `--b\r\n${head}\r\n\r\n${content}\r\n--b--\r\n`,
  })

describe('a part without a name', () => {
  it.each([
    ['a field of a check', '/v1/checks', 'content-disposition: form-data'],
    ['a file of a check', '/v1/checks', 'content-disposition: form-data; filename="a.svg"'],
    ['a field of a set', '/v1/submittals', 'content-disposition: form-data; x'],
  ])('is refused: %s', async (_, url, head) => {
    const answer = await form(url, head, '<svg/>')
    expect(answer.json<ProblemAnswer>()).toMatchObject({
      status: 400,
      type: '/docs/problems/malformed-request',
      detail: 'A part of the form has no name.',
    })
  })
})

describe('a file of a set', () => {
  it('is read without a name of its own', async () => {
    const head = 'content-disposition: form-data; name="files"\r\ncontent-type: application/octet-stream'
    const answer = await form('/v1/submittals', head, SCHEDULE)
    expect(answer.statusCode, answer.body).toBe(202)
  })
})

describe('a form that ends in the middle of a file', () => {
  it.each([
    ['/v1/checks', 'content-disposition: form-data; name="drawing"; filename="a.svg"'],
    ['/v1/submittals', 'content-disposition: form-data; name="files"; filename="a.csv"'],
  ])('is refused: %s', async (url, head) => {
    const answer = await app.inject({
      method: 'POST',
      url,
      headers: { 'content-type': 'multipart/form-data; boundary=b' },
      payload: `--b\r\n${head}\r\n\r\n${SCHEDULE}\r\n--b-`,
    })
    expect(answer.json<ProblemAnswer>()).toMatchObject({ status: 400, type: '/docs/problems/malformed-request' })
  })
})
