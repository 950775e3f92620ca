import { fitCircle, leastEnclosingCircle } from '../geometry/circle.js'
import { flatten } from '../geometry/curve.js'
import type { Contour, Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'

/**
 * Is a contour a round dot? Circles come as circles, arcs, cubics, polygons of many corners; a sheared or unequally scaled
 * drawing makes ellipses of them. The test is geometric, whatever the contour was drawn with: after removing the squash that
 * the second moments of its area show, all its points must be equally far from its middle and lie all round it.
 */
export interface Round {
  x: number
  y: number
  /** Diameter of the least enclosing circle of the contour itself, no stroke. Millimetres. */
  diameter: number
  /** The longer over the shorter axis of the ellipse that it is: 1 for a circle. */
  squash?: number
}

/** Greatest ratio of the longer to the shorter axis of a squashed dot. */
const MOST_SQUASHED = 1.15
/** Greatest ratio of the farthest to the nearest point once unsquashed: two cubic half circles reach 1.02, a regular square 1.41. */
const MOST_UNEVEN = 1.05
/** Fewest corners of a polygon that stands for a circle. */
const FEWEST_CORNERS = 8
/** Greatest angle between neighbouring corners: an octagon has an eighth of the circle. */
const WIDEST_GAP = (2 * Math.PI) / FEWEST_CORNERS + 0.2
/** A contour of more corners than this is not looked at: no dot is drawn so. */
const MOST_CORNERS = 2000
/** Flattening of a dot's curves, as a share of its size. */
const RELATIVE_TOLERANCE = 0.0005
/** An unclosed outline still goes all the way round when its ends are no farther apart than this share of its size. */
const GAP_OF_ENDS = 0.05

/**
 * @param size The larger side of the contour's box, millimetres.
 * @returns undefined when it is not round.
 */
export function roundOf(contour: Contour, size: number, filled: boolean): Round | undefined {
  if (contour.segments.length > MOST_CORNERS) return undefined
  const points = flatten(contour, size * RELATIVE_TOLERANCE)
  const last = points[points.length - 1]
  const gap = Math.hypot(last.x - points[0].x, last.y - points[0].y)
  if (!contour.closed && !filled && gap > GAP_OF_ENDS * size) return undefined
  if (gap < GAP_OF_ENDS * GAP_OF_ENDS * size) points.pop()
  if (points.length < FEWEST_CORNERS) return undefined
  const moments = momentsOf(points)
  if (!moments) return undefined
  const { centre, longer, shorter } = moments
  if (!(longer / shorter <= MOST_SQUASHED) || !evenAllRound(points, moments)) return undefined
  const enclosing = leastEnclosingCircle(points)
  if (!enclosing) return undefined
  const middle = fitCircle(points) ?? centre
  return { x: middle.x, y: middle.y, diameter: 2 * enclosing.radius, squash: longer / shorter }
}

interface Moments {
  centre: Point
  /** Semi-axes of the ellipse with the same area moments, and the direction of the longer one. */
  longer: number
  shorter: number
  angle: number
}

/** Area moments of a polygon by Green's theorem, as the ellipse that has the same ones; undefined for no area. */
function momentsOf(points: Polyline): Moments | undefined {
  const origin = points[0]
  let area = 0
  let sx = 0
  let sy = 0
  let sxx = 0
  let syy = 0
  let sxy = 0
  for (let i = 0; i < points.length; i++) {
    const ax = points[i].x - origin.x
    const ay = points[i].y - origin.y
    const next = points[(i + 1) % points.length]
    const bx = next.x - origin.x
    const by = next.y - origin.y
    const cross = ax * by - bx * ay
    area += cross / 2
    sx += (cross * (ax + bx)) / 6
    sy += (cross * (ay + by)) / 6
    sxx += (cross * (ax * ax + ax * bx + bx * bx)) / 12
    syy += (cross * (ay * ay + ay * by + by * by)) / 12
    sxy += (cross * (2 * ax * ay + ax * by + bx * ay + 2 * bx * by)) / 24
  }
  if (area === 0) return undefined
  const x = sx / area
  const y = sy / area
  const xx = sxx / area - x * x
  const yy = syy / area - y * y
  const xy = sxy / area - x * y
  const mean = (xx + yy) / 2
  const spread = Math.hypot((xx - yy) / 2, xy)
  if (!(mean - spread > 0)) return undefined
  return {
    centre: { x: origin.x + x, y: origin.y + y },
    longer: 2 * Math.sqrt(mean + spread),
    shorter: 2 * Math.sqrt(mean - spread),
    angle: Math.atan2(2 * xy, xx - yy) / 2,
  }
}

function evenAllRound(points: Polyline, { centre, longer, shorter, angle }: Moments): boolean {
  const cos = Math.cos(angle)
  const sin = Math.sin(angle)
  let nearest = Infinity
  let farthest = 0
  const angles: number[] = []
  for (const p of points) {
    const dx = p.x - centre.x
    const dy = p.y - centre.y
    const along = (dx * cos + dy * sin) / longer
    const across = (dy * cos - dx * sin) / shorter
    const square = along * along + across * across
    nearest = Math.min(nearest, square)
    farthest = Math.max(farthest, square)
    angles.push(Math.atan2(across, along))
  }
  if (farthest > MOST_UNEVEN ** 2 * nearest) return false
  angles.sort((a, b) => a - b)
  const gaps = angles.map((a, i) => (i > 0 ? a - angles[i - 1] : a - angles[angles.length - 1] + 2 * Math.PI))
  return Math.max(...gaps) <= WIDEST_GAP
}
