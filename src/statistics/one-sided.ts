import { integral } from './integral.js'
import { ALL_BUT_THE_WHOLE, normalQuantile, normalShare } from './normal.js'
import { rootOf } from './root.js'
import { logGamma } from './special-functions.js'

/**
 * One-sided tolerance factors of a normal distribution: mean - k s is below all but a share of all values, with a stated confidence
 * (NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.3). Exact: what the handbook writes as a noncentral t is here the integral over
 * the standard deviation that it stands for, since a noncentral t loses its digits for many readings. Readings are independent.
 */

/** How far from its middle a chi value is still looked for; beyond lies less than one in 10^13. */
const CHI_REACH = 6.5
const PRECISION = 1e-10
const FACTOR_PRECISION = 1e-8

/** Density of chi, the root of a chi-square (NIST/SEMATECH e-Handbook, 1.3.6.6.6, by change of variable). */
const logOfChiDensity = (chi: number, freedom: number): number =>
  (freedom - 1) * Math.log(chi) - (chi * chi) / 2 - (freedom / 2 - 1) * Math.LN2 - logGamma(freedom / 2)

/**
 * How surely mean - factor × standard deviation is below the share of all values that begins `quantile` standard deviations under
 * the true mean.
 * @param count readings, 2 or more
 */
export function oneSidedConfidence(count: number, factor: number, quantile: number): number {
  const freedom = count - 1
  const [rootCount, rootFreedom] = [Math.sqrt(count), Math.sqrt(freedom)]
  const from = Math.max(0, Math.sqrt(Math.max(0, freedom - 1)) - CHI_REACH)
  const weighed = (chi: number): number =>
    Math.exp(logOfChiDensity(chi, freedom)) * normalShare(rootCount * ((factor * chi) / rootFreedom - quantile))
  return integral(weighed, from, rootFreedom + CHI_REACH, PRECISION)
}

/**
 * The factor k of a one-sided tolerance limit.
 * @param count readings, 2 or more
 * @param coverage share of all values on the right side of the limit
 * @param confidence how surely
 * @throws {RangeError} for fewer than 2 readings or shares outside (0, 1)
 */
export function oneSidedFactor(count: number, coverage: number, confidence: number): number {
  if (!(count >= 2)) throw new RangeError(`a spread takes two readings, not ${count}`)
  const quantile = normalQuantile(coverage)
  const wide = Math.abs(normalQuantile(confidence)) + 1
  const short = (factor: number): number => oneSidedConfidence(count, factor, quantile) - confidence
  return rootOf(short, quantile, quantile + wide / Math.sqrt(count), { precision: FACTOR_PRECISION })
}

/**
 * The least share of all values that lies beyond a limit on the right side of it, `distance` standard deviations of the sample from its
 * mean, at a stated confidence. The inverse of `oneSidedFactor` in its coverage. Null where not even a half can be said.
 */
export function oneSidedShare(count: number, distance: number, confidence: number): number | null {
  const over = (quantile: number): number => oneSidedConfidence(count, distance, quantile) - confidence
  if (distance <= 0 || over(0) < 0) return null
  const most = Math.min(distance, ALL_BUT_THE_WHOLE)
  if (over(most) >= 0) return normalShare(most)
  return normalShare(rootOf(over, 0, most, { precision: FACTOR_PRECISION }))
}
