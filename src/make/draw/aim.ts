import { isEmpty, meet, type Ends } from '../../windows/ends.js'

/** The value to aim at within a window. */

/** Within both when they have something in common, else within the first alone. */
export function preferBoth(first: Ends, second: Ends): Ends {
  const both = meet(first, second)
  return isEmpty(both) ? first : both
}

export const clamped = (value: number, { min = -Infinity, max = Infinity }: Ends): number =>
  Math.max(min, Math.min(max, value))

/**
 * The middle of a window; of one that is open on a side, the value that lies `inside` within its only end.
 * @param otherwise what to take where the window has no end
 */
export function middleOf({ min, max }: Ends, inside: number, otherwise: number): number {
  if (min !== undefined && max !== undefined) return (min + max) / 2
  if (min !== undefined) return min + inside
  return max === undefined ? otherwise : max - inside
}

/** The wished value where the window allows it, kept `inside` off the ends where there is room. */
export function nearestTo(wish: number, window: Ends, inside: number): number {
  const { min, max } = window
  const room = min !== undefined && max !== undefined ? Math.min(inside, (max - min) / 2) : inside
  const inner: Ends = {
    ...(min !== undefined && { min: min + room }),
    ...(max !== undefined && { max: max - room }),
  }
  return clamped(wish, inner)
}
