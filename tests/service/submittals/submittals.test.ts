import { createHash } from 'node:crypto'
import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { POTTERY_ROOM } from '../../../src/sign/examples.js'
import {
  HistoryResource,
  SignList,
  SignResource,
  SubmittalResource,
} from '../../../src/service/submittals/resources.js'
import type { ProblemAnswer } from '../running.js'
import { checked, GLAZE, KILN, listening, SCHEDULE, signOf, signsOf, uploaded, zipOf, type Submittal } from './kept.js'

/** Submittals as their users meet them. The signs are our own drawings; readings, waivers and names are invented. */

let app: FastifyInstance
beforeAll(async () => {
  app = await listening()
})
afterAll(() => app.close())

const get = (path: string) => request(app.server).get(path)
const post = (path: string) => request(app.server).post(path)

describe('an upload', () => {
  it('of a zip and a schedule is kept, checked and of the documented shape', async () => {
    const zip = zipOf({ 'kiln-room.svg': KILN, 'glaze-lab.svg': GLAZE })
    const made = await uploaded(app, { 'signs.zip': zip, 'schedule.csv': SCHEDULE })
    expect(SubmittalResource.parse(made)).toMatchObject({ name: 'Pottery studio', standards: ['us-ada-2010@2'] })
    // Rows that name drawings which are not there are told, and are checked from what they say.
    expect(made.problems.map(({ detail }) => detail).join('\n')).toContain('wheel-room.svg')
    const done = await checked(app, made.id)
    const { signs } = SignList.parse((await get(`/v1/submittals/${made.id}/signs`).expect(200)).body)
    expect(signs.map(({ mark }) => mark)).toEqual(['K-104', 'K-106', 'W-2B', 'S-3', 'X-1'])
    // 2010 ADA Standards, table 703.3.1: the second drawing has its cells 5.6 mm apart, less than 0.241 in.
    expect(signs[1]).toMatchObject({ verdict: 'fail' })
    expect(done.signs).toEqual({ total: 5, done: 5 })
    const { pass, fail, undetermined, notApplicable, none } = done.verdicts
    expect(pass + fail + undetermined + notApplicable + none).toBe(5)
  })

  it('as JSON may name the set, its standards and its options', async () => {
    const response = await post('/v1/submittals')
      .send({ name: 'Ground floor', standards: ['us-ca-2019'], signs: [{ location: '117', sign: POTTERY_ROOM }] })
      .expect(202)
      .expect('location', /^\/v1\/submittals\/sub_/)
    const { id, name, standards } = response.body as Submittal
    expect(name).toBe('Ground floor')
    expect(standards[0]).toMatch(/^us-ca-2019@\d+$/)
    await checked(app, id)
    expect(await signsOf(app, id, '?report=brief')).toMatchObject([{ location: '117', report: { revision: 1 } }])
  })

  it('of which nothing can be used is refused with every reason, and keeps nothing', async () => {
    const before = (await get('/v1/submittals')).body as { submittals: unknown[] }
    const response = await post('/v1/submittals').attach('files', Buffer.from('hello'), 'notes.svg').expect(422)
    const problem = response.body as ProblemAnswer
    expect(problem.type).toBe('/docs/problems/no-signs')
    expect(problem.errors?.[0]?.detail).toContain('notes.svg')
    expect((await get('/v1/submittals')).body).toEqual(before)
  })

  it('keeps a drawing that cannot be checked, with the reason', async () => {
    const broken = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="10mm"><g></svg>')
    const { id } = await uploaded(app, { 'good.svg': KILN, 'broken.svg': broken })
    await checked(app, id)
    const [first, second] = await signsOf(app, id)
    expect([first?.mark, second?.mark]).toEqual(['broken', 'good'])
    expect(first).toMatchObject({ report: null, verdict: null, problem: { type: '/docs/problems/malformed-drawing' } })
    expect(second?.report).toMatchObject({ mark: 'good' })
  })

  it('of a standard that is not known is refused', async () => {
    await post('/v1/submittals').field('standards', 'us-none-1').attach('files', KILN, 'a.svg').expect(422)
  })
})

