import { Resvg } from '@resvg/resvg-js'
import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { DotPlan } from '../../src/make/dot-plan/schema.js'
import { readProgram } from '../../src/make/gcode/read.js'
import { Report } from '../../src/report/schema.js'
import { POTTERY_ROOM } from '../../src/sign/examples.js'
import { LIMITS } from '../../src/service/settings.js'
import { DOT, HEAD, MACHINE, picture } from '../make/dot-plan/pictures.js'
import { runningService, THEATER, THEATER_CELLS, type ProblemAnswer } from './running.js'

/** Plans of dots over HTTP, and programs that come back as signs. The heads are invented. */

let app: FastifyInstance
beforeAll(async () => void (app = await runningService()))
afterAll(() => app.close())

const SETTINGS = { head: HEAD, machine: MACHINE, dot: DOT, cartridge: { dots: 1000 } }
const post = (body: object, accept = 'application/json') =>
  request(app.server).post('/v1/dot-plans').set('accept', accept).send(body)
const ofDrawing = (query = {}, accept = 'application/json') =>
  request(app.server)
    .post('/v1/dot-plans')
    .query(query)
    .set('accept', accept)
    .set('content-type', 'image/svg+xml')
    .send(THEATER)
const textOf = (response: request.Response): string => response.text ?? (response.body as Buffer).toString()
const check = (program: string, query = {}) =>
  request(app.server).post('/v1/checks').query(query).set('content-type', 'text/x-gcode').send(program)

/** Dots of cells, by their numbers in Unicode (U+2800 and up). */
const dotsIn = (cells: string): number =>
  [...cells].reduce(
    (sum, cell) => sum + ((cell.codePointAt(0) ?? 0) - 0x2800).toString(2).replaceAll('0', '').length,
    0,
  )

describe('POST /v1/dot-plans', () => {
  it('plans points', async () => {
    const points = picture(40)
    const plan = DotPlan.parse((await post({ points, ...SETTINGS }).expect(200)).body)
    expect(plan.sequence.map(String).sort()).toEqual(points.map(String).sort())
    expect(plan.assumptions.map(({ about }) => about)).toEqual(['walls', 'panel'])
  })

  it('plans many points, whose body is read in a thread', async () => {
    const points = picture(1200)
    expect(JSON.stringify({ points }).length).toBeGreaterThan(LIMITS.inlineJson)
    expect(DotPlan.parse((await post({ points, ...SETTINGS }).expect(200)).body).cartridges).toHaveLength(2)
  })

  it('plans a drawing, with sizes in the query', async () => {
    const response = await ofDrawing({
      'head.lift': 5,
      'head.approach.angle': 0,
      'head.approach.length': 2,
      'head.approach.height': 1,
      'cartridge.dots': 10,
    })
    const plan = DotPlan.parse(response.body)
    expect(plan.dots).toBe(dotsIn(THEATER_CELLS))
    expect(plan.head).toMatchObject({ lift: 5, approach: { angle: 0, length: 2, height: 1 } })
    expect(Math.max(...plan.cartridges.map(({ dots }) => dots))).toBeLessThanOrEqual(10)
  })

  it('plans a description, and asks for the places when it does not say them', async () => {
    const plan = DotPlan.parse((await post({ sign: POTTERY_ROOM }).expect(200)).body)
    expect(plan.dot.height).toBe(0.75)
    expect(plan.volume).toBeGreaterThan(0)
    const unplaced = { ...POTTERY_ROOM, braille: [{ ...POTTERY_ROOM.braille[0], origin: undefined }] }
    const problem = (await post({ sign: unplaced }).expect(422)).body as ProblemAnswer
    expect(problem.errors?.map(({ pointer }) => pointer)).toEqual(['/sign/braille'])
  })

  it('refuses points beside a drawing, and neither', async () => {
    const pointer = async (body: object) => ((await post(body).expect(422)).body as ProblemAnswer).errors?.[0].pointer
    expect(await pointer({ points: [[1, 1]], drawing: '<svg/>' })).toBe('/points')
    expect(await pointer({ head: HEAD })).toBe('/points')
    expect(await pointer({ points: [[1, 1]], head: { ...HEAD, tipDiamter: 1 } })).toBe('/head/tipDiamter')
  })
})

