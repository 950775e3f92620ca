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
    let a = polyline[polyline.length - 1]
    for (const b of polyline) {
      if (a && a.y <= point.y !== b.y <= point.y) {
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

/** The point of the edge (x1, y1)–(x2, y2) that is nearest to (x, y). */
function nearestOnEdge(x: number, y: number, x1: number, y1: number, x2: number, y2: number): Point {
  const dx = x2 - x1
  const dy = y2 - y1
  const square = dx * dx + dy * dy
  const t = square > 0 ? Math.min(1, Math.max(0, ((x - x1) * dx + (y - y1) * dy) / square)) : 0
  return { x: x1 + t * dx, y: y1 + t * dy }
}

/** The least distance of a point from the edges of closed polylines, from either side. Infinity for no polylines. */
export function distanceToPoint(polylines: readonly Polyline[], point: Point): number {
  let best = Infinity
  for (const polyline of polylines) {
    let a = polyline[polyline.length - 1]
    for (const b of polyline) {
      if (a) {
        const near = nearestOnEdge(point.x, point.y, a.x, a.y, b.x, b.y)
        best = Math.min(best, Math.hypot(near.x - point.x, near.y - point.y))
      }
      a = b
    }
  }
  return best
}
