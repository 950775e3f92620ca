import type { Polyline } from './outline.js'
import type { Point } from './point.js'

/** Areas, insides and distances of closed polylines: the last point is joined to the first. Millimetres. */

/** Area by the shoelace formula: positive when the points run clockwise as seen (y down), negative otherwise. */
export function signedArea(polyline: Polyline): number {
  const origin = polyline[0]
  if (!origin) return 0
  let twice = 0
  for (let i = 0; i < polyline.length; i++) {
    const a = polyline[i]
    const b = polyline[(i + 1) % polyline.length]
    twice += (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y)
  }
  return twice / 2
}

/**
 * Whether a point lies inside the area that the polylines bound together, by the fill rule of SVG 1.1, 11.3: `nonzero`
 * counts how often the edges wind round the point, `evenodd` how often a ray crosses them.
 */
export function contains(polylines: readonly Polyline[], point: Point, rule: 'nonzero' | 'evenodd'): boolean {
  let winding = 0
  let crossings = 0
  for (const polyline of polylines) {
    if (polyline.length === 0) continue
    let a = polyline[polyline.length - 1]
    let above = a.y <= point.y
    for (const b of polyline) {
      const was = above
      above = b.y <= point.y
      if (was !== above) {
        const side = (b.x - a.x) * (point.y - a.y) - (point.x - a.x) * (b.y - a.y)
        const downwards = b.y > a.y
        if (side < 0 === downwards && side !== 0) {
          crossings++
          winding += downwards ? 1 : -1
        }
      }
      a = b
    }
  }
  return rule === 'nonzero' ? winding !== 0 : crossings % 2 === 1
}

/** The least distance of a point from the edges of closed polylines, from either side. Infinity for no polylines. */
export function distanceToPoint(polylines: readonly Polyline[], { x, y }: Point): number {
  let best = Infinity
  for (const polyline of polylines) {
    let a = polyline[polyline.length - 1]
    for (const b of polyline) {
      best = Math.min(best, squareToEdge(x, y, a, b))
      a = b
    }
  }
  return Math.sqrt(best)
}

/** Square of the distance from (x, y) to the nearest point of an edge. */
function squareToEdge(x: number, y: number, from: Point, to: Point): number {
  const alongX = to.x - from.x
  const alongY = to.y - from.y
  const square = alongX * alongX + alongY * alongY
  const t = square > 0 ? Math.min(1, Math.max(0, ((x - from.x) * alongX + (y - from.y) * alongY) / square)) : 0
  const dx = from.x + t * alongX - x
  const dy = from.y + t * alongY - y
  return dx * dx + dy * dy
}
