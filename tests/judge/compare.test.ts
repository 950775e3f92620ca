import { describe, expect, test } from 'vitest'
import {
  ARITHMETIC_NOISE,
  compareNumber,
  extremes,
  FLOATING_NOISE,
  marginOf,
  noiseOf,
} from '../../src/judge/compare.js'
import type { Observation } from '../../src/measure/measurement.js'
import { PUMP_ROOM, signOf } from '../measure/signs.js'
import { judgementOf } from './verdicts.js'

/** Invented values round the cell spacing of Table 703.3.1 of the 2010 ADA Standards: 0.241 in to 0.300 in. */
const ENDS = { min: 0.241 * 25.4, max: 0.3 * 25.4 }
const seen = (value: number, more: Partial<Observation> = {}): Observation => ({
  value,
  basis: 'declared',
  places: [],
  ...more,
})
const outcome = (observation: Observation, guarded = false) => compareNumber(observation, ENDS, 'mm', guarded).outcome

describe('a value against its ends', () => {
  test('is judged without rounding', () => {
    expect(outcome(seen(ENDS.max))).toBe('pass')
    expect(outcome(seen(ENDS.max + 1e-6))).toBe('fail')
  })

  test('is judged on its worst single value, not on its mean', () => {
    expect(compareNumber(seen(6.9, { min: 6, max: 7 }), ENDS, 'mm', false)).toEqual({
      outcome: 'fail',
      margin: 6 - ENDS.min,
    })
    expect(outcome(seen(6.9, { min: 6.8, max: 7.7 }))).toBe('fail')
  })

  test('allows the noise of arithmetic to drawn values only, and shows no negative margin for it', () => {
    const near = ENDS.max + 0.9 * ARITHMETIC_NOISE
    expect(compareNumber(seen(near, { basis: 'drawn' }), ENDS, 'mm', false)).toEqual({ outcome: 'pass', margin: 0 })
    expect(outcome(seen(near, { basis: 'measured' }))).toBe('fail')
    expect(outcome(seen(ENDS.max + 1.1 * ARITHMETIC_NOISE, { basis: 'drawn' }))).toBe('fail')
  })

  test('scales the noise of a share with the length below the line', () => {
    const drawn = (value: number) => seen(value, { basis: 'drawn', context: { characterHeight: 20 } })
    expect(compareNumber(drawn(0.15005), { max: 0.15 }, 'ratio', false).outcome).toBe('pass')
    expect(compareNumber(drawn(0.1501), { max: 0.15 }, 'ratio', false).outcome).toBe('fail')
  })

  // First order of the error of a quotient (JCGM 100:2008, 5.1.2): both lengths of a share may be off by the noise.
  test('a share is off by the noise of both its lengths, over the one below the line', () => {
    const share = (value: number, context: Observation['context']) =>
      noiseOf(seen(value, { basis: 'drawn', context }), 'ratio')
    expect(share(0.15, { characterHeight: 20 })).toBeCloseTo((ARITHMETIC_NOISE * 1.15) / 20, 12)
    expect(share(2, { strokeThickness: 4 })).toBeCloseTo((ARITHMETIC_NOISE * 3) / 4, 12)
    expect(share(-0.5, { characterHeight: 10, strokeThickness: 4 })).toBeCloseTo((ARITHMETIC_NOISE * 1.5) / 10, 12)
    const others: Observation['context'][] = [undefined, {}, { characterHeight: 'tall' }]
    for (const context of others) expect(share(0.15, context)).toBe(FLOATING_NOISE)
    expect(noiseOf(seen(0.15, { context: { characterHeight: 20 } }), 'ratio')).toBe(FLOATING_NOISE)
    const yes: Observation = { value: true, basis: 'drawn', places: [], context: { characterHeight: 20 } }
    expect(noiseOf(yes, 'ratio')).toBe(FLOATING_NOISE)
    expect(noiseOf(seen(5, { basis: 'drawn', context: { characterHeight: 20 } }), 'mm')).toBe(ARITHMETIC_NOISE)
  })

  test('has a distance from the nearer end only, and from none where there is none', () => {
    expect(marginOf(seen(7), { min: 6 })).toBe(1)
    expect(marginOf(seen(7), { max: 9 })).toBe(2)
    expect(marginOf(seen(7), { min: 6, max: 9 })).toBe(1)
    expect(marginOf(seen(7), {})).toBe(Infinity)
    expect(extremes(seen(7, { min: 6.5 }))).toEqual([6.5, 7])
    expect(extremes({ value: 'seven', basis: 'declared', places: [] })).toEqual([NaN, NaN])
  })

  test('guarded, stays open on both sides of a limit within the expanded uncertainty (k = 2)', () => {
    for (const value of [ENDS.max - 0.019, ENDS.max + 0.019])
      expect(outcome(seen(value, { uncertainty: 0.01 }), true)).toBe('within-uncertainty')
    expect(outcome(seen(ENDS.max - 0.021, { uncertainty: 0.01 }), true)).toBe('pass')
    expect(outcome(seen(ENDS.max + 0.021, { uncertainty: 0.01 }), true)).toBe('fail')
    expect(outcome(seen(ENDS.max - 0.019, { uncertainty: 0.01 }))).toBe('pass')
  })
})

describe('printed inches and printed millimetres', () => {
  const dotHeight = (value: number, options = {}) =>
    judgementOf(signOf(PUMP_ROOM, { 'braille.0.dotHeight': value }), '703.3.1/dot-height', options)
  const cellSpacing = (options = {}) =>
    judgementOf(signOf(PUMP_ROOM, { 'braille.0.cellSpacing': 7.62 }), '703.3.1/cell-spacing', options)

  // The two values that the contract names: 0.62 mm of dot height, 7.62 mm of cell spacing
  test('tell when they split', () => {
    expect(dotHeight(0.62)).toMatchObject({ verdict: 'fail', unitSplit: { judged: 'in', pass: 'mm', fail: 'in' } })
    expect(cellSpacing()).toMatchObject({ verdict: 'pass', unitSplit: { judged: 'in', pass: 'in', fail: 'mm' } })
    expect(dotHeight(0.75).unitSplit).toBeNull()
  })

  test('must both be met when the client asks for both', () => {
    const judgement = cellSpacing({ unitSystem: 'both' })
    expect(judgement).toMatchObject({ verdict: 'fail', limit: { min: 0.241 * 25.4, max: 7.6 } })
    expect(judgement.margin).toBeCloseTo(7.6 - 7.62, 9)
  })
})

describe('the decision rule', () => {
  const measured = (values: number[], expandedUncertainty: number) =>
    signOf(PUMP_ROOM, { measured: [{ quantity: 'braille.dotHeight', values, unit: 'mm', expandedUncertainty }] })

  test('guarded, a gauge reading near a limit is undetermined; simple, it is judged', () => {
    const sign = measured([0.7, 0.64], 0.02)
    expect(judgementOf(sign, '703.3.1/dot-height')).toMatchObject({ verdict: 'pass' })
    expect(judgementOf(sign, '703.3.1/dot-height', { decisionRule: 'guarded' })).toMatchObject({
      verdict: 'undetermined',
      reason: 'within-uncertainty',
    })
  })

  test('guarded, a reading clearly outside still fails', () => {
    expect(judgementOf(measured([0.7, 0.5], 0.02), '703.3.1/dot-height', { decisionRule: 'guarded' }).verdict).toBe(
      'fail',
    )
  })
})
