import fc from 'fast-check'
import jstat from 'jstat'
import { describe, expect, test } from 'vitest'
import { chiSquareQuantile } from '../../src/statistics/chi-square.js'
import { normalQuantile } from '../../src/statistics/normal.js'
import { oneSidedConfidence, oneSidedFactor, oneSidedShare } from '../../src/statistics/one-sided.js'
import { distanceFrom, spreadOf } from '../../src/statistics/spread.js'
import { MOST_READINGS, moreReadings, shareWithin, toleranceInterval } from '../../src/statistics/tolerance-interval.js'
import { twoSidedFactor, twoSidedShare } from '../../src/statistics/two-sided.js'
import reference from './reference.json' with { type: 'json' }

const MOSTLY = { coverage: 0.95, confidence: 0.95 }

const four = (numbers: number[]): [number, number, number, number] => {
  const [a = NaN, b = NaN, c = NaN, d = NaN] = numbers
  return [a, b, c, d]
}

describe('factors', () => {
  // reference.json: SciPy, noncentral t (one side) and numeric integration (two sides)
  test('are those of SciPy', () => {
    for (const [count, coverage, confidence, factor] of reference.oneSidedFactor.map(four))
      expect(oneSidedFactor(count, coverage, confidence) / factor, `${count}`).toBeCloseTo(1, 7)
    for (const [count, coverage, confidence, factor] of reference.twoSidedFactor.map(four))
      expect(twoSidedFactor(count, coverage, confidence) / factor, `${count}`).toBeCloseTo(1, 7)
  })

  // NIST/SEMATECH e-Handbook 7.2.6.3, the example of 43 wafers: 90 % of all, with 99 % confidence. It prints 1.8752 for one side, by an
  // approximation (Natrella), and 2.217 for two, by another (Howe).
  test('are near the approximations that the handbook prints', () => {
    const howe = normalQuantile(0.95) * Math.sqrt((42 * (1 + 1 / 43)) / chiSquareQuantile(0.01, 42))
    expect(howe).toBeCloseTo(2.217, 3)
    expect(Math.abs(twoSidedFactor(43, 0.9, 0.99) - 2.217)).toBeLessThan(0.01)
    expect(Math.abs(oneSidedFactor(43, 0.9, 0.99) - 1.8752)).toBeLessThan(0.002)
  })

  // One side, 95 % with 95 % confidence, 50 readings: 2.065 in a table of the US Nuclear Regulatory Commission (ML14031A495, p. 47), and
  // 2.064993399768 in the worked example of a program for it. ISO 16269-6 has the same rows for 10, 20, 30 and 100 (from memory).
  test('are those of published tables, one side', () => {
    expect(oneSidedFactor(50, 0.95, 0.95)).toBeCloseTo(2.064993, 6)
    for (const [count, factor] of [
      [10, 2.911],
      [20, 2.396],
      [30, 2.22],
      [100, 1.927],
    ] as const)
      expect(oneSidedFactor(count, 0.95, 0.95)).toBeCloseTo(factor, 3)
  })

  // Odeh and Owen, Tables for Normal Tolerance Limits (1980); two sides, 95 % with 95 % confidence; from memory
  test('are those of published tables, two sides', () => {
    for (const [count, factor] of [
      [2, 36.519],
      [3, 9.789],
      [5, 5.077],
      [10, 3.393],
      [20, 2.76],
    ] as const)
      expect(twoSidedFactor(count, 0.95, 0.95)).toBeCloseTo(factor, 3)
  })

  // The handbook's own words: k √n is a quantile of the noncentral t with the noncentrality z √n.
  test('come from the noncentral t of jStat', () => {
    for (const count of [3, 8, 25]) {
      const [root, quantile] = [Math.sqrt(count), normalQuantile(0.9)]
      for (const factor of [1, 2, 3])
        expect(oneSidedConfidence(count, factor, quantile)).toBeCloseTo(
          jstat.noncentralt.cdf(factor * root, count - 1, quantile * root),
          8,
        )
    }
  })

  test('need two readings', () => {
    expect(() => oneSidedFactor(1, 0.95, 0.95)).toThrow(RangeError)
    expect(() => twoSidedFactor(1, 0.95, 0.95)).toThrow(RangeError)
    expect(() => spreadOf([1])).toThrow(RangeError)
  })
})

describe('mean and standard deviation', () => {
  // NIST/SEMATECH e-Handbook 1.3.5.6 defines both; 2, 4, 4, 4, 5, 5, 7, 9 worked by hand: mean 5, sum of squares 32
  test('of eight numbers', () => {
    expect(spreadOf([2, 4, 4, 4, 5, 5, 7, 9])).toEqual({ count: 8, mean: 5, standardDeviation: Math.sqrt(32 / 7) })
  })

  test('of equal readings are no spread at all, whatever the rounding', () => {
    expect(spreadOf([0.1, 0.1, 0.1]).standardDeviation).toBe(0)
  })
})

describe('an interval', () => {
  const spread = { count: 43, mean: 97.07, standardDeviation: 0.0268 }

  // NIST/SEMATECH e-Handbook 7.2.6.3: 97.011 to 97.129 by the approximate factor
  test('is that of the handbook’s example', () => {
    const { min, max } = toleranceInterval(spread, { min: 0, max: 100 }, { coverage: 0.9, confidence: 0.99 })
    expect(Math.abs((min ?? 0) - 97.011)).toBeLessThan(0.001)
    expect(Math.abs((max ?? 0) - 97.129)).toBeLessThan(0.001)
  })

  test('has the ends that the limits have', () => {
    expect(Object.keys(toleranceInterval(spread, { min: 97 }, MOSTLY))).toEqual(['min'])
    expect(Object.keys(toleranceInterval(spread, { max: 98 }, MOSTLY))).toEqual(['max'])
  })
})

