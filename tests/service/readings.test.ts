import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { Report } from '../../src/report/schema.js'
import { ReadingAnswer } from '../../src/service/reading-answer.js'
import { POTTERY_ROOM } from '../../src/sign/examples.js'
import { runningService, THEATER, THEATER_CELLS } from './running.js'

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

it('reads a drawing as a check does, without judging', async () => {
  const response = await request(app.server).post('/v1/readings').type('image/svg+xml').send(THEATER).expect(200)
  const answer = ReadingAnswer.parse(response.body)
  expect(answer.reading.braille[0]?.lines[0]?.cells).toBe(THEATER_CELLS)
  const check = await request(app.server).post('/v1/checks').type('image/svg+xml').send(THEATER)
  const report = Report.parse(check.body)
  expect(report.assumptions.map(({ about }) => about)).toContain('use')
  expect(answer).toEqual({
    reading: report.reading,
    // A check that is told no use says that it took one; for what is read off a sign it matters nothing.
    assumptions: report.assumptions.filter(({ about }) => about !== 'use'),
    ignored: report.ignored,
    unread: report.unread,
  })
})

it('reads a description too', async () => {
  const response = await request(app.server).post('/v1/readings').send({ sign: POTTERY_ROOM }).expect(200)
  expect(ReadingAnswer.parse(response.body).reading.lettering[0]?.text).toBe('POTTERY 117')
})
