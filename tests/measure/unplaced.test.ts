import { describe, expect, test } from 'vitest'
import { judgementOf } from '../judge/verdicts.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { reasonsOf, valuesOf } from './values.js'

/** Lines of which the words or the place are not given. Places are invented; limits are of the 2010 ADA Standards. */

type Json = Record<string, unknown>
const verdict = (row: string, values: Json) => judgementOf(signOf(PUMP_ROOM, values), row).verdict

/** A border whose lower edge is near the second line of braille only: dots end at y = 95 + 10.1 + 4.8 + 0.775. */
const BORDER = { borders: [{ box: { x: 5, y: 5, width: 250, height: 112 }, width: 2, raised: true }] }

// 703.3.2: 3/8 inch from braille to raised borders
describe('a second line of braille without a place', () => {
  test('keeps a clearance from passing', () => {
    expect(verdict('703.3.2/border-clearance', BORDER)).toBe('fail')
    for (const values of [{ 'braille.0.lineSpacing': undefined }, { 'braille.0.lines': ['pump room', '1\u4e00'] }])
      expect(verdict('703.3.2/border-clearance', { ...BORDER, ...values })).toBe('undetermined')
  })

  test('does not hide what the first line shows', () => {
    const near = { ...BORDER, 'braille.0.lineSpacing': undefined, 'braille.0.origin': { x: 12, y: 95 } }
    expect(verdict('703.3.2/border-clearance', near)).toBe('fail')
  })

  test('lies below the first, wherever it is', () => {
    expect(verdict('703.3.2/below-text', { 'braille.0.lineSpacing': undefined })).toBe('pass')
  })

  test('may lie in the field of a pictogram', () => {
    const field = { x: 10, y: 102, width: 200, height: 160 }
    const values = { 'panel.height': 400, pictograms: [{ meaning: 'pump', field }] }
    expect(valuesOf(signOf(PUMP_ROOM, values), 'pictogram.fieldClear')).toEqual([false])
    const open = signOf(PUMP_ROOM, {
      ...values,
      'pictograms.0.field': { ...field, y: 110 },
      'braille.0.lineSpacing': undefined,
    })
    expect(reasonsOf(open, 'pictogram.fieldClear')).toEqual(['missing-fact'])
  })
})

describe('characters and braille without words', () => {
  const wordless = { 'lettering.0.text': undefined, 'lettering.0.lines': undefined }

  // 703.4.1: at most 60 inches to the highest raised baseline, at least 48 inches to the lowest tactile one
  test('stand where they are said to', () => {
    const high = { ...wordless, 'lettering.0.baseline': { x: 20, y: -500 } }
    expect(verdict('703.4.1/highest-baseline', high)).toBe('fail')
    const low = {
      'braille.0.lines': undefined,
      'braille.0.origin': { x: 20, y: 140 },
      'installation.panelBottomHeight': 1150,
    }
    expect(verdict('703.4.1/lowest-baseline', low)).toBe('fail')
  })

  test('may be the descriptor of a pictogram, and may stand in its field', () => {
    const field = { x: 10, y: 10, width: 160, height: 160 }
    const values = { 'panel.height': 400, pictograms: [{ meaning: 'pump', field }], ...wordless }
    const below = { ...values, 'lettering.0.baseline': { x: 20, y: 220 }, 'braille.0.origin': { x: 20, y: 280 } }
    expect(reasonsOf(signOf(PUMP_ROOM, below), 'pictogram.descriptor')).toEqual(['missing-fact'])
    const inField = { ...values, 'lettering.0.baseline': { x: 20, y: 100 } }
    expect(valuesOf(signOf(PUMP_ROOM, inField), 'pictogram.fieldClear')).toEqual([false])
  })

  test('keep clearances open', () => {
    expect(verdict('703.3.2/border-clearance', { ...BORDER, 'braille.0.lines': undefined })).toBe('undetermined')
  })
})

describe('words that are given twice', () => {
  // 703.2.2: uppercase; 703.2: the wording; 703.2.7: at least 1/8 inch between characters
  test('are those of the lines', () => {
    expect(verdict('703.2.2/case', { 'lettering.0.lines': ['Pump Room', '12'] })).toBe('fail')
    expect(verdict('703.2/wording', { 'lettering.0.lines': ['BOILER ROOM', '12'] })).toBe('fail')
    expect(
      verdict('703.2.7/character-spacing-min', { 'lettering.0.text': 'A', 'lettering.0.characterSpacing': 1 }),
    ).toBe('fail')
  })
})

// 2010 ADA Standards 216.3: directional and informational signs comply with 703.5
describe('characters on a sign for sight alone', () => {
  const script = {
    units: 'mm',
    use: 'directional',
    panel: { width: 300, height: 100, finish: 'matte', colour: '#ffffff' },
    lettering: [{ text: 'Exit to yard', characterHeight: 3, colour: '#000000', typeface: { style: 'script' } }],
  }

  test.each([undefined, 'raised', 'visual'])(
    'of part %s are held to all that is asked of characters for sight',
    (part) => {
      const sign = signOf(script, { 'lettering.0.part': part })
      for (const row of ['703.5.3/style', '703.5.5/character-height'])
        expect(judgementOf(sign, row).verdict).toBe('fail')
      expect(judgementOf(sign, '703.5.1/contrast').verdict).toBe('pass')
    },
  )
})
