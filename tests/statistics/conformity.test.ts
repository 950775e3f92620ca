import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { conformityProbability } from '../../src/statistics/conformity.js'
import { decide, expanded } from '../../src/statistics/guard-band.js'

/** The examples of JCGM 106:2012 (which UKAS LAB 48 works through again as its examples 6, 7 and 12) are from memory. */

describe('the probability of conformity', () => {
  // JCGM 106:2012, 7.3.3, example 1: breakdown voltage of a diode, -5.47 V with u = 0.05 V against at most -5.40 V: Φ(1.4) = 0.92
  test('of an upper limit', () => {
    expect(conformityProbability(-5.47, 0.05, { max: -5.4 })).toBeCloseTo(0.92, 2)
  })

  // JCGM 106:2012, 7.3.3, example 2: burst strength of a container, 509.7 kPa with u = 8.6 kPa against at least 490 kPa: Φ(2.3) = 0.99
  test('of a lower limit', () => {
    expect(conformityProbability(509.7, 8.6, { min: 490 })).toBeCloseTo(0.99, 2)
  })

  // JCGM 106:2012, 7.4: viscosity of an oil, 13.6 mm²/s with u = 1.8 mm²/s between 12.5 and 16.3: Φ(1.5) - Φ(-0.61) = 0.93 - 0.27 = 0.66
  test('of limits on both sides', () => {
    expect(conformityProbability(13.6, 1.8, { min: 12.5, max: 16.3 })).toBeCloseTo(0.66, 2)
  })

  // JCGM 106:2012, table 1: p = 0.80, 0.90, 0.95, 0.99, 0.999 for distances of 0.84, 1.28, 1.64, 2.33, 3.09 uncertainties; also any
  // table of the normal distribution
  test('by the distance from one limit', () => {
    for (const [distance, probability] of [
      [0.84, 0.8],
      [1.28, 0.9],
      [1.64, 0.95],
      [2.33, 0.99],
    ] as const)
      expect(conformityProbability(10 - distance, 1, { max: 10 })).toBeCloseTo(probability, 2)
    expect(conformityProbability(10 - 3.09, 1, { max: 10 })).toBeCloseTo(0.999, 4)
  })

  test('is a half on a limit, and needs an uncertainty', () => {
    expect(conformityProbability(10, 1, { max: 10 })).toBe(0.5)
    expect(() => conformityProbability(10, 0, { max: 10 })).toThrow(RangeError)
    expect(() => conformityProbability(10, NaN, { max: 10 })).toThrow(RangeError)
  })

  test('is the same in any unit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 1.2, noNaN: true }),
        fc.double({ min: 0.001, max: 0.2, noNaN: true }),
        (value, uncertainty) => {
          const inMillimetres = conformityProbability(value, uncertainty, { min: 0.635, max: 0.9398 })
          const inInches = conformityProbability(value / 25.4, uncertainty / 25.4, {
            min: 0.635 / 25.4,
            max: 0.9398 / 25.4,
          })
          expect(inInches).toBeCloseTo(inMillimetres, 9)
        },
      ),
      { numRuns: 200, seed: 7 },
    )
  })
})

describe('a decision', () => {
  const guarded = (margin: number) => decide('guarded', margin, 0.01, 1e-9)

  // JCGM 106:2012, 8.2: simple acceptance takes the value as it stands
  test('by the simple rule', () => {
    expect(decide('simple', 0.001, 0.5, 1e-9)).toBe('pass')
    expect(decide('simple', -0.001, 0.5, 1e-9)).toBe('fail')
  })

  // JCGM 106:2012, 8.3.2: the guard band of ISO 14253-1 is the expanded uncertainty, k = 2; a value on the acceptance limit is accepted
  test('by the guarded rule', () => {
    expect(expanded(0.01)).toBe(0.02)
    expect([0.021, 0.02, 0.019, 0, -0.019, -0.021].map(guarded)).toEqual([
      'pass',
      'pass',
      'within-uncertainty',
      'within-uncertainty',
      'within-uncertainty',
      'fail',
    ])
  })

  test('is the simple one where no uncertainty is known', () => {
    for (const margin of [-1, -1e-3, 0, 1e-3])
      expect(decide('guarded', margin, 0, 1e-9)).toBe(decide('simple', margin, 0, 1e-9))
  })

  // JCGM 106:2012, 8.3.2.2: what a guard band of 2 u accepts conforms with at least 97.7 %, whatever the width between the limits; what is
  // rejected does so with at most 2.3 %
  test('by the guarded rule is right with the probability that it promises', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 3, noNaN: true }),
        fc.double({ min: 0.01, max: 0.4, noNaN: true }),
        (value, uncertainty) => {
          const margin = Math.min(value, 1 - value)
          const probability = conformityProbability(value, uncertainty, { min: 0, max: 1 })
          const decision = decide('guarded', margin, uncertainty, 0)
          // Both ends count: 1 - 2 × 2.28 % in the middle between two limits.
          if (decision === 'pass') expect(probability).toBeGreaterThan(0.954)
          if (decision === 'fail') expect(probability).toBeLessThan(0.0228)
        },
      ),
      { numRuns: 200, seed: 7 },
    )
  })
})
