import type { Contour } from '../geometry/outline.js'
import { roundOf, type Round } from './round.js'

/**
 * The dots of a sign are mostly one shape at many places: what was found of a contour holds for every other one that has the same
 * corners and controls from its start on.
 */
export type KnownRounds = Map<string, Round | undefined>

/** Corners that differ by less are the same, millimetres: far less than what any file writes, far more than arithmetic adds. */
const SAME_CORNER = 1e-7
/** Contours of more segments than this are seldom drawn twice. */
const MOST_SEGMENTS = 16

/** `roundOf`, worked out once for each shape. */
export function roundOnce(contour: Contour, size: number, filled: boolean, known: KnownRounds): Round | undefined {
  if (contour.segments.length > MOST_SEGMENTS) return roundOf(contour, size, filled)
  const { x, y } = contour.start
  const key = keyOf(contour, filled)
  const before = known.get(key)
  if (before !== undefined || known.has(key)) return before && { ...before, x: before.x + x, y: before.y + y }
  const round = roundOf(contour, size, filled)
  known.set(key, round && { ...round, x: round.x - x, y: round.y - y })
  return round
}

function keyOf({ start, segments, closed }: Contour, filled: boolean): string {
  const step = (v: number, from: number) => Math.round((v - from) / SAME_CORNER)
  let key = closed ? 'closed' : filled ? 'filled' : 'open'
  for (const segment of segments) {
    if (segment.kind === 'cubic') {
      const { c1, c2 } = segment
      key += `c${step(c1.x, start.x)},${step(c1.y, start.y)},${step(c2.x, start.x)},${step(c2.y, start.y)},`
    } else key += 'l'
    key += `${step(segment.to.x, start.x)},${step(segment.to.y, start.y)}`
  }
  return key
}
