import { describe, expect, test } from 'vitest'
import { remedyFor } from '../../src/report/remedies.js'
import { failing, judgementsOf } from '../judge/verdicts.js'
import { PUMP_ROOM, signOf, TWO_SETS } from '../measure/signs.js'

/** A remedy that is followed leaves no row failed that it could have kept. Limits: 2010 ADA Standards; sizes are invented. */

type Json = Record<string, unknown>

const INCH = 25.4

function remedyOf(row: string, values: Json, base: Json = PUMP_ROOM) {
  const judgements = judgementsOf(signOf(base, values))
  const judgement = judgements.get(row)
  const remedy = judgement && remedyFor(judgement, [...judgements.values()])
  if (!remedy) throw new Error(`${row} did not fail`)
  return { ...remedy, found: Number(judgement.decisive[0]?.value) }
}

const LANDING = {
  use: 'elevator-landing',
  'lettering.0.text': '2',
  'lettering.0.lines': undefined,
  'lettering.0.baselineSpacing': undefined,
  'lettering.0.characterSpacing': undefined,
  'lettering.0.characterHeight': 40,
  'lettering.0.strokeThickness': 5,
  'lettering.0.baseline': { x: 20, y: 70 },
  'braille.0.text': '2',
  'braille.0.lines': undefined,
  'braille.0.lineSpacing': undefined,
}

describe('the height of a floor number (407.2.3.1 at least 2 inches, 703.2.5 at most 2 inches)', () => {
  test('is two inches, whatever the printed millimetres', () => {
    const { aim, min, max, text } = remedyOf('407.2.3.1/character-height', LANDING)
    expect({ aim, min, max }).toEqual({ aim: 2 * INCH, min: 2 * INCH, max: 2 * INCH })
    expect(text).toBe('Set the character height to 50.8 mm (50.80 mm or 2.000 in).')
    expect(failing(signOf(PUMP_ROOM, { ...LANDING, 'lettering.0.characterHeight': aim }))).toEqual([])
  })

  test('is none when both printed units must hold', () => {
    const judgements = judgementsOf(signOf(PUMP_ROOM, LANDING), { unitSystem: 'both' })
    const judgement = judgements.get('407.2.3.1/character-height')
    const remedy = judgement && remedyFor(judgement, [...judgements.values()])
    expect(remedy).toMatchObject({ aim: null, min: null, max: null })
    expect(remedy?.text).toBe(
      'No character height satisfies both 407.2.3.1 (2 inches (51 mm) high minimum) and 703.2.5 (5/8 inch (16 mm) minimum and 2 inches (51 mm) maximum).',
    )
  })
})

describe('mounting heights (703.4.1: from 48 to 60 inches)', () => {
  const TALL = { 'panel.height': 400, 'braille.0.origin': { x: 20, y: 315 } }

  test.each([
    ['703.4.1/lowest-baseline', { ...TALL, 'installation.panelBottomHeight': 1100 }],
    [
      '703.4.1/highest-baseline',
      { ...TALL, 'braille.0.origin': { x: 20, y: 285 }, 'installation.panelBottomHeight': 1200 },
    ],
    ['703.4.1/lowest-baseline', { 'installation.panelBottomHeight': 1000 }],
    ['703.4.1/highest-baseline', { 'installation.panelBottomHeight': 1600 }],
  ])('%s: all lines are right when the panel is moved so far', (row, values) => {
    const { aim, found, min, max, text } = remedyOf(row, values)
    for (const height of [aim, min, max]) {
      const edge = values['installation.panelBottomHeight'] + Number(height) - found
      expect(failing(signOf(PUMP_ROOM, { ...values, 'installation.panelBottomHeight': edge })), `${height}`).toEqual([])
    }
    const edge = values['installation.panelBottomHeight'] + Number(aim) - found
    expect(text).toContain(`the lower edge of the panel ${Number(edge.toFixed(6))} mm above the floor`)
  })

  test('says that the lines are too far apart when no height is right', () => {
    const values = {
      'panel.height': 500,
      'braille.0.origin': { x: 20, y: 400 },
      'installation.panelBottomHeight': 1100,
    }
    const { aim, min, max, text } = remedyOf('703.4.1/lowest-baseline', values)
    expect({ aim, min, max }).toEqual({ aim: null, min: null, max: null })
    expect(text).toContain('closer together, at most 304 mm apart in height')
  })

  // 2010 ADA Standards 703.5.6: characters for sight are at least 40 inches above the floor
  test('keeps the characters for sight of the same panel above their own height', () => {
    const values = {
      'lettering.0.baseline': { x: 20, y: 500 },
      'lettering.1.baseline': { x: 20, y: 40 },
      'braille.0.origin': { x: 20, y: 95 },
      'panel.height': 620,
      'installation.panelBottomHeight': 1000,
    }
    const { aim, found, min } = remedyOf('703.4.1/highest-baseline', values, TWO_SETS)
    expect(min).not.toBeNull()
    const edge = 1000 + Number(aim) - found
    expect(failing(signOf(TWO_SETS, { ...values, 'installation.panelBottomHeight': edge }))).toEqual([])
  })
})

describe('gaps between raised characters (703.2.7: from 1/8 inch to 4 strokes)', () => {
  test('a gap that is too wide is never made too narrow', () => {
    const values = { 'lettering.0.strokeThickness': 1, 'lettering.0.characterSpacing': 6 }
    const { aim, quantity } = remedyOf('703.2.7/character-spacing-max', values)
    expect(quantity).toBe('raised.characterSpacingInStrokes')
    expect(failing(signOf(PUMP_ROOM, { ...values, 'lettering.0.characterSpacing': Number(aim) * 1 }))).toEqual([])
  })

  test('a gap that is too narrow is never made too wide', () => {
    const values = { 'lettering.0.strokeThickness': 0.8, 'lettering.0.characterSpacing': 2 }
    const { aim, max } = remedyOf('703.2.7/character-spacing-min', values)
    expect(max).toBeCloseTo(4 * 0.8, 9)
    expect(failing(signOf(PUMP_ROOM, { ...values, 'lettering.0.characterSpacing': aim }))).toEqual([])
  })

  test('with a stroke too thin for any gap, the stroke is made thicker', () => {
    const values = { 'lettering.0.strokeThickness': 0.2 }
    const { aim, quantity, text } = remedyOf('703.2.7/character-spacing-max', values)
    expect(quantity).toBe('raised.strokeThickness')
    expect(text).toBe('Set the stroke thickness to 10 % of the character height (5 to 15 %), which is 2.00 mm here.')
    expect(failing(signOf(PUMP_ROOM, { 'lettering.0.strokeThickness': Number(aim) * 20 }))).toEqual([])
  })

  test('and says so of a gap that is too narrow as well', () => {
    const values = { 'lettering.0.strokeThickness': 0.2, 'lettering.0.characterSpacing': 0.5 }
    const { aim, text } = remedyOf('703.2.7/character-spacing-min', values)
    expect(aim).toBeNull()
    expect(text).toContain('make the stroke at least 0.80 mm (0.032 in) wide')
  })
})
