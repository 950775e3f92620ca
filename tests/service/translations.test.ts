import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { Translation } from '../../src/braille/translation-schema.js'
import { runningService, THEATER, type ProblemAnswer } from './running.js'

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

const post = (body: object) => request(app.server).post('/v1/translations').send(body)

describe('a translation', () => {
  it('puts print into contracted braille', async () => {
    // Read off the rules: strong groupsigns ea and ing (Rules of Unified English Braille 2013, 10.4 and 10.6), number sign and digits (6.1).
    const { cells, text } = Translation.parse(
      (await post({ text: 'reading room 204', code: 'ueb-contracted' }).expect(200)).body,
    )
    expect([cells, text]).toEqual(['⠗⠂⠙⠬⠀⠗⠕⠕⠍⠀⠼⠃⠚⠙', 'reading room 204'])
  })

  it('reads braille back', async () => {
    const { text } = Translation.parse((await post({ cells: '⠗⠕⠕⠍' }).expect(200)).body)
    expect(text).toBe('room')
  })

  it.each([
    [{}, 'invalid-description'],
    [{ text: 'a', cells: '⠁' }, 'invalid-description'],
    [{ text: 'a', cod: 'ueb-contracted' }, 'invalid-description'],
    [{ text: 'a', code: 'morse' }, 'invalid-description'],
    [{ text: 'a'.repeat(100_000) }, 'invalid-description'],
    [{ text: 'a', standards: ['none'] }, 'unknown-standard'],
  ])('%j is refused', async (body, type) => {
    const response = await post(body)
      .expect(422)
      .expect('content-type', /problem\+json/)
    expect((response.body as ProblemAnswer).type).toBe(`/docs/problems/${type}`)
  })

  it('says in one sentence that a text or cells must be given', async () => {
    const { errors } = (await post({ text: 'a', cells: '⠁' })).body as ProblemAnswer
    expect(errors?.[0]?.detail).toBe('“text” or “cells” must be given, and not both.')
  })

  // The contract: checks take us-ada-2010 where no standard is named, whose 703.3.1 lets only names and the like have capital signs.
  it('follows the capitals rule that a check would, when no standard is named', async () => {
    const cellsOf = async (body: object) => Translation.parse((await post(body).expect(200)).body).cells
    expect(await cellsOf({ text: 'THEATER' })).toBe(await cellsOf({ text: 'theater' }))
    expect(await cellsOf({ text: 'THEATER' })).not.toContain('⠠')
    expect(await cellsOf({ text: 'Orchid House', properNames: ['Orchid House'] })).toMatch(/^⠠/)
  })

  it('takes no drawing and no form', async () => {
    const path = request(app.server).post('/v1/translations')
    await path.type('image/svg+xml').send(THEATER).expect(415)
    await request(app.server).post('/v1/translations').field('text', 'a').expect(415)
    await request(app.server).post('/v1/translations').expect(415)
  })
})
