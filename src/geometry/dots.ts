import { boxOfPoints, unionOfBoxes, type Box } from './box.js'
import type { Polyline } from './outline.js'
import type { Point } from './point.js'
import { contains, distanceToPoint } from './polyline.js'

/** Distances of many points from outlines, in millimetres, with a bound on the work. */

export interface NearestPoint {
  distance: number
  point: Point
}

/** Least possible distance of a point from anything in a box; 0 inside. */
const boxDistance = (box: Box, { x, y }: Point): number =>
  Math.hypot(Math.max(box.x - x, 0, x - box.x - box.width), Math.max(box.y - y, 0, y - box.y - box.height))

/**
 * The point of `points` that is nearest to the filled outlines (even-odd), and its distance from them: 0 for a point inside
 * the fill. Undefined when there are no points or no outlines; `too-much` when more than `mostWork` pairs of a point and
 * an edge would have to be looked at.
 */
export function nearestTo(
  outlines: readonly Polyline[],
  points: readonly Point[],
  mostWork: number,
): NearestPoint | 'too-much' | undefined {
  const boxed = outlines.flatMap((polyline) => {
    const box = boxOfPoints(polyline)
    return box ? [{ polyline, box }] : []
  })
  const box = unionOfBoxes(boxed.map((each) => each.box))
  if (!box) return undefined
  const ordered = points.map((point) => ({ point, bound: boxDistance(box, point) })).sort((a, b) => a.bound - b.bound)
  let best: NearestPoint | undefined
  let work = 0
  for (const { point, bound } of ordered) {
    if (best && bound >= best.distance) break
    const least = best ? best.distance : Infinity
    const near = boxed.filter((each) => boxDistance(each.box, point) < least).map(({ polyline }) => polyline)
    work += boxed.length + near.reduce((edges, polyline) => edges + polyline.length, 0)
    if (work > mostWork) return 'too-much'
    // An outline whose box does not reach the point cannot hold it.
    const inside = bound === 0 && contains(near, point, 'evenodd')
    const distance = inside ? 0 : distanceToPoint(near, point)
    if (!best || distance < best.distance) best = { distance, point }
  }
  return best
}
