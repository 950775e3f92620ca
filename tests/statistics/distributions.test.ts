import jstat from 'jstat'
import { describe, expect, test } from 'vitest'
import { chiSquareBeyond, chiSquareQuantile, chiSquareShare } from '../../src/statistics/chi-square.js'
import { normalQuantile, normalShare, normalShareBetween } from '../../src/statistics/normal.js'
import reference from './reference.json' with { type: 'json' }

/**
 * Distributions against two reference libraries: the grid in reference.json, made with SciPy and mpmath (its `source` names the
 * versions), and jStat, which is asked here and now.
 */

const near = (value: number, expected: number, relative: number): void =>
  expect(Math.abs(value - expected), `${value} for ${expected}`).toBeLessThanOrEqual(relative * Math.abs(expected))

const row = (numbers: number[]): [number, number, number, number] => {
  const [a = NaN, b = NaN, c = NaN, d = NaN] = numbers
  return [a, b, c, d]
}

describe('the normal distribution', () => {
  test('is that of mpmath, far into the tail', () => {
    for (const [z, share] of reference.normal.map(row)) near(normalShare(z), share, 1e-13)
  })

  test('has the quantiles of SciPy', () => {
    for (const [share, z] of reference.normalQuantile.map(row)) expect(normalQuantile(share)).toBeCloseTo(z, 12)
  })

  test('is that of jStat', () => {
    for (let z = -6; z <= 6; z += 0.25) expect(normalShare(z)).toBeCloseTo(jstat.normal.cdf(z, 0, 1), 10)
    for (const share of [0.01, 0.2, 0.5, 0.9, 0.99])
      expect(normalQuantile(share)).toBeCloseTo(jstat.normal.inv(share, 0, 1), 8)
  })

  // Symmetry: the share between two numbers is that between their negatives, with all its digits.
  test('loses no digits between two numbers far from the mean', () => {
    expect(normalShareBetween(8, 9)).toBe(normalShareBetween(-9, -8))
    expect(normalShareBetween(8, 9)).toBeGreaterThan(0)
    expect(normalShareBetween(-Infinity, Infinity)).toBe(1)
    for (const z of [1e2, 1e5, 1e9, Infinity]) expect([normalShare(-z), normalShare(z)]).toEqual([0, 1])
  })

  test('has no quantile outside 0 to 1', () => {
    for (const share of [0, 1, -0.1, NaN]) expect(() => normalQuantile(share)).toThrow(RangeError)
  })
})

describe('the chi-square distribution', () => {
  test('is that of SciPy, both ways', () => {
    for (const [freedom, x, share, beyond] of reference.chiSquare.map(row)) {
      near(chiSquareShare(x, freedom), share, 1e-8)
      near(chiSquareBeyond(x, freedom), beyond, 1e-8)
    }
  })

  test('has the quantiles of SciPy', () => {
    for (const [freedom, share, x] of reference.chiSquareQuantile.map(row))
      near(chiSquareQuantile(share, freedom), x, 1e-9)
  })

  test('is that of jStat', () => {
    for (const freedom of [1, 3, 10, 60])
      for (const times of [0.2, 0.7, 1, 1.6])
        expect(chiSquareShare(freedom * times, freedom)).toBeCloseTo(jstat.chisquare.cdf(freedom * times, freedom), 9)
  })

  test('is 0 or 1 where a double holds nothing else', () => {
    expect(chiSquareShare(1, 100_000)).toBe(0)
    expect(chiSquareBeyond(1, 100_000)).toBe(1)
    expect(chiSquareShare(1e6, 10)).toBe(1)
    expect(chiSquareBeyond(1e6, 10)).toBe(0)
    expect(chiSquareShare(0, 3)).toBe(0)
    expect(chiSquareBeyond(-1, 3)).toBe(1)
  })

  test('has no quantile for shares or degrees of freedom out of range', () => {
    expect(() => chiSquareQuantile(0.5, 0)).toThrow(RangeError)
    expect(() => chiSquareQuantile(1, 5)).toThrow(RangeError)
  })
})
