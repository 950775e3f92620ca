import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { STAGES } from '../../../src/stages.js'
import { runningService, THEATER } from '../running.js'

/** What a collector gets, by the OTLP specification 1 (OTLP/HTTP, JSON Protobuf encoding): ids in hexadecimal, 64-bit numbers as texts. */

const Attribute = z.object({
  key: z.string(),
  value: z
    .object({ stringValue: z.string() })
    .or(z.object({ intValue: z.int() }))
    .or(z.object({ doubleValue: z.number() })),
})
const Span = z.object({
  traceId: z.string().regex(/^[0-9a-f]{32}$/u),
  spanId: z.string().regex(/^[0-9a-f]{16}$/u),
  parentSpanId: z.string().optional(),
  name: z.string(),
  kind: z.int(),
  startTimeUnixNano: z.string().regex(/^\d+$/u).transform(BigInt),
  endTimeUnixNano: z.string().regex(/^\d+$/u).transform(BigInt),
  attributes: z.array(Attribute),
  status: z.object({ code: z.int() }),
})
const Sent = z.object({
  resourceSpans: z.array(
    z.object({
      resource: z.object({ attributes: z.array(Attribute) }),
      scopeSpans: z.array(z.object({ spans: z.array(Span) })),
    }),
  ),
})

/** SpanKind and Status of opentelemetry-proto, trace.proto. */
const INTERNAL = 1
const SERVER = 2
const ERROR = 2
/** The example of W3C Trace Context, 3.2. */
const TRACE = '0af7651916cd43dd8448eb211c80319c'
const CALLER = 'b7ad6b7169203331'

let collector: Server
let bodies: string[] = []
let app: FastifyInstance | undefined

beforeAll(async () => {
  collector = createServer((asked, answer) => {
    let body = ''
    asked.on('data', (chunk: Buffer) => (body += chunk.toString('utf8')))
    asked.on('end', () => {
      if (asked.url === '/v1/traces' && asked.headers['content-type'] === 'application/json') bodies.push(body)
      answer.setHeader('content-type', 'application/json').end('{}')
    })
  })
  await new Promise<void>((resolve) => collector.listen(0, '127.0.0.1', resolve))
  process.env.OTEL_EXPORTER_OTLP_ENDPOINT = `http://127.0.0.1:${(collector.address() as AddressInfo).port}`
  process.env.OTEL_SERVICE_NAME = 'pottery'
})
afterAll(() => {
  delete process.env.OTEL_EXPORTER_OTLP_ENDPOINT
  delete process.env.OTEL_SERVICE_NAME
  collector.close()
})
afterEach(async () => {
  await app?.close()
  app = undefined
  bodies = []
})

/** Stops the service, which sends what it has, and gives the spans. */
async function spansOf(service: FastifyInstance) {
  await service.close()
  const sent = bodies.map((body) => Sent.parse(JSON.parse(body)))
  const [resource] = sent.flatMap(({ resourceSpans }) => resourceSpans.map((one) => one.resource.attributes))
  return { spans: spansIn(bodies), resource }
}

const spansIn = (sent: string[]) =>
  sent
    .flatMap((body) => Sent.parse(JSON.parse(body)).resourceSpans)
    .flatMap(({ scopeSpans }) => scopeSpans.flatMap(({ spans }) => spans))

const valueOf = (attributes: z.infer<typeof Attribute>[] | undefined, key: string): unknown =>
  Object.values(attributes?.find((one) => one.key === key)?.value ?? {})[0]

