import { readdirSync, readFileSync } from 'node:fs'
import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { Problem, problemAddress, problemOf } from '../../src/service/problems.js'
import { PROBLEM_TYPES, PROBLEMS } from '../../src/service/problem-table.js'
import { problemMarkdown } from '../../src/service/problem-pages.js'
import { runningService } from './running.js'

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

const PAGES = new URL('../../docs/problems/', import.meta.url)

describe('every problem', () => {
  it('has a page in the docs, and every page is of a problem', () => {
    expect(readdirSync(PAGES).sort()).toEqual(PROBLEM_TYPES.map((type) => `${type}.md`).sort())
    for (const type of PROBLEM_TYPES)
      expect(readFileSync(new URL(`${type}.md`, PAGES), 'utf8')).toBe(problemMarkdown(type))
  })

  it.each(PROBLEM_TYPES)('%s has its page where its type points', async (type) => {
    const page = await request(app.server)
      .get(problemAddress(type))
      .expect(200)
      .expect('content-type', /^text\/html/)
    expect(page.text).toContain(`<code>${type}</code>`)
    expect(page.text).toContain('<html lang="en">')
    expect(page.text).not.toContain('undefined')
  })

  it('is on the list of problems', async () => {
    const { text } = await request(app.server).get('/docs/problems').expect(200)
    for (const type of PROBLEM_TYPES) expect(text).toContain(`href="${problemAddress(type)}"`)
  })

  it('is answered with a status of its kind (RFC 9110, 15.5 and 15.6)', () => {
    for (const type of PROBLEM_TYPES) expect(PROBLEMS[type].status).toBeGreaterThanOrEqual(400)
    expect(PROBLEM_TYPES.filter((type) => PROBLEMS[type].status >= 500)).toEqual([
      'store-unavailable',
      'storage-full',
      'busy',
      'internal-error',
    ])
  })

  it('becomes a document of the documented shape', () => {
    const cause = {
      type: 'too-large',
      detail: 'x',
      errors: [{ detail: 'y', line: 1, column: 2 }],
      excess: { limit: 1, actual: 2 },
    } as const
    expect(Problem.parse(problemOf({ ...cause, errors: [...cause.errors] }, 'id'))).toEqual({
      type: '/docs/problems/too-large',
      title: PROBLEMS['too-large'].title,
      status: 413,
      detail: 'x',
      instance: 'urn:uuid:id',
      errors: [{ detail: 'y', line: 1, column: 2 }],
      limit: 1,
      actual: 2,
    })
  })
})

it('has no page for what is no problem', async () => {
  await request(app.server).get('/docs/problems/none').expect(404)
  await request(app.server).get('/docs/problems/constructor').expect(404)
})
