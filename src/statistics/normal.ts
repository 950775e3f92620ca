import { normalArea, normalAreaInverse } from './special-functions.js'

/** The standard normal distribution (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.1). */

const ROOT_TWO_PI = Math.sqrt(2 * Math.PI)

export const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / ROOT_TWO_PI

/** So many standard deviations below the mean the area is taken for zero; much farther Cephes gives no number. */
const REACH = 27

/** The share of all values that are at most `z` standard deviations above the mean. */
export const normalShare = (z: number): number => (z > REACH ? 1 : z < -REACH ? 0 : normalArea(z))

/** A share that reaches so many standard deviations is not told apart from the whole. */
export const ALL_BUT_THE_WHOLE = 5

/** The share of all values between two numbers of standard deviations; no digits are lost far from the mean. */
export const normalShareBetween = (from: number, to: number): number =>
  from > 0 ? normalShare(-from) - normalShare(-to) : normalShare(to) - normalShare(from)

/**
 * How many standard deviations above the mean a share of all values ends.
 * @throws {RangeError} unless 0 < share < 1
 */
export function normalQuantile(share: number): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`a share lies between 0 and 1, not ${share}`)
  return normalAreaInverse(share)
}
