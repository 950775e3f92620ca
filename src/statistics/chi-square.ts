import { normalQuantile } from './normal.js'
import { rootOf } from './root.js'
import { lowerGamma, upperGamma } from './special-functions.js'

/**
 * The chi-square distribution, that of a sum of `freedom` squared standard normal values (NIST/SEMATECH e-Handbook of Statistical
 * Methods, 1.3.6.6.6).
 */

/** The share of all sums that are at most `x`. */
export const chiSquareShare = (x: number, freedom: number): number => lowerGamma(freedom / 2, x / 2)

/** The share of all sums that are more than `x`; no digits are lost far above the mean. */
export const chiSquareBeyond = (x: number, freedom: number): number => upperGamma(freedom / 2, x / 2)

/** Relative to the quantile. */
const PRECISION = 1e-13

/**
 * The sum below which a share of all sums lies, searched from the approximation of Wilson and Hilferty (Proc. Natl. Acad. Sci. 17,
 * 1931, 684).
 * @throws {RangeError} unless 0 < share < 1 and freedom > 0
 */
export function chiSquareQuantile(share: number, freedom: number): number {
  if (!(freedom > 0)) throw new RangeError(`degrees of freedom are more than 0, not ${freedom}`)
  const ninths = 2 / (9 * freedom)
  const cube = 1 - ninths + normalQuantile(share) * Math.sqrt(ninths)
  const guess = freedom * Math.max(cube, 0) ** 3
  const excess = (x: number): number => chiSquareShare(x, freedom) - share
  return rootOf(excess, guess / 2, guess * 1.5 + Number.EPSILON, { least: 0, precision: PRECISION * freedom })
}
