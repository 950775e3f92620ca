import { Validator } from '@seriousme/openapi-schema-validator'
import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { Report } from '../../src/report/schema.js'
import { Problem, problemAddress } from '../../src/service/problems.js'
import { REPLAYS, STUCK } from './replays.js'
import { runningService } from './running.js'

/** The parts of an OpenAPI document that are looked at here. */
const Content = z.record(
  z.string(),
  z.object({
    schema: z.record(z.string(), z.unknown()),
    examples: z.record(z.string(), z.object({ summary: z.string(), value: z.unknown() })).optional(),
  }),
)
const Operation = z.object({
  operationId: z.string(),
  tags: z.array(z.string()).length(1),
  summary: z.string().min(1),
  description: z.string().min(1),
  requestBody: z.object({ content: Content }).optional(),
  responses: z.record(z.string(), z.object({ description: z.string(), content: Content.optional() })),
})
const Document = z.object({
  openapi: z.string(),
  tags: z.array(z.object({ name: z.string(), description: z.string() })),
  paths: z.record(z.string(), z.record(z.string(), Operation)),
  components: z.object({ schemas: z.record(z.string(), z.unknown()) }),
})

let app: FastifyInstance
let stuck: FastifyInstance
let document: z.infer<typeof Document>
let written: Record<string, unknown>
beforeAll(async () => {
  app = await runningService()
  stuck = await runningService(STUCK)
  const response = await request(app.server).get('/openapi.json').expect(200)
  written = response.body as Record<string, unknown>
  document = Document.parse(written)
})
afterAll(() => Promise.all([app.close(), stuck.close()]))

const operations = () =>
  Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
  )

describe('the OpenAPI document', () => {
  it('is valid by the OpenAPI Initiative’s own JSON Schema for version 3.1', async () => {
    const result = await new Validator().validate(written)
    expect(result.errors).toBeUndefined()
    expect(result.valid).toBe(true)
    expect(document.openapi).toBe('3.1.0')
  })

  it('tells of every route but pages for people', () => {
    const routes = app.guarded
      .filter(({ url, access }) => access.for === 'keys' || ['/livez', '/readyz', '/metrics'].includes(url))
      .flatMap(({ url, methods }) => methods.map((method) => ({ url: url.replace(/:(\w+)/gu, '{$1}'), method })))
      .filter(({ method }) => method !== 'HEAD')
      .map(({ url, method }) => `${method.toLowerCase()} ${url}`)
    expect(
      operations()
        .map(({ method, path }) => `${method} ${path}`)
        .sort(),
    ).toEqual([...new Set(routes)].sort())
    expect(routes).toEqual(expect.arrayContaining(['get /livez', 'post /v1/checks', 'get /v1/standards/{id}']))
  })

  it('names each operation once and tags it with a tag that is explained', () => {
    const ids = operations().map(({ operation }) => operation.operationId)
    expect(new Set(ids).size).toBe(ids.length)
    const tags = new Set(document.tags.map(({ name }) => name))
    for (const { operation } of operations()) expect(tags).toContain(operation.tags[0])
    expect(new Set(operations().map(({ operation }) => operation.tags[0]))).toEqual(tags)
  })

  it('has no schema that it does not use, and uses none that it does not have', () => {
    const text = JSON.stringify(written)
    const used = new Set([...text.matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/gu)].map((match) => match[1]))
    expect([...used].sort()).toEqual(Object.keys(document.components.schemas).sort())
  })

  it('is shown to people at /docs', async () => {
    await request(app.server).get('/docs').expect(200).expect('content-type', /html/)
    const response = await request(app.server).get('/docs/json').expect(200)
    expect(response.body).toEqual(written)
  })
})

describe('every documented answer', () => {
  it('is what a request example of the same name is answered with', async () => {
    let replayed = 0
    for (const { path, method, operation } of operations()) {
      const answer = operation.responses['200']?.content?.['application/json']
      for (const [name, { value }] of Object.entries(answer?.examples ?? {})) {
        const asked = operation.requestBody?.content['application/json']?.examples?.[name]?.value
        const call =
          method === 'get'
            ? request(app.server).get(path)
            : request(app.server)
                .post(path)
                .send(asked as object)
        expect((await call.expect(200)).body, `${operation.operationId} ${name}`).toEqual(value)
        replayed++
      }
    }
    expect(replayed).toBeGreaterThanOrEqual(5)
  })

  it('is answered to the drawing and the form of the examples as well, and neither fails', async () => {
    const { content = {} } = document.paths['/v1/checks']?.post?.requestBody ?? {}
    const drawing = content['image/svg+xml']?.examples?.drawing?.value
    const form = z
      .object({ drawing: z.string(), sign: z.unknown(), standards: z.string() })
      .parse(content['multipart/form-data']?.examples?.form?.value)
    const ask = () => request(app.server).post('/v1/checks')
    const alone = Report.parse((await ask().type('image/svg+xml').send(String(drawing)).expect(200)).body)
    const both = await ask()
      .attach('drawing', Buffer.from(form.drawing), 'sign.svg')
      .field('sign', JSON.stringify(form.sign))
      .field('standards', form.standards)
      .expect(200)
    const report = Report.parse(both.body)
    expect([alone.verdict, alone.stages.drawing]).not.toContain('fail')
    expect([report.stages.drawing, report.stages.product]).toEqual(['pass', 'pass'])
    expect(report.ignored).toEqual([])
  })

  it('that is a problem is provoked here, and no other is; of what is kept, in tests of its own', async () => {
    const pure = operations().filter(({ path }) => !/^\/(readyz|v1\/(submittals|webhooks|keys))/.test(path))
    const documentedProblems = pure.flatMap(({ operation }) =>
      Object.entries(operation.responses).flatMap(([status, { content }]) =>
        Object.keys(content?.['application/problem+json']?.examples ?? {}).map(
          (type) => `${operation.operationId} ${status} ${type}`,
        ),
      ),
    )
    const provoked: string[] = []
    for (const { operation, type, send } of REPLAYS) {
      const response = await send({ plain: app, stuck })
      const problem = Problem.parse(response.body)
      expect(problem.type, `${operation} ${type}: ${problem.detail}`).toBe(problemAddress(type))
      provoked.push(`${operation} ${response.status} ${type}`)
    }
    expect(provoked.sort()).toEqual(documentedProblems.sort())
  })
})
