import type { FastifyInstance } from 'fastify'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { CommonAnswer } from '../../src/service/common-answer.js'
import { listStandards } from '../../src/standards/catalogue.js'
import type { ProblemAnswer } from './running.js'
import { runningService } from './running.js'

let app: FastifyInstance
beforeAll(async () => {
  app = await runningService()
})
afterAll(() => app.close())

const get = (query: string) => request(app.server).get(`/v1/standards/common?${query}`)
const answer = async (query: string) => CommonAnswer.parse((await get(query).expect(200)).body)
const windowOf = ({ windows }: CommonAnswer, quantity: string) => windows.find((w) => w.quantity === quantity)

describe('common windows over HTTP', () => {
  it('of one standard are its own, in millimetres, with their rows', async () => {
    // 2010 ADA Standards, table 703.3.1: 0.241 in to 0.300 in.
    const found = await answer('ids=us-ada-2010')
    expect(windowOf(found, 'braille.cellSpacing')).toEqual({
      quantity: 'braille.cellSpacing',
      unit: 'mm',
      min: 6.1214,
      max: 7.62,
      from: ['us-ada-2010/703.3.1/cell-spacing'],
    })
    expect(found).toMatchObject({ use: 'permanent-room', carrier: null, conflicts: [], joint: [], advice: [] })
    expect(found.standards[0]?.inForce).toBeGreaterThan(20)
  })

  it('are those of the use that is asked for', async () => {
    const found = await answer('ids=us-ada-2010&use=directory')
    expect(found.windows).toEqual([])
    expect(found.standards).toMatchObject([{ id: 'us-ada-2010', inForce: 0 }])
  })

  it('name what only a sign decides', async () => {
    // 2010 ADA Standards, 703.2.5 Exception: lower raised characters where the text is given for sight apart.
    const { conditional } = await answer('ids=us-ada-2010')
    expect(conditional).toContainEqual(
      expect.objectContaining({
        requirement: 'us-ada-2010/703.2.5/character-height',
        when: ['separate-visual-set'],
        exception: true,
      }),
    )
    expect(conditional.find(({ requirement }) => requirement.includes('/703.5.5/'))?.when).toEqual(['viewing-distance'])
  })

  it('can be asked of all standards at once, and name only rows that there are', async () => {
    const all = listStandards()
    const found = await answer(
      `ids=${all
        .map(({ id }) => id)
        .slice(0, 20)
        .join()}`,
    )
    const rows = new Set(all.flatMap(({ requirements }) => requirements.map(({ requirement }) => requirement)))
    for (const { from } of found.windows) for (const name of from) expect(rows).toContain(name)
    for (const { requirements, clauses, text } of found.conflicts) {
      expect(requirements.length).toBeGreaterThan(1)
      for (const clause of clauses) expect(text).toContain(clause)
    }
  })

  it('are not sent again to who has them', async () => {
    const { etag } = (await get('ids=us-ada-2010')).headers as { etag: string }
    await get('ids=us-ada-2010').set('if-none-match', etag).expect(304)
  })

  it('are refused by the name of the parameter', async () => {
    for (const [query, parameter] of [
      ['', 'ids'],
      ['ids=', 'ids'],
      [`ids=${Array.from({ length: 41 }, (_, i) => `s${i}`).join()}`, 'ids'],
      ['ids=us-ada-2010,none', 'ids'],
      ['ids=us-ada-2010&use=shed', 'use'],
      ['ids=us-ada-2010&carrier=jelly', 'carrier'],
      ['ids=us-ada-2010&more=1', 'more'],
    ]) {
      const problem = (await get(query ?? '').expect(422)).body as ProblemAnswer
      expect(
        problem.errors?.map((e) => e.parameter),
        query,
      ).toContain(parameter)
    }
  })
})
