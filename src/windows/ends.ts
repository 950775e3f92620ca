/** Intervals of numbers, open on a side that has no end. */

export interface Ends {
  min?: number
  max?: number
}

const higher = (a: number | undefined, b: number | undefined) =>
  a === undefined ? b : b === undefined ? a : Math.max(a, b)
const lower = (a: number | undefined, b: number | undefined) =>
  a === undefined ? b : b === undefined ? a : Math.min(a, b)

/** What sums and products of lengths may be off: ends that cross by no more are one end. */
const FLOATING_NOISE = 1e-9

/** The ends that satisfy both. */
export function meet(a: Ends, b: Ends): Ends {
  const [min, max] = [higher(a.min, b.min), lower(a.max, b.max)]
  const one = min !== undefined && max !== undefined && min > max && min - max <= FLOATING_NOISE
  return { min: one ? max : min, max }
}

export const isEmpty = ({ min, max }: Ends): boolean => min !== undefined && max !== undefined && min > max

export const isWithin = (value: number, { min, max }: Ends): boolean =>
  (min === undefined || value >= min - FLOATING_NOISE) && (max === undefined || value <= max + FLOATING_NOISE)
