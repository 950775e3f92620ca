import { createHash } from 'node:crypto'
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync, mkdirSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { unzipSync } from 'fflate'
import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { HistoryResource } from '../../../src/service/submittals/resources.js'
import { SET_FORMS, SIGN_FORMS } from '../../../src/service/submittals/evidence-types.js'
import { readMetrics } from '../watching/read-metrics.js'
import { checked, GLAZE, KILN, listening, signsOf, uploaded } from './kept.js'

/** Evidence over HTTP: every form is there, names its type, and stays the same until something changes. */

const WORKER = new URL('../../../dist/service/submittals/evidence-worker.js', import.meta.url)

let app: FastifyInstance
let id: string
let sign: string
beforeAll(async () => {
  const evidence = { worker: WORKER, timeLimit: 120_000, heapLimit: 1024, queueLimit: 8 }
  app = await listening({ evidence })
  const made = await uploaded(app, { 'K-104.svg': KILN, 'G-1.svg': GLAZE }, '=Kiln/“House”')
  id = made.id
  await checked(app, id)
  sign = (await signsOf(app, id))[0]?.id ?? ''
}, 60_000)
afterAll(() => app.close())

const get = (path: string) =>
  request(app.server)
    .get(path)
    .buffer(true)
    .parse((response, done) => {
      const parts: Buffer[] = []
      response.on('data', (part: Buffer) => parts.push(part))
      response.on('end', () => done(null, Buffer.concat(parts)))
    })

/** What files of a type begin with: RFC 8118 (PDF), APPNOTE 4.3.7 (zip), the byte order mark of our CSV, markup, JSON. */
const BEGINNINGS: Record<string, string> = {
  pdf: '%PDF-',
  zip: 'PK\u0003\u0004',
  bcf: 'PK\u0003\u0004',
  csv: '\u00ef\u00bb\u00bf',
  html: '<!doctype html>',
  sarif: '{',
  xml: '<?xml',
}

describe('the evidence of a set', () => {
  it.each(Object.entries(SET_FORMS))('%s is had as %s, and not sent again to who has it', async (form, type) => {
    const response = await get(`/v1/submittals/${id}/${form}`).expect(200).expect('content-type', type)
    const body = response.body as Buffer
    expect(body.subarray(0, 20).toString('latin1')).toContain(BEGINNINGS[form.split('.')[1] ?? ''])
    const tag = response.headers.etag ?? ''
    await get(`/v1/submittals/${id}/${form}`).set('if-none-match', tag).expect(304)
    expect(response.headers['content-disposition']).toMatch(/^(inline|attachment); filename\*=UTF-8''Kiln-House-/)
  })

  it('is counted apart from the checks, and at rest when it is written', async () => {
    const seen = async () => {
      const { value } = await readMetrics(app)
      const of = (name: string, labels = {}) => Number(value(`fingertrue_evidence_${name}`, labels))
      return {
        written: of('write_duration_seconds'),
        waited: of('wait_duration_seconds'),
        running: of('tasks', { state: 'running' }),
        waiting: of('tasks', { state: 'waiting' }),
      }
    }
    await expect.poll(seen).toMatchObject({ running: 0, waiting: 0 })
    const before = await seen()
    await get(`/v1/submittals/${id}/schedule.csv`).expect(200)
    await expect.poll(seen).toEqual({ ...before, written: before.written + 1, waited: before.waited + 1 })
  })

  it('is the same twice, and another after a change', async () => {
    const of = async () => {
      const response = await get(`/v1/submittals/${id}/evidence.zip`).expect(200)
      return { bytes: (response.body as Buffer).toString('latin1'), tag: response.headers.etag }
    }
    const first = await of()
    expect(await of()).toEqual(first)
    await request(app.server).post(`/v1/submittals/${id}/signs/${sign}/notes`).send({ text: 'Seen.' }).expect(201)
    const second = await of()
    expect(second.tag).not.toBe(first.tag)
    expect(second.bytes).not.toBe(first.bytes)
  })

  it('as one zip has digests that sha256sum accepts (GNU coreutils), and the files as they came', async () => {
    const files = unzipSync((await get(`/v1/submittals/${id}/evidence.zip`)).body as Buffer)
    const folder = mkdtempSync(join(tmpdir(), 'evidence-'))
    try {
      for (const [name, bytes] of Object.entries(files)) {
        if (name.endsWith('/')) continue
        mkdirSync(join(folder, dirname(name)), { recursive: true })
        writeFileSync(join(folder, name), bytes)
      }
      execFileSync('sha256sum', ['-c', '--quiet', '--strict', 'SHA256SUMS'], { cwd: folder })
    } finally {
      rmSync(folder, { recursive: true })
    }
    expect(Buffer.from(files['signs/K-104/received/K-104.svg'] ?? []).equals(KILN)).toBe(true)
    const history = HistoryResource.parse(JSON.parse(Buffer.from(files['history.json'] ?? []).toString()))
    expect(history.intact).toBe(true)
    // Who has the zip can tell that the reports in it are those that the history speaks of (FIPS 180-4 by node:crypto).
    const report = createHash('sha256')
      .update(files['signs/K-104/report.json'] ?? [])
      .digest('hex')
    const told = history.events.find(({ kind, data }) => kind === 'sign-checked' && data.mark === 'K-104')
    expect(told?.data.digest).toBe(report)
  })

  it('of fewer signs is asked for with from and count', async () => {
    const rows = (await get(`/v1/submittals/${id}/schedule.csv?from=1&count=1`)).body as Buffer
    expect(rows.toString().trimEnd().split('\r\n')).toHaveLength(2)
    await get(`/v1/submittals/${id}/schedule.csv?count=0`).expect(422)
  })
})

describe('the evidence of one sign', () => {
  it.each(Object.entries(SIGN_FORMS))('%s is had as %s', async (form, type) => {
    const path = `/v1/submittals/${id}/signs/${sign}/${form}`
    const response = await get(path).expect(200).expect('content-type', type)
    expect((response.body as Buffer).toString('latin1')).toContain(BEGINNINGS[form.split('.')[1] ?? ''])
  })

  it('has the drawing as we redrew it, which runs nothing wherever it is opened', async () => {
    const response = await get(`/v1/submittals/${id}/signs/${sign}/report.svg`).expect(200)
    expect(response.headers['content-security-policy']).toContain('sandbox')
    expect((response.body as Buffer).toString()).toContain('<svg')
  })

  it('is not there for what is not there', async () => {
    await get(`/v1/submittals/${id}/signs/sgn_0/report.html`).expect(404)
    await get(`/v1/submittals/sub_0/report.pdf`).expect(404)
  })
})
