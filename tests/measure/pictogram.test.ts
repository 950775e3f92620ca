import { describe, expect, test } from 'vitest'
import { judgementOf } from '../judge/verdicts.js'
import { drawnSign, rectangle } from './drawn.js'
import { PUMP_ROOM, signOf, withValues } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

/** Invented places and sizes round a field from (10, 10) to (170, 170). */
const FIELD = { x: 10, y: 10, width: 160, height: 160 }
const BELOW = withValues(PUMP_ROOM, {
  'panel.height': 400,
  pictograms: [{ meaning: 'pump', field: FIELD, colour: '#000000', fieldColour: '#ffffff' }],
  'lettering.0.baseline': { x: 20, y: 220 },
  'braille.0.origin': { x: 20, y: 280 },
})
const at = (values: Record<string, unknown>) => signOf(BELOW, values)

describe('the field of a pictogram', () => {
  test('is measured by its height, not by its width', () => {
    expect(valuesOf(at({ 'pictograms.0.field': { ...FIELD, width: 20 } }), 'pictogram.fieldHeight')).toEqual([160])
  })

  test('is clear of what stands below or beside it', () => {
    expect(valuesOf(at({}), 'pictogram.fieldClear')).toEqual([true])
    expect(valuesOf(at({ 'lettering.0.baseline': { x: 180, y: 60 } }), 'pictogram.fieldClear')).toEqual([true])
  })

  test('is not clear of dots or characters in it', () => {
    expect(valuesOf(at({ 'braille.0.origin': { x: 20, y: 100 } }), 'pictogram.fieldClear')).toEqual([false])
    expect(valuesOf(at({ 'lettering.0.baseline': { x: 60, y: 100 } }), 'pictogram.fieldClear')).toEqual([false])
  })

  test('may be reached by characters of unknown width that start left of it: open', () => {
    expect(reasonsOf(at({ 'lettering.0.baseline': { x: 2, y: 100 } }), 'pictogram.fieldClear')).toEqual([
      'missing-fact',
    ])
  })
})

describe('the descriptor', () => {
  test('stands below the field and under some part of it', () => {
    expect(valuesOf(at({}), 'pictogram.descriptor')).toEqual([true])
    expect(valuesOf(at({ 'lettering.0.baseline': { x: 200, y: 220 } }), 'pictogram.descriptor')).toEqual([false])
    expect(
      valuesOf(
        at({ 'lettering.0.baseline': { x: 20, y: 100 }, 'pictograms.0.field': { ...FIELD, y: 200 } }),
        'pictogram.descriptor',
      ),
    ).toEqual([false])
  })

  test('is open while the characters are unread', () => {
    const sign = at({})
    const unread = {
      ...sign,
      lettering: sign.lettering.map((l) => ({ ...l, text: { unknown: 'unreadable' as const, why: 'outlines' } })),
    }
    expect(reasonsOf(unread, 'pictogram.descriptor')).toEqual(['unreadable'])
  })

  test('of drawn characters is told by their outlines', () => {
    const sign = drawnSign({ pictograms: at({}).pictograms })
    const [set] = sign.lettering
    const moved = (x: number, y: number) => ({
      ...sign,
      lettering: [{ ...set, lines: [{ ...set.lines[0], outlines: [rectangle(x, y, 30, 20)] }] }],
    })
    expect(valuesOf(moved(0, 175), 'pictogram.descriptor')).toEqual([true])
    expect(valuesOf(moved(180, 175), 'pictogram.descriptor')).toEqual([false])
  })
})

describe('pictograms that name no room', () => {
  // Access Board, guide to chapter 7: informational pictograms need neither the field height nor a descriptor
  test.each(['no-smoking', 'accessible', 'wheelchair'])('%s has no field to measure', (meaning) => {
    const sign = at({ 'pictograms.0.meaning': meaning, 'pictograms.0.field': { ...FIELD, height: 50 } })
    for (const row of ['703.6.1/field-height', '703.6.3/descriptor'])
      expect(judgementOf(sign, row).verdict).toBe('not-applicable')
  })

  test('a symbol of accessibility is held to 703.7 on any sign', () => {
    const sign = at({ 'pictograms.0.meaning': 'wheelchair', 'pictograms.0.colour': '#eeeeee' })
    expect(judgementOf(sign, '703.7.1/contrast').verdict).toBe('fail')
    expect(judgementOf(sign, '703.7.2/shape')).toMatchObject({ verdict: 'undetermined', reason: 'needs-judgement' })
    expect(judgementOf(signOf(BELOW), '703.7.2/shape').verdict).toBe('not-applicable')
  })
})

// 2010 ADA Standards, Table 407.4.7.1.3
describe('car controls with a symbol', () => {
  const control = (meaning: string, text: string) =>
    signOf(PUMP_ROOM, {
      use: 'elevator-car-control',
      pictograms: [{ meaning }],
      'braille.0.lines': undefined,
      'braille.0.text': text,
    })

  test.each([
    ['emergency stop', 'stop'],
    ['alarm', 'alarm'],
    ['door-open', 'open'],
    ['door-close', 'close'],
    ['main entry floor', 'main'],
    ['phone', 'phone'],
  ])('%s has the word %s', (meaning, word) => {
    expect(valuesOf(control(meaning, word), 'braille.controlWords')).toEqual([true])
    expect(valuesOf(control(meaning, 'lobby'), 'braille.controlWords')).toEqual([false])
  })

  test('a floor number is no control of the table', () => {
    expect(measured(signOf(PUMP_ROOM), 'braille.controlWords').nothing).toContain('No pictogram')
  })
})
