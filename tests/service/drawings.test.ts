import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { DrawingAnswer } from '../../src/service/drawing-schema.js'
import { Problem } from '../../src/service/problems.js'
import { Report } from '../../src/report/schema.js'
import { runningService } from './running.js'

/** POST /v1/drawings as a client has it. The texts are invented; the clauses are those of the tables. */

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

const post = (body: object) => request(app.server).post('/v1/drawings').send(body)
const room = (text: string) => ({ use: 'permanent-room', lettering: [{ text }] })

describe('a drawing', () => {
  it.each([[['us-ada-2010']], [['us-ca-2019']], [['au-aba', 'au-ncc-2022']]])(
    'for %j passes when it is sent back to be checked, with the same report',
    async (standards) => {
      const response = await post({ standards, sign: room('Ticket Office 5') }).expect(200)
      const { drawing, sign, report } = DrawingAnswer.parse(response.body)
      expect(report.stages.drawing).toBe('pass')
      const again = await request(app.server).post('/v1/checks').send({ standards, drawing, sign }).expect(200)
      expect(Report.parse(again.body)).toEqual(report)
    },
  )

  it('can be had alone, and runs nothing', async () => {
    const body = { sign: room('Kiln') }
    const alone = await post(body).set('accept', 'image/svg+xml').expect(200).expect('content-type', /svg/)
    expect(alone.headers['content-security-policy']).toContain("default-src 'none'")
    const { drawing } = z.object({ drawing: z.string() }).parse((await post(body).expect(200)).body)
    expect((alone.body as Buffer).toString('utf8')).toBe(drawing)
  })

  it('leaves to a person what only a person can judge, when the client says so', async () => {
    // Spanish braille is not read here (Orden TMA/851/2021, article 44.1).
    const body = { standards: ['es-tma-851-2021'], sign: room('Sala 4') }
    const { conflicts } = Problem.parse((await post(body).expect(422)).body)
    expect(conflicts?.map(({ requirements }) => requirements[0])).toContain('es-tma-851-2021/44.1/national-code')
    const { report } = DrawingAnswer.parse((await post({ ...body, leaveToPerson: true }).expect(200)).body)
    expect(report.stages.drawing).toBe('undetermined')
    expect(report.summary.fail).toBe(0)
  })

  it('of standards that exclude each other is a problem that names them', async () => {
    const response = await post({ standards: ['us-ada-2010', 'au-ncc-2022'], sign: room('Kiln') }).expect(422)
    const { type, conflicts } = Problem.parse(response.body)
    expect(type).toBe('/docs/problems/cannot-satisfy')
    expect(conflicts?.[0]).toMatchObject({
      quantity: 'braille.contracted',
      requirements: ['us-ada-2010/703.3/contracted', 'au-ncc-2022/S15C6/uncontracted'],
    })
    expect(conflicts?.[0].text).toContain('703.3')
  })

  it('never stands with colours that do not stand out (703.5.1), and says so', async () => {
    const sign = { ...room('Kiln'), panel: { colour: '#223344' }, lettering: [{ text: 'Kiln', colour: '#2a3b4c' }] }
    const { conflicts } = Problem.parse((await post({ sign }).expect(422)).body)
    expect(conflicts?.map(({ requirements }) => requirements)).toEqual([['us-ada-2010/703.5.1/contrast']])
  })
})