describe('what is added to a sign', () => {
  it('readings decide what was undecided, in a new report beside the old one', async () => {
    const { id } = await uploaded(app, { 'K-104.svg': KILN })
    await checked(app, id)
    const [{ id: sign } = { id: '' }] = await signsOf(app, id)
    const height = (resource: Awaited<ReturnType<typeof signOf>>) =>
      resource.report?.findings.find(({ requirement }) => requirement === 'us-ada-2010/703.3.1/dot-height')?.verdict
    expect(height(await signOf(app, id, sign))).toBe('undetermined')
    // 2010 ADA Standards, table 703.3.1: 0.025 to 0.037 in, which is 0.635 to 0.940 mm.
    await post(`/v1/submittals/${id}/signs/${sign}/measurements`)
      .send([{ quantity: 'braille.dotHeight', values: [0.71, 0.74, 0.69], unit: 'mm' }])
      .expect(202)
    await checked(app, id)
    const after = SignResource.parse((await get(`/v1/submittals/${id}/signs/${sign}`)).body)
    expect(height(after)).toBe('pass')
    expect(after.reports.map(({ revision }) => revision)).toEqual([2, 1])
    const first = (await get(after.reports[1]?.address ?? '').expect(200)).body as { id: string }
    expect(first.id).toBe(after.reports[1]?.id)
    expect(first.id).not.toBe(after.report?.id)
  })

  it('facts of its place are taken in the unit that they were given in', async () => {
    const { id } = await uploaded(app, { 'K-104.svg': KILN })
    await checked(app, id)
    const [{ id: sign } = { id: '' }] = await signsOf(app, id)
    await request(app.server)
      .put(`/v1/submittals/${id}/signs/${sign}/installation`)
      .send({ units: 'in', panelBottomHeight: 51, side: 'latch' })
      .expect(202)
    await checked(app, id)
    const lowest = (await signOf(app, id, sign)).report?.findings.find(
      ({ requirement }) => requirement === 'us-ada-2010/703.4.1/lowest-baseline',
    )
    // 2010 ADA Standards 703.4.1: 48 inches at least; 51 millimetres would fail.
    expect(lowest?.verdict).toBe('pass')
  })

  it('a waiver lets a finding stand and changes no verdict; one that nothing needs is told', async () => {
    const { id } = await uploaded(app, { 'G-1.svg': GLAZE })
    await checked(app, id)
    const [{ id: sign } = { id: '' }] = await signsOf(app, id)
    const { report } = await signOf(app, id, sign)
    const failing = report?.findings.find(({ verdict, force }) => verdict === 'fail' && force === 'shall')
    const waive = (fingerprint: string, expires: string | null) =>
      post(`/v1/submittals/${id}/signs/${sign}/waivers`)
        .send({ fingerprint, reason: 'Until the refit', author: 'R. Ferrante', authority: 'Variance 7', expires })
        .expect(201)
    const held = await waive(failing?.fingerprint ?? '', '2099-12-31')
    expect(held.body).toMatchObject({ standing: 'in-force', requirement: failing?.requirement })
    expect((await waive(failing?.fingerprint ?? '', '2001-01-01')).body).toMatchObject({ standing: 'expired' })
    expect((await waive('0000', null)).body).toMatchObject({ standing: 'unused', requirement: null })
    const after = await signOf(app, id, sign)
    expect(after.verdict).toBe('fail')
    expect(after.report).toEqual(report)
    const [waiver] = after.waivers
    await request(app.server).delete(`/v1/submittals/${id}/signs/${sign}/waivers/${waiver?.id}`).expect(204)
    await request(app.server).delete(`/v1/submittals/${id}/signs/${sign}/waivers/${waiver?.id}`).expect(404)
    expect((await signOf(app, id, sign)).waivers).toHaveLength(2)
  })

  it('is refused with the place of the fault', async () => {
    const { id } = await uploaded(app, { 'K-104.svg': KILN })
    const [{ id: sign } = { id: '' }] = await signsOf(app, id)
    const response = await post(`/v1/submittals/${id}/signs/${sign}/measurements`)
      .send([{ quantity: 'braille.dotHeight', values: [-1] }])
      .expect(422)
    expect((response.body as ProblemAnswer).errors?.[0]?.pointer).toBe('/0/values/0')
  })
})