describe('the forms of a plan', () => {
  it('a table with a row for each dot', async () => {
    const rows = textOf(
      await post({ points: picture(30), ...SETTINGS }, 'text/csv').expect('content-type', /text\/csv/),
    ).split('\r\n')
    expect(rows[0]).toBe('number,cartridge,x_mm,y_mm')
    expect(rows).toHaveLength(32)
    expect(rows[1]).toMatch(/^1,1,[\d.]+,[\d.]+$/)
  })

  it('a drawing with a title, each dot and its number, which an independent reader draws', async () => {
    const svg = textOf(await ofDrawing({}, 'image/svg+xml').expect('content-type', /svg/))
    const dots = dotsIn(THEATER_CELLS)
    expect(svg).toMatch(/role="img" aria-labelledby="plan-title plan-desc"/)
    expect(svg).toContain(`<title id="plan-title">Dot plan: ${dots} dots, 1 cartridge</title>`)
    for (let number = 1; number <= dots; number++) expect(svg).toContain(`>${number}</text>`)
    const { width, height } = new Resvg(svg).render()
    expect(width).toBeGreaterThan(100)
    expect(height).toBeGreaterThan(50)
  })

  it('a program in inches that stays above the surface, when that is asked for', async () => {
    const ask = async (query: object) =>
      textOf(await ofDrawing(query, 'text/x-gcode').expect('content-type', /x-gcode/))
    const real = await ask({})
    const dry = await ask({ units: 'in', variant: 'dry-run', moves: 'plain' })
    expect(real).toMatch(/^G21 /m)
    expect(dry).toMatch(/^G20 /m)
    expect(dry).toContain('(DRY RUN')
    expect(dry).not.toMatch(/G8[123]/)
    const places = (text: string) => readProgram(new TextEncoder().encode(text)).dots
    expect(places(dry)).toHaveLength(dotsIn(THEATER_CELLS))
    places(dry).forEach(({ x, y }, k) => {
      expect(x).toBeCloseTo(places(real)[k].x, 3)
      expect(y).toBeCloseTo(places(real)[k].y, 3)
    })
  })
})

describe('a program as the sign that it makes', () => {
  const programOf = async (query = {}) => textOf(await ofDrawing(query, 'text/x-gcode').expect(200))

  it('reads as the drawing did, and leaves open what a program does not show', async () => {
    const report = Report.parse((await check(await programOf()).expect(200)).body)
    expect(report.reading.braille[0].lines[0].cells).toBe(THEATER_CELLS)
    const found = (slug: string) => report.findings.find(({ requirement }) => requirement === `us-ada-2010/${slug}`)
    expect(found('703.3.1/dot-base-diameter')).toMatchObject({ verdict: 'undetermined', reason: 'missing-fact' })
    expect(found('703.2/wording')?.verdict).toBe('undetermined')
    expect(found('703.3.1/cell-spacing')).toMatchObject({ verdict: 'pass', measured: { basis: 'drawn' } })
    expect(report.verdict).not.toBe('pass')
  })

  it('takes the size of the dots from the query or from a description', async () => {
    const program = await programOf()
    const diameter = (body: unknown) =>
      Report.parse(body).findings.find(({ requirement }) => requirement.endsWith('/dot-base-diameter'))
    expect(diameter((await check(program, { dotBaseDiameter: 1.4 }).expect(200)).body)).toMatchObject({
      verdict: 'fail',
    })
    const described = { program, sign: { use: 'permanent-room', braille: [{ dotBaseDiameter: 1.55 }] } }
    const report = (await request(app.server).post('/v1/checks').send(described).expect(200)).body as unknown
    expect(diameter(report)).toMatchObject({ verdict: 'pass', measured: { value: 1.55, basis: 'declared' } })
    const form = request(app.server).post('/v1/checks').field('sign', JSON.stringify(described.sign))
    const sent = await form.attach('program', Buffer.from(program), 'dots.nc').expect(200)
    expect(Report.parse(sent.body).findings.map(({ verdict }) => verdict)).toEqual(
      Report.parse(report).findings.map(({ verdict }) => verdict),
    )
  })

  it('shows cells that were moved after the drawing was checked', async () => {
    const program = await programOf()
    const squeezed = program.replace(/X(\d+\.\d+)/g, (_, x: string) => `X${(Number(x) * 0.9).toFixed(4)}`)
    const cells = Report.parse((await check(squeezed).expect(200)).body).findings
    expect(cells.find(({ requirement }) => requirement.endsWith('703.3.1/dot-spacing'))?.verdict).toBe('fail')
  })

  it('names the line of what cannot be read', async () => {
    const problem = (await check('G21 G90\nG0 Z3\nG2 X1 Y1 I1 J0\n').expect(400)).body as ProblemAnswer
    expect(problem).toMatchObject({ type: '/docs/problems/malformed-program', errors: [{ line: 3, column: 1 }] })
  })

  it('is read by POST /v1/readings too', async () => {
    const sent = request(app.server).post('/v1/readings').set('content-type', 'text/x-gcode')
    const { reading } = (await sent.send(await programOf()).expect(200)).body as Report
    expect(reading.braille[0].lines[0].cells).toBe(THEATER_CELLS)
  })
})
