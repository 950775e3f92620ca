import type { Box } from './box.js'
import { pointsOf, type Loop } from './loop.js'
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
  const reach = new Reach()
  reach.add(contour)
  return reach.box
}

/** The exact box round all contours; undefined for none. */
export function boxOfContours(contours: readonly Contour[]): Box | undefined {
  if (contours.length === 0) return undefined
  const reach = new Reach()
  for (const contour of contours) reach.add(contour)
  return reach.box
}

class Reach {
  private left = Infinity
  private top = Infinity
  private right = -Infinity
  private bottom = -Infinity

  get box(): Box {
    return { x: this.left, y: this.top, width: this.right - this.left, height: this.bottom - this.top }
  }

  add(contour: Contour): void {
    let from = contour.start
    this.addX(from.x)
    this.addY(from.y)
    for (const segment of contour.segments) {
      this.addX(segment.to.x)
      this.addY(segment.to.y)
      if (segment.kind === 'cubic') this.addBends(from, segment)
      from = segment.to
    }
  }

  /** A curve stays within its control points: while these are inside, it cannot reach further. */
  private addBends(from: Point, { c1, c2, to }: Cubic): void {
    if (Math.min(c1.x, c2.x) < this.left || Math.max(c1.x, c2.x) > this.right)
      for (const t of bends(from.x, c1.x, c2.x, to.x)) this.addX(valueAt(t, from.x, c1.x, c2.x, to.x))
    if (Math.min(c1.y, c2.y) < this.top || Math.max(c1.y, c2.y) > this.bottom)
      for (const t of bends(from.y, c1.y, c2.y, to.y)) this.addY(valueAt(t, from.y, c1.y, c2.y, to.y))
  }

  private addX(x: number): void {
    if (!(x >= this.left)) this.left = x
    if (!(x <= this.right)) this.right = x
  }

  private addY(y: number): void {
    if (!(y >= this.top)) this.top = y
    if (!(y <= this.bottom)) this.bottom = y
  }
}

/** Parameters inside the curve at which it turns back along one axis. */
const bends = (p0: number, p1: number, p2: number, p3: number): number[] =>
  rootsOfDerivative(p0, p1, p2, p3).filter((t) => t > 0 && t < 1)

function piecesOfCubic(from: Point, cubic: Cubic, tolerance: number): number {
  const { c1, c2, to } = cubic
  const [ax, ay] = [from.x - 2 * c1.x + c2.x, from.y - 2 * c1.y + c2.y]
  const [bx, by] = [c1.x - 2 * c2.x + to.x, c1.y - 2 * c2.y + to.y]
  const bend = Math.sqrt(Math.max(ax * ax + ay * ay, bx * bx + by * by))
  const pieces = Math.ceil(Math.sqrt((6 * bend) / (8 * tolerance)))
  return Math.min(Math.max(pieces, 1), MOST_PIECES)
}

/**
 * A contour as straight edges, at most `tolerance` millimetres away from it. Points that repeat the one before are left out,
 * and a closed contour does not repeat its start at the end. At least one point.
 */
export const flatten = (contour: Contour, tolerance = FLATTENING_TOLERANCE): Polyline =>
  pointsOf(cornersOf(contour, tolerance))

/** The same as `flatten`, as numbers. */
export function cornersOf(contour: Contour, tolerance = FLATTENING_TOLERANCE): Loop {
  const { start, segments, closed } = contour
  const pieces = piecesOf(contour, tolerance)
  const corners = new Float64Array(2 * (1 + sumOf(pieces)))
  corners[0] = start.x
  corners[1] = start.y
  let length = 2
  let from = start
  for (let s = 0; s < segments.length; s++) {
    const segment = segments[s]
    const { to } = segment
    const count = pieces[s]
    for (let i = 1; i <= count; i++) {
      const curved = i < count && segment.kind === 'cubic'
      const x = curved ? valueAt(i / count, from.x, segment.c1.x, segment.c2.x, to.x) : to.x
      const y = curved ? valueAt(i / count, from.y, segment.c1.y, segment.c2.y, to.y) : to.y
      if (x === corners[length - 2] && y === corners[length - 1]) continue
      corners[length++] = x
      corners[length++] = y
    }
    from = to
  }
  if (length > 2 && closed && corners[length - 2] === corners[0] && corners[length - 1] === corners[1]) length -= 2
  return length === corners.length ? corners : corners.slice(0, length)
}

/** How many corners a contour has at most when it is cut so. */
export const cornersIn = (contour: Contour, tolerance: number): number => 1 + sumOf(piecesOf(contour, tolerance))

const sumOf = (counts: readonly number[]): number => counts.reduce((sum, n) => sum + n, 0)

/** Into how many straight pieces each segment is cut. */
function piecesOf({ start, segments }: Contour, tolerance: number): number[] {
  let from = start
  return segments.map((segment) => {
    const pieces = segment.kind === 'cubic' ? piecesOfCubic(from, segment, tolerance) : 1
    from = segment.to
    return pieces
  })
}
