import type { Point } from './point.js'

/**
 * One contour of a shape, in millimetres. Its curves are cubic Béziers and straight lines, so that any affine map of it
 * is exact. `points[0]` is the start; each segment then adds one point (line) or three (cubic: two controls, end).
 */
export interface Contour {
  start: Point
  segments: Segment[]
  closed: boolean
}

export type Segment = { kind: 'line'; to: Point } | { kind: 'cubic'; c1: Point; c2: Point; to: Point }

/** A contour as straight edges only (closed unless it was drawn open), in millimetres. */
export type Polyline = Point[]
