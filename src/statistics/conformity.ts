import { normalShareBetween } from './normal.js'

/**
 * The probability that the true value lies within its limits, given one measured value and its standard uncertainty: the area of a
 * normal density about the value between the limits (JCGM 106:2012, 7.2 to 7.4). Nothing but the measurement is taken to be known
 * of the true value.
 */

/** Limits in the unit of the value; an absent end limits nothing. */
export interface Limits {
  min?: number | undefined
  max?: number | undefined
}

/**
 * @param value measured, in the unit of the limits
 * @param uncertainty standard uncertainty, the same unit
 * @throws {RangeError} unless the uncertainty is more than 0
 */
export function conformityProbability(value: number, uncertainty: number, { min, max }: Limits): number {
  if (!(uncertainty > 0)) throw new RangeError(`a standard uncertainty is more than 0, not ${uncertainty}`)
  const from = min === undefined ? -Infinity : (min - value) / uncertainty
  const to = max === undefined ? Infinity : (max - value) / uncertainty
  return normalShareBetween(from, to)
}