const SPREADS = fc.record({
  count: fc.integer({ min: 2, max: 200 }),
  mean: fc.double({ min: 0, max: 10, noNaN: true }),
  standardDeviation: fc.double({ min: 0.1, max: 3, noNaN: true }),
})

describe('what a sample says holds together', () => {
  const LIMITS = [{ min: 1 }, { max: 9 }, { min: 1, max: 9 }]

  test('the interval lies within the limits exactly when the share within does not fall short and no more readings are needed', () => {
    fc.assert(
      fc.property(SPREADS, fc.constantFrom(...LIMITS), (spread, limits) => {
        const { min = Infinity, max = -Infinity } = toleranceInterval(spread, limits, MOSTLY)
        const inside = min >= (limits.min ?? -Infinity) && max <= (limits.max ?? Infinity)
        const edge = Math.min(Math.abs(min - 1), Math.abs(max - 9))
        fc.pre(edge > 1e-6)
        expect((shareWithin(spread, limits, 0.95) ?? 0) >= 0.95).toBe(inside)
        expect(moreReadings(spread, limits, MOSTLY) === 0).toBe(inside)
      }),
      { numRuns: 60, seed: 7 },
    )
  })

  test('as many more readings as are asked for do it, and one fewer does not', () => {
    const near = fc.record({
      count: fc.integer({ min: 2, max: 12 }),
      over: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
    })
    fc.assert(
      fc.property(near, fc.constantFrom(...LIMITS), ({ count, over }, limits) => {
        // Just more than the 1.96 standard deviations that many readings come down to.
        const spread = { count, mean: 5, standardDeviation: 4 / (1.96 + over) }
        const more = moreReadings(spread, limits, MOSTLY) ?? NaN
        expect(more).toBeGreaterThan(0)
        const lies = (readings: number): boolean => moreReadings({ ...spread, count: readings }, limits, MOSTLY) === 0
        expect(lies(count + more)).toBe(true)
        expect(lies(count + more - 1)).toBe(false)
      }),
      { numRuns: 30, seed: 7 },
    )
  })
})

describe('how many more readings', () => {
  const of = (mean: number, standardDeviation: number) =>
    moreReadings({ count: 5, mean, standardDeviation }, { min: 0, max: 10 }, MOSTLY)

  test('no number would, with the mean outside or a spread too wide', () => {
    expect(of(-1, 0.1)).toBeNull()
    expect(of(5, 4)).toBeNull()
    // 1.96 standard deviations, the end that the factor comes down to
    expect(of(1.96, 1)).toBeNull()
  })

  test('and none beyond a bound', () => {
    expect(of(1.9601, 1)).toBeNull()
    expect(of(5, 0.5)).toBe(0)
    expect(
      moreReadings({ count: MOST_READINGS, mean: 1.9, standardDeviation: 1 }, { min: 0, max: 10 }, MOSTLY),
    ).toBeNull()
  })
})

describe('the share within', () => {
  // With very many readings the sample is the whole: 2 standard deviations on one side hold 97.725 % (normal table).
  test('comes to the plain share with very many readings', () => {
    expect(oneSidedShare(100_000, 2, 0.95)).toBeCloseTo(0.97725, 3)
    expect(twoSidedShare(100_000, 2, 0.95)).toBeCloseTo(0.9545, 2)
  })

  test('is not told below a half', () => {
    expect(oneSidedShare(3, 0.1, 0.95)).toBeNull()
    expect(twoSidedShare(3, 0.5, 0.95)).toBeNull()
    expect(twoSidedShare(2, 1, 0.95)).toBeNull()
    expect(shareWithin({ count: 9, mean: -1, standardDeviation: 1 }, { min: 0 }, 0.95)).toBeNull()
  })

  test('is never told as the whole', () => {
    const share = twoSidedShare(1000, 50, 0.95)
    expect(share).toBeLessThan(1)
    expect(share).toBeGreaterThan(0.999999)
  })
})

describe('absurd readings', () => {
  test('have an answer too, and soon', () => {
    for (const count of [2, 7, 1000, 100_000])
      for (const mean of [-1e9, -3e4, -1e-9, 0, 1e-9, 3e4, 1e9])
        for (const limits of [{ min: 0 }, { max: 0 }, { min: -1, max: 1 }]) {
          const spread = { count, mean, standardDeviation: 1 }
          const share = shareWithin(spread, limits, 0.95)
          if (share !== null) expect(share).toBeGreaterThan(0.5)
          if (share !== null) expect(share).toBeLessThan(1)
          expect(moreReadings(spread, limits, MOSTLY) === 0).toBe((share ?? 0) >= 0.95)
          const { min = mean, max = mean } = toleranceInterval(spread, limits, MOSTLY)
          expect(max - min).toBeGreaterThan(0)
        }
  })
})

describe('the distance from the limits', () => {
  test('is that of the nearer one, in standard deviations', () => {
    const spread = { count: 3, mean: 3, standardDeviation: 0.5 }
    expect(distanceFrom(spread, { min: 2, max: 9 })).toBe(2)
    expect(distanceFrom(spread, { max: 2 })).toBe(-2)
  })
})
