import { chiSquareQuantile } from './chi-square.js'
import type { Limits } from './conformity.js'
import { normalQuantile } from './normal.js'
import { distanceFrom, type Spread } from './spread.js'

/**
 * Capability indices with their confidence limits (NIST/SEMATECH e-Handbook of Statistical Methods, 6.1.6): how the room between the
 * limits compares with the spread of the readings. Cp has exact limits, from the chi-square distribution; those of Cpk are an
 * approximation (A. F. Bissell, Applied Statistics 39, 1990, 331). The handbook asks for about fifty readings before an index is relied on.
 */

/** Half of the spread that an index compares with the limits, in standard deviations. */
const HALF_SPREAD = 3

export interface Index {
  value: number
  min: number
  max: number
}

/** (max - min) / 6 s: what a process could do if it were in the middle. Null for limits on one side. */
export function potentialCapability(spread: Spread, { min, max }: Limits, confidence: number): Index | null {
  if (min === undefined || max === undefined) return null
  const value = (max - min) / (2 * HALF_SPREAD * spread.standardDeviation)
  const freedom = spread.count - 1
  const tail = (1 - confidence) / 2
  const end = (share: number): number => value * Math.sqrt(chiSquareQuantile(share, freedom) / freedom)
  return { value, min: end(tail), max: end(1 - tail) }
}

/** Distance of the mean from the nearer limit / 3 s; negative when the mean is outside. */
export function capability(spread: Spread, limits: Limits, confidence: number): Index {
  const value = distanceFrom(spread, limits) / HALF_SPREAD
  const { count } = spread
  const spreadOfIndex = Math.sqrt(1 / (HALF_SPREAD ** 2 * count) + value ** 2 / (2 * (count - 1)))
  const reach = normalQuantile((1 + confidence) / 2) * spreadOfIndex
  return { value, min: value - reach, max: value + reach }
}
