import { distance } from '../geometry/point.js'
import type { Contour } from '../geometry/outline.js'
import { parseLengths, type LengthContext } from './length.js'

/** Dashed strokes (SVG 1.1, 11.4): how many dashes they have, told from lengths alone before any dash is made. */

/** A list that is longer as written is not looked into. */
const LONGEST_LIST = 1000

/**
 * The period of a list of dashes in user units; undefined for a solid line: no list, one of zeros, or one with an error.
 * An odd number of lengths is gone through twice before it repeats, which has twice as many dashes: the mean is the same.
 */
function periodOf(written: string, lengths: LengthContext): { length: number; dashes: number } | undefined {
  if (written === 'none' || written.length > LONGEST_LIST) return undefined
  const list = parseLengths(written, 'diagonal', lengths).map((length) => length ?? -1)
  const length = list.reduce((sum, one) => sum + one, 0)
  return list.some((one) => one < 0) || !(length > 0) ? undefined : { length, dashes: list.length / 2 }
}

/** About how many dashes a stroke along the contours has; 0 for a solid one. @param scale millimetres per user unit. */
export function dashCount(
  contours: readonly Contour[],
  written: string,
  lengths: LengthContext,
  scale: number,
): number {
  const period = periodOf(written, lengths)
  if (!period || !(scale > 0)) return 0
  const way = contours.reduce((sum, contour) => sum + wayAlong(contour), 0)
  return Math.ceil((way / (period.length * scale)) * period.dashes)
}

/**
 * Length of a contour, millimetres. A cubic is taken as the mean of its chord and its control polygon (J. Gravesen, Adaptive
 * subdivision and the length and energy of Bézier curves, Computational Geometry 8, 1997), which is near enough to count.
 */
function wayAlong({ start, segments, closed }: Contour): number {
  let at = start
  let way = 0
  for (const segment of segments) {
    const chord = distance(at, segment.to)
    if (segment.kind === 'line') way += chord
    else
      way +=
        (chord + distance(at, segment.c1) + distance(segment.c1, segment.c2) + distance(segment.c2, segment.to)) / 2
    at = segment.to
  }
  return closed ? way + distance(at, start) : way
}
