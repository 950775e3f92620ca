import { chiSquareBeyond, chiSquareQuantile } from './chi-square.js'
import { integral } from './integral.js'
import { ALL_BUT_THE_WHOLE, normalDensity, normalQuantile, normalShareBetween } from './normal.js'
import { rootOf } from './root.js'

/**
 * Two-sided tolerance factors of a normal distribution: mean ± k s holds a share of all values, with a stated confidence. Exact, by the
 * integral over the error of the mean (A. Wald and J. Wolfowitz, Ann. Math. Stat. 17, 1946, 208; R. E. Odeh and D. B. Owen, Tables for
 * Normal Tolerance Limits, 1980). The NIST/SEMATECH e-Handbook, 7.2.6.3, prints an approximation to it (W. G. Howe), which comes out
 * too small for few readings; here it is only where the search begins. Readings are independent.
 */

/** Beyond so many standard deviations lies less than one in 10^15. */
const NORMAL_REACH = 8
const PRECISION = 1e-10
const FACTOR_PRECISION = 1e-8
/** The first bracket of the factor, as a share of Howe's approximation. */
const FROM_HOWE = { least: 0.95, most: 1.05 }
/** Within so many standard deviations lies just over a half of all values. */
const LEAST_QUANTILE = 0.675
const NEWTON_STEPS = 30
const NEWTON_PRECISION = 1e-13

/**
 * Half the width of an interval, `offset` off the true mean, that holds the share `coverage`; in true standard deviations. Newton's
 * method from a start that is surely too small, where the share rises ever more slowly: it comes up to the width from below.
 */
function halfWidth(offset: number, coverage: number): number {
  let half = offset + normalQuantile(coverage)
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const missing = coverage - normalShareBetween(offset - half, offset + half)
    const change = missing / (normalDensity(offset + half) + normalDensity(offset - half))
    half += change
    if (Math.abs(change) < NEWTON_PRECISION) break
  }
  return half
}

/**
 * How surely mean ± factor × standard deviation holds the share `coverage` of all values.
 * @param count readings, 2 or more
 * @param coverage more than a half and less than 1
 */
export function twoSidedConfidence(count: number, factor: number, coverage: number): number {
  if (!(coverage > 0.5 && coverage < 1))
    throw new RangeError(`a share between a half and 1 is asked for, not ${coverage}`)
  const freedom = count - 1
  const weighed = (error: number): number => {
    const half = halfWidth(error / Math.sqrt(count), coverage)
    return 2 * normalDensity(error) * chiSquareBeyond(freedom * (half / factor) ** 2, freedom)
  }
  return integral(weighed, 0, NORMAL_REACH, PRECISION)
}

/**
 * The factor k of a two-sided tolerance interval.
 * @param count readings, 2 or more
 * @param coverage share of all values within the interval, more than a half
 * @param confidence how surely
 * @throws {RangeError} for fewer than 2 readings or shares outside their range
 */
export function twoSidedFactor(count: number, coverage: number, confidence: number): number {
  if (!(count >= 2)) throw new RangeError(`a spread takes two readings, not ${count}`)
  const freedom = count - 1
  const howe =
    normalQuantile((1 + coverage) / 2) *
    Math.sqrt((freedom * (1 + 1 / count)) / chiSquareQuantile(1 - confidence, freedom))
  const short = (factor: number): number => twoSidedConfidence(count, factor, coverage) - confidence
  return rootOf(short, howe * FROM_HOWE.least, howe * FROM_HOWE.most, { least: 0, precision: FACTOR_PRECISION })
}

/**
 * The least share of all values within two limits, the nearer of which is `distance` standard deviations of the sample from its mean, at
 * a stated confidence: the share whose two-sided interval just lies within the limits. Were the true share less, an interval that
 * lies within the limits would hold less than it as well, which happens no more often than the confidence leaves open. Null where
 * not even a half can be said.
 */
export function twoSidedShare(count: number, distance: number, confidence: number): number | null {
  const over = (quantile: number): number => twoSidedConfidence(count, distance, coverageOf(quantile)) - confidence
  if (distance <= LEAST_QUANTILE || over(LEAST_QUANTILE) < 0) return null
  const most = Math.min(distance, ALL_BUT_THE_WHOLE)
  if (over(most) >= 0) return coverageOf(most)
  return coverageOf(rootOf(over, LEAST_QUANTILE, most, { precision: FACTOR_PRECISION }))
}

/** The share of all values within so many standard deviations of the mean. */
const coverageOf = (quantile: number): number => normalShareBetween(-quantile, quantile)
