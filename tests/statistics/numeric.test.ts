import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { integral } from '../../src/statistics/integral.js'
import { rootOf } from '../../src/statistics/root.js'

describe('integrals', () => {
  // worked by hand
  test('of functions with known ones', () => {
    expect(integral((x) => x ** 5, 0, 2, 1e-12)).toBeCloseTo(64 / 6, 11)
    expect(integral(Math.sin, 0, Math.PI, 1e-12)).toBeCloseTo(2, 12)
    expect(integral((x) => Math.exp(-x * x), -10, 10, 1e-12)).toBeCloseTo(Math.sqrt(Math.PI), 11)
  })

  test('of a step that no rule meets', () => {
    expect(integral((x) => (x < 1 / 3 ? 0 : 1), 0, 1, 1e-10)).toBeCloseTo(2 / 3, 8)
  })
})

test('an integral of what is no number ends', () => {
  expect(integral(() => NaN, 0, 1, 1e-9)).toBeNaN()
  // Noise that no halving takes away: the mean of the integrand is a half.
  const noise = (x: number): number => (Math.abs(Math.sin(x * 1e9)) * 1e4) % 1
  expect(integral(noise, 0, 1, 1e-12)).toBeCloseTo(0.5, 1)
})

describe('roots', () => {
  test('of straight, curved and flat functions, wherever the search begins', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.double({ min: -5, max: 5, noNaN: true }),
        (zero, from) => {
          for (const f of [(x: number) => x - zero, (x: number) => (x - zero) ** 3, (x: number) => Math.atan(zero - x)])
            expect(Math.abs(rootOf(f, from, from + 1, { precision: 1e-9 }) - zero)).toBeLessThan(2e-9)
        },
      ),
      { numRuns: 100, seed: 7 },
    )
  })

  test('are not made up', () => {
    expect(() => rootOf(() => 1, 0, 1, { precision: 1e-9 })).toThrow(RangeError)
    expect(() => rootOf((x) => x + 1, 0, 1, { least: 0, precision: 1e-9 })).toThrow(RangeError)
  })
})
