import { request as httpRequest, type IncomingMessage } from 'node:http'
import type { AddressInfo } from 'node:net'
import { createParser, type EventSourceMessage } from 'eventsource-parser'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { LIMITS } from '../../../src/service/settings.js'
import { POTTERY_ROOM } from '../../../src/sign/examples.js'
import { runningService } from '../running.js'

/**
 * Server-sent events, WHATWG HTML 9.2, read by an independent parser (eventsource-parser): the fields, the end of a stream and
 * status 204, which tells a client not to come back. `waiting` answers only, so that nothing is ever checked there.
 */

let app: FastifyInstance
let waiting: FastifyInstance
beforeAll(async () => {
  app = await runningService()
  waiting = await runningService({ role: 'api' })
  await app.listen({ port: 0 })
  await waiting.listen({ port: 0 })
})
afterAll(() => Promise.all([app.close(), waiting.close()]))

const portOf = ({ server }: FastifyInstance): number => (server.address() as AddressInfo).port
const urlOf = (service: FastifyInstance, path: string): string => `http://127.0.0.1:${portOf(service)}${path}`

async function upload(service: FastifyInstance, signs: number): Promise<string> {
  const entries = Array.from({ length: signs }, (_, i) => ({ mark: `P-${i}`, sign: POTTERY_ROOM }))
  const response = await fetch(urlOf(service, '/v1/submittals'), {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ name: 'Potters', signs: entries }),
  })
  expect(response.status).toBe(202)
  return ((await response.json()) as { id: string }).id
}

interface Stream {
  response: IncomingMessage
  events: EventSourceMessage[]
  retries: number[]
  comments: string[]
  ended: Promise<void>
}

const open = (service: FastifyInstance, id: string, headers: Record<string, string> = {}): Promise<Stream> =>
  new Promise((resolve, reject) => {
    const asked = httpRequest(urlOf(service, `/v1/submittals/${id}/events`), { headers }, (response) => {
      const events: EventSourceMessage[] = []
      const retries: number[] = []
      const comments: string[] = []
      const parser = createParser({
        onEvent: (event) => events.push(event),
        onRetry: (retry) => retries.push(retry),
        onComment: (comment) => comments.push(comment),
        onError: reject,
      })
      response.setEncoding('utf8')
      response.on('data', (text: string) => parser.feed(text))
      const ended = new Promise<void>((end) => response.once('close', end))
      resolve({ response, events, retries, comments, ended })
    })
    asked.on('error', reject)
    asked.end()
  })

interface Told {
  state: string
  signs: { total: number; done: number }
  verdicts: Record<string, number>
}
const told = ({ data }: EventSourceMessage): Told => JSON.parse(data) as Told

async function until(what: () => boolean): Promise<void> {
  for (let tries = 0; tries < 400 && !what(); tries++) await new Promise((resolve) => setTimeout(resolve, 25))
  expect(what()).toBe(true)
}

describe('the progress of a submittal', () => {
  it('ends with done, and tells what the submittal itself tells', async () => {
    const id = await upload(app, 12)
    const { response, events, retries, ended } = await open(app, id)
    expect(response.statusCode).toBe(200)
    expect(response.headers).toMatchObject({
      'content-type': 'text/event-stream; charset=utf-8',
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
    })
    expect(response.headers['content-length']).toBeUndefined()
    await ended
    expect(retries).toEqual([2000])
    const names = events.map(({ event }) => event)
    expect(names.slice(0, -1)).toEqual(names.slice(0, -1).map(() => 'progress'))
    const last = events.at(-1)
    expect(last?.event).toBe('done')
    const ids = events.map((event) => Number(event.id))
    expect(ids).toEqual([...new Set(ids)].sort((a, b) => a - b))
    const whole = (await (await fetch(urlOf(app, `/v1/submittals/${id}`))).json()) as Told & {
      history: { events: number }
    }
    expect(last && told(last)).toEqual({ state: 'done', signs: { total: 12, done: 12 }, verdicts: whole.verdicts })
    expect(ids.at(-1)).toBe(whole.history.events)
  })

  it('is told no more to who has been told of its end', async () => {
    const id = await upload(app, 1)
    const { events, ended } = await open(app, id)
    await ended
    const last = events.at(-1)?.id ?? ''
    expect((await open(app, id, { 'last-event-id': last })).response.statusCode).toBe(204)
    const again = await open(app, id)
    await again.ended
    expect(again.events.map(({ event, id: number }) => [event, number])).toEqual([['done', last]])
    const bogus = await open(app, id, { 'last-event-id': '999999' })
    await bogus.ended
    expect(bogus.events.map(({ event }) => event)).toEqual(['done'])
  })

  it('goes on from the last event that was read', async () => {
    const id = await upload(waiting, 2)
    const first = await open(waiting, id)
    await until(() => first.events.length === 1)
    const last = first.events[0]?.id ?? ''
    const second = await open(waiting, id, { 'last-event-id': last })
    const none = await open(waiting, id, { 'last-event-id': 'nonsense' })
    await until(() => none.events.length === 1)
    await fetch(urlOf(waiting, `/v1/submittals/${id}/cancel`), { method: 'POST' })
    await Promise.all([first.ended, second.ended, none.ended])
    expect(first.events.map(({ event }) => event)).toEqual(['progress', 'done'])
    expect(second.events.map(({ event }) => event)).toEqual(['done'])
    const end = second.events[0]
    expect(end && told(end)).toMatchObject({ state: 'cancelled', signs: { total: 2, done: 0 } })
  })

  it('ends when the submittal is deleted', async () => {
    const id = await upload(waiting, 1)
    const stream = await open(waiting, id)
    await until(() => stream.events.length === 1)
    await fetch(urlOf(waiting, `/v1/submittals/${id}`), { method: 'DELETE' })
    await stream.ended
    expect(stream.events.map(({ event }) => event)).toEqual(['progress'])
  })

  it('is a problem, not a stream, where there is none', async () => {
    const { response } = await open(app, 'sub_none')
    expect(response.statusCode).toBe(404)
    expect(response.headers['content-type']).toContain('application/problem+json')
  })

  it('has room again when clients have gone', async () => {
    const id = await upload(waiting, 1)
    const streams = await Promise.all(Array.from({ length: LIMITS.streams }, () => open(waiting, id)))
    const refused = await open(waiting, id)
    expect(refused.response.statusCode).toBe(503)
    expect(refused.response.headers['retry-after']).toBe('5')
    for (const { response } of streams) response.destroy()
    await Promise.all(streams.map(({ ended }) => ended))
    let status = 503
    for (let tries = 0; tries < 100 && status === 503; tries++) {
      const { response } = await open(waiting, id)
      status = response.statusCode ?? 0
      response.destroy()
    }
    expect(status).toBe(200)
  })

  it('does not hold up the end of the process', async () => {
    const service = await runningService({ role: 'api' })
    await service.listen({ port: 0 })
    const id = await upload(service, 1)
    const streams = await Promise.all([open(service, id), open(service, id)])
    await service.close()
    await Promise.all(streams.map(({ ended }) => ended))
    expect(streams.map(({ response }) => response.complete)).toEqual([true, true])
  })
})