describe('where traces are asked for', () => {
  it('has a span of each request in the trace of its caller, and in it one for each stage', async () => {
    app = await runningService({ traces: true })
    await request(app.server)
      .post('/v1/checks?use=permanent-room&properNames=SECRET')
      .set('content-type', 'image/svg+xml')
      .set('traceparent', `00-${TRACE}-${CALLER}-01`)
      .send(THEATER)
      .expect(200)
    const { spans, resource } = await spansOf(app)
    expect(valueOf(resource, 'service.name')).toBe('pottery')
    expect(valueOf(resource, 'service.version')).toEqual(expect.any(String))
    const [whole, another] = spans.filter(({ kind }) => kind === SERVER)
    expect(another).toBeUndefined()
    // The name and the attributes by the semantic conventions for HTTP spans (OpenTelemetry 1).
    expect(whole).toMatchObject({ traceId: TRACE, parentSpanId: CALLER, name: 'POST /v1/checks', status: { code: 0 } })
    expect(valueOf(whole?.attributes, 'http.route')).toBe('/v1/checks')
    expect(valueOf(whole?.attributes, 'http.response.status_code')).toBe(200)
    expect(valueOf(whole?.attributes, 'url.path')).toBe('/v1/checks')
    const inside = spans.filter((span) => span.kind === INTERNAL)
    expect(inside.map(({ name }) => name).sort()).toEqual([...STAGES].sort())
    for (const span of inside) {
      expect(span).toMatchObject({ traceId: TRACE, parentSpanId: whole?.spanId })
      expect(span.endTimeUnixNano).toBeGreaterThanOrEqual(span.startTimeUnixNano)
    }
    const begun = inside.toSorted((a, b) => Number(a.startTimeUnixNano - b.startTimeUnixNano)).map(({ name }) => name)
    expect(begun.indexOf('read')).toBeLessThan(begun.indexOf('recognise'))
    expect(begun.indexOf('judge')).toBeLessThan(begun.indexOf('report'))
    expect(bodies.join('')).not.toContain('SECRET')
  })

  it('begins a trace of its own without one, and marks only faults of ours as errors', async () => {
    app = await runningService({ traces: true })
    await request(app.server).post('/v1/checks').set('content-type', 'image/svg+xml').send('<svg').expect(400)
    await request(app.server).get('/v1/nothing/here').expect(404)
    app.drain()
    await request(app.server).get('/readyz').expect(503)
    const { spans } = await spansOf(app)
    // The answer to /readyz is a fault (503), but whoever asks for it asks all the time: it has no span.
    expect(spans.map(({ name }) => name)).toEqual(['POST /v1/checks', 'GET'])
    expect(new Set(spans.map(({ traceId }) => traceId)).size).toBe(2)
    for (const span of spans) {
      expect(span.parentSpanId ?? '').toBe('')
      expect(span.status.code).not.toBe(ERROR)
    }
  })

  it('is told so by the standard variable alone, and has the ids of the trace in the line of the log', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'traces-'))
    const { PATH, OTEL_EXPORTER_OTLP_ENDPOINT } = process.env
    const started = spawn(process.execPath, [fileURLToPath(new URL('../../../dist/main.js', import.meta.url))], {
      env: { PATH, OTEL_EXPORTER_OTLP_ENDPOINT, OTEL_EXPORTER_OTLP_PROTOCOL: 'grpc', PORT: '0', DATA_DIR: folder },
    })
    try {
      let log = ''
      started.stdout.on('data', (chunk: Buffer) => (log += chunk.toString('utf8')))
      await expect.poll(() => log, { timeout: 60_000 }).toContain('listening')
      const [base = ''] = /http:\/\/127\.0\.0\.1:\d+/u.exec(log) ?? []
      await fetch(`${base}/v1/standards`, { headers: { traceparent: `00-${TRACE}-${CALLER}-01` } })
      const ended = once(started, 'exit')
      started.kill('SIGTERM')
      await ended
      const lines = log
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line) as Record<string, unknown>)
      const [span] = spansIn(bodies)
      expect(span).toMatchObject({ traceId: TRACE, name: 'GET /v1/standards' })
      expect(lines.find(({ path }) => path === '/v1/standards')).toMatchObject({
        trace_id: TRACE,
        span_id: span?.spanId,
      })
      expect(lines.map(({ msg }) => msg)).toContainEqual(expect.stringMatching(/grpc: traces are sent as http\/json/))
    } finally {
      started.kill('SIGKILL')
      rmSync(folder, { recursive: true })
    }
  })

  it('answers and ends although no collector is there', async () => {
    const endpoint = process.env.OTEL_EXPORTER_OTLP_ENDPOINT
    process.env.OTEL_EXPORTER_OTLP_ENDPOINT = 'http://127.0.0.1:1'
    try {
      app = await runningService({ traces: true })
      await request(app.server).get('/v1/standards').expect(200)
      await app.close()
      expect(bodies).toEqual([])
    } finally {
      process.env.OTEL_EXPORTER_OTLP_ENDPOINT = endpoint
    }
  })
})

it('sends nothing where traces are not asked for, whatever a caller sends', async () => {
  app = await runningService()
  await request(app.server).get('/v1/standards').set('traceparent', `00-${TRACE}-${CALLER}-01`).expect(200)
  await app.close()
  expect(bodies).toEqual([])
})
