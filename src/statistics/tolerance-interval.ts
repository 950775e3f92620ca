import type { Limits } from './conformity.js'
import { oneSidedConfidence, oneSidedFactor, oneSidedShare } from './one-sided.js'
import { normalQuantile } from './normal.js'
import { distanceFrom, type Spread } from './spread.js'
import { twoSidedConfidence, twoSidedFactor, twoSidedShare } from './two-sided.js'

/**
 * What a sample of readings says of all values: the interval that holds a share of them, and the share that lies within limits (NIST/SEMATECH
 * e-Handbook of Statistical Methods, 7.2.6.3). Against limits on one side the interval has one end, and so has its factor.
 */

/** Share of all values that an interval is for, and how surely it holds them. */
export interface Assurance {
  coverage: number
  confidence: number
}

const hasTwo = ({ min, max }: Limits): boolean => min !== undefined && max !== undefined

const factors = new Map<string, number>()
const MOST_FACTORS = 2000

/** Sample sizes come again and again, and a factor is dear. */
function factorOf(count: number, sides: 'one' | 'two', { coverage, confidence }: Assurance): number {
  const key = `${sides} ${count} ${coverage} ${confidence}`
  const before = factors.get(key)
  if (before !== undefined) return before
  const find = sides === 'two' ? twoSidedFactor : oneSidedFactor
  const factor = find(count, coverage, confidence)
  if (factors.size >= MOST_FACTORS) factors.clear()
  factors.set(key, factor)
  return factor
}

/** The interval on the sides that the limits have, in the unit of the readings. */
export function toleranceInterval(spread: Spread, limits: Limits, assurance: Assurance): Limits {
  const half = factorOf(spread.count, hasTwo(limits) ? 'two' : 'one', assurance) * spread.standardDeviation
  return {
    ...(limits.min !== undefined && { min: spread.mean - half }),
    ...(limits.max !== undefined && { max: spread.mean + half }),
  }
}

/** The least share of all values within the limits, at a confidence; null where not even a half can be said. */
export const shareWithin = (spread: Spread, limits: Limits, confidence: number): number | null =>
  (hasTwo(limits) ? twoSidedShare : oneSidedShare)(spread.count, distanceFrom(spread, limits), confidence)

/** More readings than this are not asked for. */
export const MOST_READINGS = 10_000

/**
 * How many more readings would decide: the fewest with which, had they the same mean and spread, the interval would lie within the
 * limits. 0 when it does already. Null when no number up to `MOST_READINGS` in all would: the mean is outside, or the values themselves
 * spread too far.
 */
export function moreReadings(spread: Spread, limits: Limits, { coverage, confidence }: Assurance): number | null {
  const distance = distanceFrom(spread, limits)
  if (distance <= 0) return null
  const quantile = normalQuantile(coverage)
  const confidenceOf = (count: number): number =>
    hasTwo(limits) ? twoSidedConfidence(count, distance, coverage) : oneSidedConfidence(count, distance, quantile)
  const lies = (count: number): boolean => confidenceOf(count) >= confidence
  if (lies(spread.count)) return 0
  let [least, most] = [spread.count, MOST_READINGS]
  if (least >= most || !lies(most)) return null
  while (most - least > 1) {
    const middle = Math.floor((least + most) / 2)
    if (lies(middle)) most = middle
    else least = middle
  }
  return most - spread.count
}
