import type { Box } from './box.js'
import type { Contour, Polyline, Segment } from './outline.js'
import type { Point } from './point.js'

/**
 * Cubic Béziers: exact bounds and flattening.
 * Bounds: the extremes of a cubic lie at its ends and at the roots of its derivative, a quadratic.
 * Flattening: equal steps of the parameter. Over a step of 1/n the chord is at most |B''| / (8 n²) away from the curve, and
 * |B''| is at most 6 times the larger second difference of the control points (Wang's bound for degree 3).
 */

/** How far a flattened curve may be from the true one unless the caller says otherwise, in millimetres. */
export const FLATTENING_TOLERANCE = 0.001

/** Even a monstrous curve is cut into no more pieces than this. */
const MOST_PIECES = 2000

type Cubic = Extract<Segment, { kind: 'cubic' }>

const valueAt = (t: number, p0: number, p1: number, p2: number, p3: number): number => {
  const s = 1 - t
  return s * s * s * p0 + 3 * s * s * t * p1 + 3 * s * t * t * p2 + t * t * t * p3
}

/** The point of a cubic at parameter `t`, 0 at its start and 1 at its end. */
export const pointOfCubic = (start: Point, cubic: Cubic, t: number): Point => ({
  x: valueAt(t, start.x, cubic.c1.x, cubic.c2.x, cubic.to.x),
  y: valueAt(t, start.y, cubic.c1.y, cubic.c2.y, cubic.to.y),
})

/** Least and greatest value of a cubic over 0 to 1. */
function rangeOfCubic(p0: number, p1: number, p2: number, p3: number): [number, number] {
  let low = Math.min(p0, p3)
  let high = Math.max(p0, p3)
  if (p1 >= low && p1 <= high && p2 >= low && p2 <= high) return [low, high]
  for (const t of rootsOfDerivative(p0, p1, p2, p3)) {
    if (!(t > 0 && t < 1)) continue
    const value = valueAt(t, p0, p1, p2, p3)
    low = Math.min(low, value)
    high = Math.max(high, value)
  }
  return [low, high]
}

/** Roots of B'(t)/3 = a t² + b t + c, in the form that does not lose digits when `a` is small. */
function rootsOfDerivative(p0: number, p1: number, p2: number, p3: number): number[] {
  const a = p3 - 3 * p2 + 3 * p1 - p0
  const b = 2 * (p0 - 2 * p1 + p2)
  const c = p1 - p0
  const discriminant = b * b - 4 * a * c
  if (!(discriminant >= 0)) return []
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant)) / 2
  return [q / a, c / q].filter(Number.isFinite)
}

/** The exact box of a contour: where its curves truly reach, not where their control points lie. Millimetres. */
export function boxOfContour(contour: Contour): Box {
  let { x: left, y: top } = contour.start
  let { x: right, y: bottom } = contour.start
  let from = contour.start
  for (const segment of contour.segments) {
    const [x0, x1, y0, y1] =
      segment.kind === 'line'
        ? [segment.to.x, segment.to.x, segment.to.y, segment.to.y]
        : [
            ...rangeOfCubic(from.x, segment.c1.x, segment.c2.x, segment.to.x),
            ...rangeOfCubic(from.y, segment.c1.y, segment.c2.y, segment.to.y),
          ]
    if (x0 < left) left = x0
    if (x1 > right) right = x1
    if (y0 < top) top = y0
    if (y1 > bottom) bottom = y1
    from = segment.to
  }
  return { x: left, y: top, width: right - left, height: bottom - top }
}

function piecesOfCubic(from: Point, cubic: Cubic, tolerance: number): number {
  const { c1, c2, to } = cubic
  const first = Math.hypot(from.x - 2 * c1.x + c2.x, from.y - 2 * c1.y + c2.y)
  const second = Math.hypot(c1.x - 2 * c2.x + to.x, c1.y - 2 * c2.y + to.y)
  const pieces = Math.ceil(Math.sqrt((6 * Math.max(first, second)) / (8 * tolerance)))
  return Math.min(Math.max(pieces, 1), MOST_PIECES)
}

/**
 * A contour as straight edges, at most `tolerance` millimetres away from it. Points that repeat the one before are left out,
 * and a closed contour does not repeat its start at the end. At least one point.
 */
export function flatten(contour: Contour, tolerance = FLATTENING_TOLERANCE): Polyline {
  const points: Polyline = [contour.start]
  let last = contour.start
  const add = (p: Point) => {
    if (p.x === last.x && p.y === last.y) return
    points.push(p)
    last = p
  }
  let from = contour.start
  for (const segment of contour.segments) {
    if (segment.kind === 'cubic') {
      const pieces = piecesOfCubic(from, segment, tolerance)
      for (let i = 1; i < pieces; i++) add(pointOfCubic(from, segment, i / pieces))
    }
    add(segment.to)
    from = segment.to
  }
  const end = points[points.length - 1]
  if (points.length > 1 && contour.closed && end.x === points[0].x && end.y === points[0].y) points.pop()
  return points
}
