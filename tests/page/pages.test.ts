import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { FastifyInstance } from 'fastify'
import { SET_FORMS, SIGN_FORMS } from '../../src/service/submittals/evidence-types.js'
import { runningService } from '../service/running.js'

/** The pages as a client gets them, without a browser. The values are invented. */

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService({ role: 'api' })
})
afterAll(() => app.close())

const MARKUP = '<img src=x onerror=alert(1)>'

async function handIn(count: number, name = 'Set'): Promise<string> {
  const signs = Array.from({ length: count }, (_, i) => ({
    mark: `S-${i + 1}`,
    ...(i === 0 && { location: MARKUP }),
    sign: { use: 'permanent-room', lettering: [{ text: 'ROOM' }] },
  }))
  const { header } = await request(app.server)
    .post('/submittals')
    .field('name', name)
    .field('standards', 'us-ada-2010')
    .attach('files', Buffer.from(JSON.stringify({ signs })), 'signs.json')
    .expect(303)
  return (header as Record<string, string>).location ?? ''
}

describe('a page', () => {
  it('lets in its own style sheet and script, which may be kept for ever, and nothing else', async () => {
    const { text, headers } = await request(app.server).get('/').expect(200)
    expect(headers['content-security-policy']).toContain("default-src 'none'; style-src 'self'; script-src 'self'")
    expect(text).not.toMatch(/<style|\sstyle="|\son\w+="|<script(?! type="module" src="\/assets\/)/u)
    const files = [...text.matchAll(/(?:href|src)="(\/assets\/[^"]+)"/gu)].map((match) => match[1] ?? '')
    expect(files).toHaveLength(2)
    for (const file of files) {
      const answer = await request(app.server).get(file).expect(200)
      expect(answer.headers['cache-control']).toContain('immutable')
    }
    await request(app.server).get('/assets/0/page.css').expect(404)
  })

  it('writes what came from outside as text', async () => {
    const { text } = await request(app.server)
      .get(await handIn(1, MARKUP))
      .expect(200)
    expect(text).not.toContain('<img')
    expect(text).toContain('&lt;img src=x onerror=alert(1)&gt;')
  })

  it('gives a large set a hundred signs at a time, all of them once', async () => {
    const at = await handIn(205)
    const marks: string[] = []
    for (const page of [1, 2, 3]) {
      const { text } = await request(app.server).get(`${at}?page=${page}`).expect(200)
      marks.push(...[...text.matchAll(/<bdi>(S-\d+)<\/bdi>/gu)].map((match) => match[1] ?? ''))
    }
    expect(marks).toEqual(Array.from({ length: 205 }, (_, i) => `S-${i + 1}`))
    const { text } = await request(app.server).get(`${at}?text=s-20&verdict=none`).expect(200)
    // S-20 and S-200 to S-205.
    expect(text).toContain('7 signs as asked for')
  })

  it('leads to every form of the evidence', async () => {
    const at = await handIn(1)
    const { text } = await request(app.server).get(at).expect(200)
    for (const form of Object.keys(SET_FORMS)) expect(text).toContain(`href="/v1${at}/${form}"`)
    expect(Object.keys(SIGN_FORMS).length).toBeGreaterThan(0)
  })

  it('is no part of the document of the interface', async () => {
    const answer = await request(app.server).get('/openapi.json').expect(200)
    const paths = Object.keys((answer.body as { paths: object }).paths)
    expect(paths).toContain('/v1/submittals')
    expect(paths.filter((path) => /^\/(?:submittals|assets|sign-|$)/u.test(path))).toEqual([])
  })
})

describe('what is not there', () => {
  it('is a page for browsers and a problem for clients', async () => {
    const page = await request(app.server).get('/nowhere').set('accept', 'text/html,*/*').expect(404)
    expect(page.text).toContain('<h1>There is nothing at this address</h1>')
    await request(app.server)
      .get('/nowhere')
      .expect(404)
      .expect('content-type', /problem\+json/u)
    const client = request(app.server).get('/v1/nowhere').set('accept', 'text/html,*/*')
    await client.expect(404).expect('content-type', /problem\+json/u)
    await request(app.server)
      .get('/submittals/sub_none')
      .expect(404)
      .expect('content-type', /text\/html/u)
  })
})

describe('a form', () => {
  it('from another site is not taken (OWASP, cross-site request forgery)', async () => {
    const at = await handIn(1)
    for (const header of [{ 'sec-fetch-site': 'cross-site' }, { origin: 'https://elsewhere.example' }])
      await request(app.server).post(`${at}/delete`).type('form').set(header).send('').expect(403)
    await request(app.server).get(at).expect(200)
  })

  it('lets go of what it names: cancelled, then deleted for good', async () => {
    const at = await handIn(2)
    await request(app.server).post(`${at}/cancel`).type('form').send('').expect(303)
    expect((await request(app.server).get(at).expect(200)).text).toContain('Cancelled.')
    expect((await request(app.server).get(`${at}/history`).expect(200)).text).toContain('✓ Intact')
    await request(app.server).get(`${at}/delete`).expect(200)
    await request(app.server).post(`${at}/delete`).type('form').send('').expect(303)
    await request(app.server).get(at).expect(404)
  })

  it('says what an upload lacks and keeps what was typed', async () => {
    const sent = request(app.server).post('/submittals').field('name', 'Second floor').field('use', 'parking')
    const { text } = await sent.attach('files', Buffer.from('%PDF-1.7'), 'plan.pdf').expect(422)
    expect(text).toContain('Choose at least one standard.')
    expect(text).toContain('value="Second floor"')
    expect(text).toMatch(/<option value="parking" selected/u)
    const pdf = request(app.server).post('/submittals').field('standards', 'us-ada-2010')
    const refused = await pdf.attach('files', Buffer.from('%PDF-1.7'), 'plan.pdf').expect(422)
    expect(refused.text).toContain('plan.pdf')
  })

  it('adds files behind the signs that are there', async () => {
    const at = await handIn(1)
    const more = JSON.stringify({ use: 'permanent-room', mark: 'T-1', lettering: [{ text: 'ROOM' }] })
    const sent = request(app.server).post(`${at}/signs`).attach('files', Buffer.from(more), 'more.json')
    await sent.expect(303)
    const { text } = await request(app.server).get(at).expect(200)
    expect(text.indexOf('T-1')).toBeGreaterThan(text.indexOf('S-1'))
    await request(app.server).post(`${at}/signs`).attach('files', Buffer.from('x'), 'x.pdf').expect(422)
  })
})
