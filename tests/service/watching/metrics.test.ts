import { spawnSync } from 'node:child_process'
import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { STAGES } from '../../../src/stages.js'
import { PROBLEMS } from '../../../src/service/problem-table.js'
import { runningService, THEATER } from '../running.js'
import { Meters } from '../../../src/service/watching/meters.js'
import { parseMetrics, readMetrics, valueOf } from './read-metrics.js'

/** Names and types as Prometheus says they should be: prometheus.io, “Metric and label naming” and “Exposition formats”. */

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

const DESCRIPTION = {
  standards: ['us-ada-2010'],
  sign: { use: 'permanent-room', mark: 'SECRET-MARK', lettering: [{ text: 'KILN' }], units: 'mm' },
}

describe('what is counted', () => {
  it('begins at zero, so that the first time is an increase', async () => {
    const { value } = await readMetrics(app)
    for (const problem of Object.keys(PROBLEMS))
      expect(value('fingertrue_rejections_total', { what: 'request', problem }), problem).toBe(0)
    for (const stage of STAGES) expect(value('fingertrue_check_stage_duration_seconds', { stage }), stage).toBe(0)
    for (const verdict of ['pass', 'fail', 'undetermined', 'not-applicable'])
      expect(value('fingertrue_findings_total', { verdict }), verdict).toBe(0)
  })

  it('is every stage of a drawing, in a thread, and those of a description, in line', async () => {
    const before = await readMetrics(app)
    await request(app.server)
      .post('/v1/checks?use=permanent-room')
      .set('content-type', 'image/svg+xml')
      .send(THEATER)
      .expect(200)
    await request(app.server).post('/v1/checks').send(DESCRIPTION).expect(200)
    const after = await readMetrics(app)
    const more = (stage: string) => {
      const name = 'fingertrue_check_stage_duration_seconds'
      return Number(after.value(name, { stage })) - Number(before.value(name, { stage }))
    }
    expect(Object.fromEntries(STAGES.map((stage) => [stage, more(stage)]))).toEqual({
      // A description has nothing to be read or recognised.
      read: 1,
      recognise: 1,
      measure: 2,
      judge: 2,
      report: 2,
      write: 2,
    })
    expect(after.value('fingertrue_pool_wait_duration_seconds')).toBe(1)
    expect(after.value('fingertrue_pool_tasks', { state: 'running' })).toBe(0)
  })

  it('is each finding of a report by its verdict, and the report by its own', async () => {
    const before = await readMetrics(app)
    const answer = await request(app.server).post('/v1/checks').send(DESCRIPTION).expect(200)
    const { verdict, findings } = answer.body as { verdict: string; findings: { verdict: string }[] }
    const after = await readMetrics(app)
    const more = (name: string, of: string) =>
      Number(after.value(name, { verdict: of })) - Number(before.value(name, { verdict: of }))
    for (const of of ['pass', 'fail', 'undetermined', 'not-applicable'])
      expect(more('fingertrue_findings_total', of), of).toBe(findings.filter((one) => one.verdict === of).length)
    expect(more('fingertrue_reports_total', verdict)).toBe(1)
  })

  it('is each request by the template of its address, never by the address', async () => {
    await request(app.server).get('/v1/standards/us-ada-2010').expect(200)
    await request(app.server).get('/v1/standards/au-aba').expect(200)
    await request(app.server).get('/v1/no/such/address').expect(404)
    const { value, text } = await readMetrics(app)
    const requests = 'http_server_request_duration_seconds'
    expect(value(requests, { method: 'GET', route: '/v1/standards/:id', status: '2xx' })).toBe(2)
    expect(value(requests, { method: 'GET', route: 'none', status: '4xx' })).toBe(1)
    expect(text).not.toMatch(/us-ada-2010|au-aba|no\/such/)
  })

  it('is each problem by its type: of ours, of the framework, and of what is no HTTP', async () => {
    const seen = async (problem: string) =>
      Number((await readMetrics(app)).value('fingertrue_rejections_total', { what: 'request', problem }))
    const before = await seen('malformed-drawing')
    await request(app.server).post('/v1/checks').set('content-type', 'image/svg+xml').send('<svg').expect(400)
    expect(await seen('malformed-drawing')).toBe(before + 1)
    const malformed = await seen('malformed-request')
    // A broken escape in an address is refused before there is a route (RFC 3986, 2.1).
    await request(app.server).get('/v1/%E0%A4%A').expect(400)
    expect(await seen('malformed-request')).toBe(malformed + 1)
    const json = await seen('malformed-json')
    await request(app.server).post('/v1/checks').set('content-type', 'application/json').send('{').expect(400)
    expect(await seen('malformed-json')).toBe(json + 1)
  })

  it('tells of no client, no file and no sign', async () => {
    await request(app.server)
      .post('/v1/submittals')
      .field('name', 'SECRET-NAME')
      .attach('files', THEATER, 'SECRET-FILE.svg')
      .expect(202)
    const { text } = await readMetrics(app)
    expect(text).not.toMatch(/SECRET/i)
    expect(text).not.toMatch(/local"|sub_|sgn_/)
  })
})

describe('what is checked for a submittal', () => {
  it('is counted like what is checked at once, and a sign that cannot be checked by its problem', async () => {
    const other = await runningService()
    /** Nothing on it can be felt: it is refused when it is checked, not when it is handed in. */
    const bare =
      '<svg xmlns="http://www.w3.org/2000/svg" width="9mm" height="9mm" viewBox="0 0 9 9"><rect width="9" height="9"/></svg>'
    try {
      await other.listen({ port: 0, host: '127.0.0.1' })
      await request(other.server)
        .post('/v1/submittals')
        .field('name', 'Pottery studio')
        .attach('files', THEATER, 'one.svg')
        .attach('files', Buffer.from(bare), 'two.svg')
        .expect(202)
      const counted = async () => {
        const { families, value } = await readMetrics(other)
        const reports = families.find(({ name }) => name === 'fingertrue_reports_total')?.samples ?? []
        return {
          reports: reports.reduce((sum, sample) => sum + sample.value, 0),
          rejected: value('fingertrue_rejections_total', { what: 'sign', problem: 'no-tactile-elements' }),
          written: value('fingertrue_check_stage_duration_seconds', { stage: 'write' }),
        }
      }
      await expect.poll(counted, { timeout: 30_000 }).toEqual({ reports: 1, rejected: 1, written: 1 })
    } finally {
      await other.close()
    }
  })
})

describe('what waits', () => {
  it('is read from the store', async () => {
    // A service that does not listen checks nothing that is queued.
    const other = await runningService()
    try {
      await request(other.server)
        .post('/v1/submittals')
        .field('name', 'Pottery studio')
        .attach('files', THEATER, 'one.svg')
        .attach('files', Buffer.from(THEATER.toString('utf8').replace('</svg>', '<!-- 2 --></svg>')), 'two.svg')
        .expect(202)
      const { value } = await readMetrics(other)
      expect(value('fingertrue_open_signs')).toBe(2)
      expect(value('fingertrue_queue_jobs', { queue: 'checks' })).toBe(2)
      expect(value('fingertrue_queue_jobs', { queue: 'notifications' })).toBe(0)
      expect(value('fingertrue_queue_oldest_job_age_seconds', { queue: 'checks' })).toBeGreaterThanOrEqual(0)
      expect(value('fingertrue_store_up')).toBe(1)
    } finally {
      await other.close()
    }
  })
})

describe('the text', () => {
  it('is of the type that the format has', async () => {
    expect((await readMetrics(app)).contentType).toBe('text/plain; version=0.0.4; charset=utf-8')
  })

  it('names what only grows with _total, what is measured with its base unit, and nothing otherwise', async () => {
    const { families } = await readMetrics(app)
    expect(families.length).toBeGreaterThan(30)
    for (const { name, type, help } of families) {
      expect(help, name).not.toBe('')
      expect(name).toMatch(/^(fingertrue|http_server|process|nodejs)_[a-z0-9_]+$/)
      expect(name.endsWith('_total'), name).toBe(type === 'counter')
      if (type === 'histogram') expect(name).toMatch(/_seconds$/)
      expect(name).not.toMatch(/milli|minute|kilo|mega|percent/)
    }
  })

  const promtool = spawnSync('promtool', ['--version']).status === 0
  it.skipIf(!promtool && !process.env.CI)(
    'is without fault for Prometheus’s own tool (promtool check metrics)',
    async () => {
      const { text } = await readMetrics(app)
      const { status, stdout, stderr } = spawnSync('promtool', ['check', 'metrics'], { input: text, encoding: 'utf8' })
      expect(`${stdout}${stderr}`).toBe('')
      expect(status).toBe(0)
    },
  )
})

describe('/metrics', () => {
  it('needs no key', async () => {
    const keyed = await runningService({ auth: 'keys' })
    try {
      await request(keyed.server).get('/v1/standards').expect(401)
      const { value } = await readMetrics(keyed)
      expect(value('fingertrue_rejections_total', { what: 'request', problem: 'unauthorized' })).toBe(1)
    } finally {
      await keyed.close()
    }
  })

  it('is not there where it is turned off', async () => {
    const silent = await runningService({ metrics: false })
    try {
      await request(silent.server).get('/metrics').expect(404)
      await request(silent.server).post('/v1/checks').send(DESCRIPTION).expect(200)
    } finally {
      await silent.close()
    }
  })

  it('answers while the database is away, and says so instead of a number', async () => {
    const meters = new Meters(2)
    const idle = { running: 0, waiting: 0 }
    const queue = { waiting: 3, oldest: 1.5 }
    await meters.text(idle, { openSigns: 3, queues: { checks: queue, notifications: queue } })
    const families = parseMetrics(await meters.text(idle, undefined))
    expect(valueOf(families, 'fingertrue_store_up')).toBe(0)
    expect(valueOf(families, 'fingertrue_open_signs')).toBe(NaN)
    expect(families.find(({ name }) => name === 'fingertrue_queue_jobs')?.samples).toEqual([])
  })
})
