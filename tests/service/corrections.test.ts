import { readFileSync } from 'node:fs'
import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { Correction } from '../../src/make/correct/schema.js'
import { Report } from '../../src/report/schema.js'
import { runningService, type ProblemAnswer } from './running.js'

/** POST /v1/corrections as a client has it. The drawing breaks table 703.3.1 of the 2010 ADA Standards by design and nothing else. */

const WIDE = readFileSync(new URL('../drawings/svg/hand-x-pitch27-plain.svg', import.meta.url))
const PITCH = 'us-ada-2010/703.3.1/dot-spacing'

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

const post = () => request(app.server).post('/v1/corrections')

describe('a correction', () => {
  it('takes a bare drawing, and its answer passes when it is sent back to be checked, with the same report', async () => {
    const response = await post().type('image/svg+xml').send(WIDE).expect(200)
    const { drawing, changes, notCorrected, report } = Correction.parse(response.body)
    expect(changes).toEqual([
      {
        requirement: PITCH,
        from: expect.closeTo(2.7, 3) as number,
        to: expect.closeTo(2.4, 3) as number,
        unit: 'mm',
        text: 'Distance of the dots in a cell: changed from 2.7 mm to 2.4 mm.',
      },
    ])
    expect(notCorrected).toEqual([])
    const again = await request(app.server)
      .post('/v1/checks')
      .send({ drawing, sign: { use: 'permanent-room' } })
      .expect(200)
    const checked = Report.parse(again.body)
    expect(checked.findings.map(({ requirement, verdict }) => [requirement, verdict])).toEqual(
      report.findings.map(({ requirement, verdict }) => [requirement, verdict]),
    )
    expect(checked.findings.find(({ requirement }) => requirement === PITCH)?.verdict).toBe('pass')
  })

  it('takes JSON and forms alike, with the standards and the description that a check takes', async () => {
    const sign = { use: 'permanent-room', panel: { finish: 'matte' } }
    const json = await post()
      .send({ drawing: WIDE.toString('utf8'), sign, standards: ['us-ada-2010'] })
      .expect(200)
    const form = await post()
      .attach('drawing', WIDE, { filename: 'a.svg', contentType: 'image/svg+xml' })
      .field('sign', JSON.stringify(sign))
      .expect(200)
    const [a, b] = [Correction.parse(json.body), Correction.parse(form.body)]
    expect(a.drawing).toBe(b.drawing)
    expect(a.report.findings.find(({ quantity }) => quantity === 'sign.finish')?.verdict).toBe(
      b.report.findings.find(({ quantity }) => quantity === 'sign.finish')?.verdict,
    )
  })

  it('needs a drawing', async () => {
    const sign = { use: 'permanent-room', lettering: [{ text: 'KILN' }] }
    const problem = (await post().send({ sign }).expect(422)).body as ProblemAnswer
    expect(problem.type).toMatch(/invalid-description$/)
    expect(problem.errors).toEqual([
      { detail: 'A correction changes a drawing: send one, in SVG.', pointer: '/drawing' },
    ])
  })

  it('refuses what a check refuses', async () => {
    const problem = (await post().type('image/svg+xml').send('<svg').expect(400)).body as ProblemAnswer
    expect(problem.type).toMatch(/malformed-drawing$/)
  })
})
