import { unionOfBoxes, type Box } from './box.js'
import { boxOfLoops, loopOf } from './loop.js'
import type { Polyline } from './outline.js'
import type { Point } from './point.js'
import { contains, distanceToPoint } from './polyline.js'

/** Distances of many points from outlines, in millimetres, with a bound on the work. */

export interface NearestPoint {
  distance: number
  point: Point
}

/** An outline with the box round it. */
export interface Boxed {
  polyline: Polyline
  box: Box
}

/** Outlines with their boxes, found once for many questions; those without points are left out. */
export const boxed = (outlines: readonly Polyline[]): Boxed[] =>
  outlines.flatMap((polyline) => {
    const box = boxOfLoops([loopOf(polyline)])
    return box ? [{ polyline, box }] : []
  })

/** Least possible distance of a point from anything in a box; 0 inside. */
function boxDistance(box: Box, { x, y }: Point): number {
  const across = Math.max(box.x - x, 0, x - box.x - box.width)
  const down = Math.max(box.y - y, 0, y - box.y - box.height)
  return Math.sqrt(across * across + down * down)
}

/**
 * The point of `points` that is nearest to the filled outlines (even-odd), and its distance from them: 0 for a point inside
 * the fill. Undefined when there are no points or no outlines; `too-much` when more than `mostWork` pairs of a point and
 * an edge would have to be looked at.
 *
 * Branch and bound: no outline is looked at whose box is farther away than what was found before.
 */
export function nearestTo(
  outlines: readonly Boxed[],
  points: readonly Point[],
  mostWork: number,
): NearestPoint | 'too-much' | undefined {
  const box = unionOfBoxes(outlines.map((each) => each.box))
  if (!box) return undefined
  const ordered = points.map((point) => ({ point, bound: boxDistance(box, point) })).sort((a, b) => a.bound - b.bound)
  let best: NearestPoint | undefined
  let work = 0
  for (const { point, bound } of ordered) {
    if (best && bound >= best.distance) break
    const near = within(best?.distance ?? Infinity, outlines, point)
    work += outlines.length
    // An outline whose box does not reach the point cannot hold it.
    const around = near.filter((each) => each.bound === 0).map(({ polyline }) => polyline)
    if (around.length > 0 && contains(around, point, 'evenodd')) return { distance: 0, point }
    for (const each of near) {
      if (best && each.bound >= best.distance) break
      work += each.polyline.length
      if (work > mostWork) return 'too-much'
      const distance = distanceToPoint([each.polyline], point)
      if (!best || distance < best.distance) best = { distance, point }
    }
  }
  return best
}

/** The outlines whose boxes are nearer to a point than `reach`, the nearest first. */
function within(reach: number, outlines: readonly Boxed[], point: Point): { polyline: Polyline; bound: number }[] {
  const near: { polyline: Polyline; bound: number }[] = []
  for (const { polyline, box } of outlines) {
    const bound = boxDistance(box, point)
    if (bound < reach) near.push({ polyline, bound })
  }
  return near.sort((a, b) => a.bound - b.bound)
}
