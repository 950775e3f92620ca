import { Validator } from '@seriousme/openapi-schema-validator'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { guarded, KEYED, type Guarded } from './guarded.js'

/** What the interface document says of keys is what the service does. */

const Document = z.object({
  paths: z.record(
    z.string(),
    z.record(
      z.string(),
      z.object({
        security: z.array(z.record(z.string(), z.array(z.string()))),
        responses: z.record(z.string(), z.unknown()),
      }),
    ),
  ),
})

let service: Guarded
let written: Record<string, unknown>
let document: z.infer<typeof Document>
beforeAll(async () => {
  service = await guarded()
  written = (await request(service.app.server).get('/openapi.json').expect(200)).body as Record<string, unknown>
  document = Document.parse(written)
})
afterAll(() => service.close())

const operations = () =>
  Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method, ...operation })),
  )

const call = (path: string, method: string, headers: Record<string, string> = {}) =>
  service.app.inject({ method: method.toUpperCase() as 'GET', url: path.replace(/\{\w+\}/gu, 'none'), headers })

describe('the interface document of a service that asks for keys', () => {
  it('is valid by the OpenAPI Initiative’s own JSON Schema for version 3.1', async () => {
    expect((await new Validator().validate(written)).errors).toBeUndefined()
  })

  it('tells of every route that takes a key', () => {
    const routes = service.app.guarded
      .filter(({ access }) => access.for === 'keys')
      .flatMap(({ url, methods }) =>
        methods.map((method) => `${method.toLowerCase()} ${url.replace(/:(\w+)/gu, '{$1}')}`),
      )
      .filter((route) => !route.startsWith('head '))
    const told = operations().filter(({ security }) => security.length > 0)
    expect(told.map(({ path, method }) => `${method} ${path}`).sort()).toEqual([...new Set(routes)].sort())
    expect(told.length).toBeGreaterThan(20)
  })

  it('says of each call whether it needs a key, and with which scope', async () => {
    const keys = new Map<string, string>()
    for (const { path, method, security, responses } of operations()) {
      const name = `${method} ${path}`
      const { statusCode } = await call(path, method)
      if (security.length === 0) {
        expect(statusCode, name).toBe(200)
        continue
      }
      expect(statusCode, name).toBe(401)
      const scopes = security[0]?.key ?? []
      expect(Object.keys(responses), name).toEqual(
        expect.arrayContaining(['401', '429', ...(scopes.length ? ['403'] : [])]),
      )
      const lacking = KEYED.filter((scope) => !scopes.includes(scope))
      const held = lacking.join()
      keys.set(held, keys.get(held) ?? (await service.key(lacking)))
      const answer = await call(path, method, { authorization: `Bearer ${keys.get(held)}` })
      if (scopes.length > 0) expect(answer.statusCode, name).toBe(403)
      else expect([401, 403], name).not.toContain(answer.statusCode)
    }
    expect(written.components).toMatchObject({ securitySchemes: { key: { type: 'http', scheme: 'bearer' } } })
  })
})
