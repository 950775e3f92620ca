import { describe, expect, test } from 'vitest'
import { purposeOf } from '../../src/measure/meaning.js'
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

  test('is not clear of dots whose edge is in it', () => {
    // Dots of 1.55 mm: centres 0.7 mm below the field reach into it, 0.8 mm below do not
    const below = (gap: number, more: Record<string, unknown> = {}) =>
      at({ 'braille.0.origin': { x: 20, y: 170 + gap }, 'lettering.0.baseline': { x: 180, y: 60 }, ...more })
    expect(valuesOf(below(0.7), 'pictogram.fieldClear')).toEqual([false])
    expect(valuesOf(below(0.8), 'pictogram.fieldClear')).toEqual([true])
    const unsized = { 'braille.0.dotBaseDiameter': undefined }
    expect(reasonsOf(below(0.8, unsized), 'pictogram.fieldClear')).toEqual(['missing-fact'])
    expect(valuesOf(below(5, unsized), 'pictogram.fieldClear')).toEqual([true])
  })

  test('may be reached by characters of unknown width that start left of it: open', () => {
    // "PUMP ROOM" has eight strokes of 2.6 mm and gaps of 4 mm at least: from x = 2 it reaches the field, from x = -60 it may
    expect(valuesOf(at({ 'lettering.0.baseline': { x: 2, y: 100 } }), 'pictogram.fieldClear')).toEqual([false])
    expect(reasonsOf(at({ 'lettering.0.baseline': { x: -60, y: 100 } }), 'pictogram.fieldClear')).toEqual([
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

  // The right end of described characters is not known: "I" is a stroke wide at least
  test('is open where it hangs on how far the characters reach', () => {
    const from = (x: number, print: string) =>
      at({
        'pictograms.0.field': { ...FIELD, x: 200 },
        'lettering.0.text': print,
        'lettering.0.lines': [print],
        'lettering.0.baseline': { x, y: 210 },
      })
    expect(reasonsOf(from(5, 'I'), 'pictogram.descriptor')).toEqual(['missing-fact'])
    expect(valuesOf(from(5, 'I'), 'pictogram.descriptor')).toEqual([])
    expect(valuesOf(from(198, 'I'), 'pictogram.descriptor')).toEqual([true])
    // 40 characters are 40 × 2.6 mm and 39 × 4 mm at least
    expect(valuesOf(from(5, 'I'.repeat(40)), 'pictogram.descriptor')).toEqual([true])
  })

  test('far below the field is not said to be directly below', () => {
    expect(valuesOf(at({ 'lettering.0.baseline': { x: 20, y: 2000 } }), 'pictogram.descriptor')).toEqual([])
    expect(reasonsOf(at({ 'lettering.0.baseline': { x: 20, y: 2000 } }), 'pictogram.descriptor')).toEqual([
      'needs-judgement',
    ])
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

  // 216.2: a permanent room is designated by tactile characters; a pictogram that only informs does not stand in for them
  test('do not make up for missing characters', () => {
    const only = (meaning: string) =>
      judgementOf(at({ lettering: [], braille: [], 'pictograms.0.meaning': meaning }), '216.2/tactile-characters')
        .verdict
    expect([only('no smoking'), only('wheelchair'), only('pump')]).toEqual(['fail', 'fail', 'not-applicable'])
  })

  test.each([
    ['wheelchair', 'symbol'],
    ['International Symbol of Accessibility', 'symbol'],
    ['symbol-of-access-for-hearing-loss', 'symbol'],
    ['volume control telephone', 'symbol'],
    ['TTY', 'symbol'],
    ['accessible restroom', 'unclear'],
    ['wheelchair storage', 'unclear'],
    ['no smoking', 'informs'],
    ['pump', 'room'],
  ])('“%s” is taken as %s', (meaning, purpose) => {
    expect(purposeOf({ ...at({}).pictograms[0], meaning })).toBe(purpose)
  })

  test('what may be a symbol or name the room is left to a person, where it would fail', () => {
    const mixed = at({ 'pictograms.0.meaning': 'accessible restroom', 'pictograms.0.field': { ...FIELD, height: 50 } })
    for (const row of ['703.6.1/field-height', '703.7.1/contrast'])
      expect(judgementOf(mixed, row)).toMatchObject({ verdict: 'undetermined', reason: 'needs-judgement' })
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