describe('the history', () => {
  it('can be proved without this service, by the method that it names', async () => {
    const { id } = await uploaded(app, { 'K-104.svg': KILN, 'G-1.svg': GLAZE })
    const done = await checked(app, id)
    const history = HistoryResource.parse((await get(`/v1/submittals/${id}/history`).expect(200)).body)
    expect(history.intact).toBe(true)
    const kinds = history.events.map(({ kind }) => kind)
    expect(kinds).toEqual(['submittal-created', 'sign-checked', 'sign-checked', 'submittal-checked'])
    const sorted = (value: unknown): string => {
      if (Array.isArray(value)) return `[${value.map(sorted).join(',')}]`
      if (typeof value !== 'object' || value === null) return JSON.stringify(value)
      const keys = Object.keys(value).sort()
      return `{${keys.map((key) => `${JSON.stringify(key)}:${sorted((value as never)[key])}`).join(',')}}`
    }
    let previous = '0'.repeat(64)
    for (const { hash, ...event } of history.events) {
      expect(event.previous).toBe(previous)
      // FIPS 180-4 by node:crypto; the canonical form written a second time here.
      expect(
        createHash('sha256')
          .update(sorted({ ...event, submittal: id }))
          .digest('hex'),
      ).toBe(hash)
      previous = hash
    }
    expect(done.history).toEqual({ events: 4, head: previous })
  })
})

describe('a submittal', () => {
  it('is listed by pages, the newest first, and is gone when it was deleted', async () => {
    const first = await uploaded(app, { 'a.svg': KILN }, 'first')
    const second = await uploaded(app, { 'a.svg': KILN }, 'second')
    const page = (await get('/v1/submittals?limit=1').expect(200)).body as { submittals: Submittal[]; next: string }
    expect(page.submittals.map(({ name }) => name)).toEqual(['second'])
    const next = (await get(`/v1/submittals?limit=1&cursor=${page.next}`)).body as { submittals: Submittal[] }
    expect(next.submittals.map(({ name }) => name)).toEqual(['first'])
    await request(app.server).delete(`/v1/submittals/${second.id}`).expect(204)
    await get(`/v1/submittals/${second.id}`).expect(404)
    await get(`/v1/submittals/${second.id}/signs`).expect(404)
    await get(`/v1/submittals/${first.id}`).expect(200)
  })

  it('that was cancelled checks no more and takes no more signs', async () => {
    const many = Object.fromEntries(Array.from({ length: 40 }, (_, i) => [`S-${i}.svg`, KILN]))
    const { id } = await uploaded(app, many)
    const response = await post(`/v1/submittals/${id}/cancel`).expect(200)
    expect((response.body as Submittal).state).toBe('cancelled')
    await post(`/v1/submittals/${id}/signs`).attach('files', KILN, 'b.svg').expect(409)
    const states = (await signsOf(app, id, '?report=brief')).map(({ state }) => state)
    expect(states).not.toContain('queued')
    expect(states).toContain('cancelled')
  })

  it('takes further signs behind those that it has', async () => {
    const { id } = await uploaded(app, { 'a.svg': KILN })
    await checked(app, id)
    await post(`/v1/submittals/${id}/signs`).attach('files', GLAZE, 'b.svg').expect(202)
    expect((await checked(app, id)).signs).toEqual({ total: 2, done: 2 })
    const failing = await signsOf(app, id, '?report=brief&verdict=fail')
    expect(failing.map(({ mark }) => mark)).toEqual(['b'])
    expect((await signsOf(app, id, '?text=A')).map(({ mark }) => mark)).toEqual(['a'])
  })
})
