import { describe, expect, it } from 'vitest'
import { createClient, ProblemError } from '../../src/client/index.js'
import { pause } from '../../src/client/retry.js'

/** The client against a fetch that answers as we tell it; against a running service it is used in tests/end-to-end. */

const problem = {
  type: '/docs/problems/busy',
  title: 'The service is busy',
  status: 503,
  detail: 'All workers are taken.',
  instance: 'urn:uuid:0',
}
const json = (body: unknown, status = 200, headers: Record<string, string> = {}) =>
  new Response(JSON.stringify(body), {
    status,
    headers: { 'content-type': status < 400 ? 'application/json' : 'application/problem+json', ...headers },
  })
/** The least that is waited: RFC 9110, 10.2.3, counts in seconds. */
const busy = () => json(problem, 503, { 'retry-after': '0' })

/** A service that gives these answers, one after the other, and keeps what it was sent. */
function answering(...answers: (() => Response)[]) {
  const sent: { method: string; url: string; body: string; authorization: string | null }[] = []
  const fetch = async (request: Request) => {
    const { method, url, headers } = request
    sent.push({ method, url, body: await request.text(), authorization: headers.get('authorization') })
    const answer = answers[sent.length - 1]
    if (!answer) throw new Error('sent too often')
    return answer()
  }
  return { sent, fetch }
}
const baseUrl = 'http://signs.example'
const translation = { text: 'kiln room', code: 'ueb-contracted' as const }

describe('the client', () => {
  it('sends what was asked, with the key, and gives the answer', async () => {
    const { sent, fetch } = answering(() => json({ cells: '⠅' }))
    const client = createClient({ baseUrl, key: 'ft_secret', fetch })
    const { data } = await client.POST('/v1/translations', { body: translation })
    expect(data).toEqual({ cells: '⠅' })
    expect(sent).toEqual([
      {
        method: 'POST',
        url: `${baseUrl}/v1/translations`,
        body: JSON.stringify(translation),
        authorization: 'Bearer ft_secret',
      },
    ])
  })

  it('throws a problem with all that it says (RFC 9457)', async () => {
    const { fetch } = answering(() => json({ ...problem, type: '/docs/problems/scale-unknown', status: 422 }, 422))
    const failed = createClient({ baseUrl, fetch }).POST('/v1/translations', { body: translation })
    await expect(failed).rejects.toBeInstanceOf(ProblemError)
    await expect(failed).rejects.toMatchObject({
      status: 422,
      kind: 'scale-unknown',
      problem: { detail: problem.detail },
    })
    await expect(failed).rejects.toThrow('The service is busy. All workers are taken.')
  })

  it('tells of an answer that is no problem document by its status, whatever stands before the service', async () => {
    const { fetch } = answering(() => new Response('<h1>Bad gateway</h1>', { status: 502 }))
    const failed = createClient({ baseUrl, fetch }).GET('/v1/standards')
    await expect(failed).rejects.toMatchObject({ status: 502, problem: undefined })
  })
})

describe('asking again', () => {
  it('sends the same again after 429 and 503 where the answer says when, and no more often than told', async () => {
    const { sent, fetch } = answering(
      busy,
      () => json(problem, 429, { 'retry-after': '0' }),
      () => json({ cells: '⠅' }),
    )
    const { data } = await createClient({ baseUrl, fetch }).POST('/v1/translations', { body: translation })
    expect(data).toEqual({ cells: '⠅' })
    expect(sent.map(({ body }) => body)).toEqual(Array.from({ length: 3 }, () => JSON.stringify(translation)))
    const never = answering(busy, busy, busy)
    const client = createClient({ baseUrl, fetch: never.fetch, retry: { most: 1 } })
    await expect(client.GET('/v1/standards')).rejects.toMatchObject({ status: 503, retryAfter: 0 })
    expect(never.sent).toHaveLength(2)
  })

  it.each([
    ['that says no time', () => json(problem, 503)],
    ['that asks for longer than is waited', () => json(problem, 503, { 'retry-after': '3600' })],
    ['that would be the same the next time', () => json(problem, 422, { 'retry-after': '0' })],
  ])('does not after an answer %s', async (_, answer) => {
    const { sent, fetch } = answering(answer)
    await expect(createClient({ baseUrl, fetch }).GET('/v1/standards')).rejects.toBeInstanceOf(ProblemError)
    expect(sent).toHaveLength(1)
  })

  /** RFC 9110, 9.2.2: a method that is not idempotent is not sent again by itself. */
  it('keeps nothing twice: what changes something is sent again with an Idempotency-Key only', async () => {
    const body = { signs: [{ mark: 'K-104', drawing: '<svg/>' }] }
    const without = answering(busy)
    await expect(
      createClient({ baseUrl, fetch: without.fetch }).POST('/v1/submittals', { body }),
    ).rejects.toBeInstanceOf(ProblemError)
    expect(without.sent).toHaveLength(1)
    const named = answering(busy, () => json({ id: 'sub_1' }, 202))
    const params = { header: { 'Idempotency-Key': '"order-4711"' } }
    await createClient({ baseUrl, fetch: named.fetch }).POST('/v1/submittals', { body, params })
    expect(named.sent).toHaveLength(2)
  })

  it('finds the calls that only ask behind a path of a proxy too', async () => {
    const { sent, fetch } = answering(busy, () => json({}))
    await createClient({ baseUrl: `${baseUrl}/signs`, fetch }).POST('/v1/checks', { body: { drawing: '<svg/>' } })
    expect(sent.map(({ url }) => url)).toEqual(Array.from({ length: 2 }, () => `${baseUrl}/signs/v1/checks`))
  })

  it('stops waiting when it is told to', async () => {
    const stop = new AbortController()
    const waiting = pause(60_000, stop.signal)
    stop.abort(new Error('enough'))
    await expect(waiting).rejects.toThrow('enough')
    await expect(pause(60_000, stop.signal)).rejects.toThrow('enough')
  })
})
