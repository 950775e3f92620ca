import type { FastifyInstance } from 'fastify'
import { createHash } from 'node:crypto'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { escapeHtml } from '../../src/service/page.js'
import { POTTERY_ROOM } from '../../src/sign/examples.js'
import { runningService } from './running.js'

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

/** A content security policy lets a style sheet in whose hash it names (CSP Level 3, 6.7.3). */
function expectStyleAllowed({ text, headers }: request.Response) {
  const style = /<style>([\s\S]*?)<\/style>/u.exec(text)?.[1] ?? ''
  expect(style).not.toBe('')
  const hash = createHash('sha256').update(style).digest('base64')
  expect(headers['content-security-policy']).toContain(`'sha256-${hash}'`)
  expect(text).not.toMatch(/<script|\sstyle="|\son\w+="/u)
}

describe('pages', () => {
  it('let in the one style sheet that they have, and no script', async () => {
    expectStyleAllowed(await request(app.server).get('/docs/problems').expect(200))
    expectStyleAllowed(await request(app.server).get('/docs/problems/busy').expect(200))
    const report = request(app.server).post('/v1/checks').set('accept', 'text/html').send({ sign: POTTERY_ROOM })
    expectStyleAllowed(await report.expect(200))
  })

  it('lead on to the reference, which is there', async () => {
    const { text } = await request(app.server).get('/').expect(200)
    const links = [...text.matchAll(/(?:href|src)="(\/[^"]*)"/gu)].map((match) => match[1] ?? '')
    expect(links).toContain('/docs')
    for (const link of links) await request(app.server).get(link).expect(200)
  })

  it('write what came from outside as text', () => {
    expect(escapeHtml(`<a href="x">&'`)).toBe('&lt;a href=&quot;x&quot;&gt;&amp;&#39;')
  })
})

it('sends the headers that keep a browser from guessing (OWASP secure headers)', async () => {
  const { headers } = await request(app.server).get('/livez')
  expect(headers['x-content-type-options']).toBe('nosniff')
  expect(headers['content-security-policy']).not.toContain('upgrade-insecure-requests')
})
