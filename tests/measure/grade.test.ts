import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured } from './values.js'

/** 2010 ADA Standards 703.3: the grade of the braille. The words are invented. */

type Json = Record<string, unknown>
const BLOCK = (PUMP_ROOM.braille as Json[])[0]

describe('the grade of a block', () => {
  const grade = (text: string, more: Json = {}) =>
    measured(
      signOf(PUMP_ROOM, { 'braille.0.lines': [text], 'braille.0.lineSpacing': undefined, ...more }),
      'braille.contracted',
    )

  test('has its place, its cells and the grades that they say the text in', () => {
    const [one] = measured(signOf(PUMP_ROOM), 'braille.contracted').observations
    expect(one).toMatchObject({
      value: true,
      basis: 'declared',
      places: [{ element: 'braille/0' }],
      context: { expected: '⠏⠥⠍⠏⠀⠗⠕⠕⠍⠀⠼⠁⠃', grades: expect.stringContaining('ueb-contracted') as string },
    })
    expect(one).not.toHaveProperty('remark')
  })

  test('is told of the cells alone where they do not say the text', () => {
    const [one] = grade('station').observations
    expect(one?.value).toBe(true)
    expect(one?.context).not.toHaveProperty('expected')
  })

  test('is not told of cells that are not known', () => {
    expect(grade('x', { 'braille.0.lines': undefined }).gaps).toMatchObject([
      { ask: { pointer: '/sign/braille/0/text' } },
    ])
  })

  test('of another country is for one who reads it', () => {
    const sign = signOf(PUMP_ROOM, { braille: [BLOCK, { ...BLOCK, origin: { x: 20, y: 125 } }] })
    expect(measured(sign, 'braille.nationalCode').gaps).toMatchObject([
      { reason: 'needs-judgement', places: [{ element: 'braille/0' }, { element: 'braille/1' }] },
    ])
  })
})
