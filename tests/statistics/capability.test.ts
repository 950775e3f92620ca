import { describe, expect, test } from 'vitest'
import { capability, potentialCapability } from '../../src/statistics/capability.js'

describe('capability indices', () => {
  // NIST/SEMATECH e-Handbook 6.1.6: limits 8 and 20, mean 16, standard deviation 2 give Cp 1.0 and Cpk 0.6667
  test('are those of the handbook’s example', () => {
    const spread = { count: 50, mean: 16, standardDeviation: 2 }
    expect(potentialCapability(spread, { min: 8, max: 20 }, 0.95)?.value).toBeCloseTo(1, 12)
    expect(capability(spread, { min: 8, max: 20 }, 0.95).value).toBeCloseTo(0.6667, 4)
    expect(capability(spread, { min: 8 }, 0.95).value).toBeCloseTo(8 / 6, 12)
    expect(potentialCapability(spread, { min: 8 }, 0.95)).toBeNull()
  })

  // SAS/QC User's Guide, example 5.3 (90 % confidence interval for Cpk, telephone amplifiers): 0.328 to 0.496, after Bissell. The estimate
  // is the middle, 0.412; the number of amplifiers, 75, is from memory.
  test('have the confidence limits of a published example', () => {
    const { min, max } = capability({ count: 75, mean: 3 * 0.412, standardDeviation: 1 }, { min: 0 }, 0.9)
    expect(min).toBeCloseTo(0.328, 3)
    expect(max).toBeCloseTo(0.496, 3)
  })

  // SAS/QC sample CPCON (after Chou, Owen and Borrego, 1990): Cp times the root of a chi-square quantile over n - 1; the quantiles for
  // 30 degrees of freedom, 16.791 and 46.979, are from a printed table (NIST/SEMATECH e-Handbook, 1.3.6.7.4)
  test('have the exact limits of Cp', () => {
    const index = potentialCapability({ count: 31, mean: 5, standardDeviation: 1 }, { min: 2, max: 8 }, 0.95)
    expect(index?.value).toBeCloseTo(1, 12)
    expect(index?.min).toBeCloseTo(Math.sqrt(16.791 / 30), 4)
    expect(index?.max).toBeCloseTo(Math.sqrt(46.979 / 30), 4)
  })

  test('are negative with the mean outside', () => {
    expect(capability({ count: 9, mean: -1, standardDeviation: 1 }, { min: 0 }, 0.95).value).toBeCloseTo(-1 / 3, 12)
  })
})
