import { apply, isSimilarity, meanScale, type Matrix } from '../geometry/matrix.js'
import type { Segment } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'

/**
 * Elliptical arcs and their cubics. From end points to the centre: SVG 1.1, appendix F.6.5 and F.6.6. An arc of the unit
 * circle over an angle t is drawn by a cubic whose controls lie 4/3 tan(t/4) along the tangents; over a quarter turn it is
 * at most 2.73e-4 of the radius off, and the error falls with the sixth power of the angle.
 */

export interface Arc {
  /** From the unit circle round 0, 0 to the ellipse. */
  frame: Matrix
  /** Radians from the x axis of the unit circle. */
  start: number
  /** Radians, positive from the x to the y axis. */
  sweep: number
}

export const WHOLE_TURN = 2 * Math.PI
const QUARTER = WHOLE_TURN / 4
const QUARTER_ERROR = 2.73e-4

/** How far a drawn arc may be from its cubics, in millimetres. */
const ARC_TOLERANCE = 0.0005
const MOST_PIECES_PER_QUARTER = 8

/** The matrix that turns the unit circle into an ellipse round `centre` whose first axis is turned by `angle` radians. */
export function ellipseFrame(centre: Point, rx: number, ry: number, angle = 0): Matrix {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  return { a: cos * rx, b: sin * rx, c: -sin * ry, d: cos * ry, e: centre.x, f: centre.y }
}

/**
 * An arc as the path command `A` writes it. Undefined when it is a straight line: a radius of 0 or no way between its ends.
 * @param rotation degrees.
 */
export function arcFromEnds(
  from: Point,
  to: Point,
  radii: { rx: number; ry: number },
  rotation: number,
  large: boolean,
  positive: boolean,
): Arc | undefined {
  let rx = Math.abs(radii.rx)
  let ry = Math.abs(radii.ry)
  if (rx === 0 || ry === 0 || (from.x === to.x && from.y === to.y)) return undefined
  const angle = ((rotation % 360) * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const halfX = (from.x - to.x) / 2
  const halfY = (from.y - to.y) / 2
  // Half the chord in the axes of the unit circle; longer than 1 when the radii are too small, which scales them up (F.6.6).
  const u = (cos * halfX + sin * halfY) / rx
  const v = (cos * halfY - sin * halfX) / ry
  const reach = Math.hypot(u, v)
  const grow = Math.max(1, reach)
  rx *= grow
  ry *= grow
  const [x, y] = [u / grow, v / grow]
  const chord = Math.min(1, reach / grow)
  const apart = (Math.sqrt(1 - chord * chord) / chord) * (large === positive ? -1 : 1)
  const [cx, cy] = [apart * y, -apart * x]
  const start = Math.atan2(y - cy, x - cx)
  const end = Math.atan2(-y - cy, -x - cx)
  const centre = apply(ellipseFrame({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }, rx, ry, angle), {
    x: cx,
    y: cy,
  })
  return { frame: ellipseFrame(centre, rx, ry, angle), start, sweep: sweepBetween(start, end, positive) }
}

function sweepBetween(start: number, end: number, positive: boolean): number {
  const sweep = end - start
  if (positive && sweep <= 0) return sweep + 2 * Math.PI
  if (!positive && sweep >= 0) return sweep - 2 * Math.PI
  return sweep
}

/** The cubics of an arc whose frame maps to millimetres, ending exactly in `to` when it is given. */
export function cubicsOfArc({ frame, start, sweep }: Arc, to?: Point): Segment[] {
  const radius = Math.max(Math.hypot(frame.a, frame.b), Math.hypot(frame.c, frame.d))
  const wanted = Math.ceil(((radius * QUARTER_ERROR) / ARC_TOLERANCE) ** (1 / 6))
  const perQuarter = Math.min(Math.max(wanted, 1), MOST_PIECES_PER_QUARTER)
  const pieces = Math.max(1, Math.ceil((Math.abs(sweep) / QUARTER) * perQuarter - 1e-9))
  const cubics = sweep === WHOLE_TURN && start === 0 ? wholeTurn(pieces) : cubicsOfUnitCircle(start, sweep, pieces)
  return cubics.map(({ c1, c2, to: end }, i) => {
    const last = to !== undefined && i === pieces - 1
    return { kind: 'cubic', c1: apply(frame, c1), c2: apply(frame, c2), to: last ? to : apply(frame, end) }
  })
}

type Cubic = Extract<Segment, { kind: 'cubic' }>

function cubicsOfUnitCircle(start: number, sweep: number, pieces: number): Cubic[] {
  const step = sweep / pieces
  const handle = (4 / 3) * Math.tan(step / 4)
  let [cos, sin] = [Math.cos(start), Math.sin(start)]
  return Array.from({ length: pieces }, (_, i) => {
    const c1 = { x: cos - handle * sin, y: sin + handle * cos }
    const angle = start + (i + 1) * step
    cos = Math.cos(angle)
    sin = Math.sin(angle)
    return { kind: 'cubic', c1, c2: { x: cos + handle * sin, y: sin - handle * cos }, to: { x: cos, y: sin } }
  })
}

/** Circles are many and alike: by the number of pieces that one is cut into. */
const turns = new Map<number, Cubic[]>()

function wholeTurn(pieces: number): Cubic[] {
  const known = turns.get(pieces)
  if (known) return known
  const made = cubicsOfUnitCircle(0, WHOLE_TURN, pieces)
  turns.set(pieces, made)
  return made
}

/** Files round their matrices: a circle that is out of round by less than this share of its radius is one. */
const ROUNDNESS = 1e-5

/** Centre and radius of the circle that `map` makes of the unit circle, when it makes one. */
export function circleOf(map: Matrix): { x: number; y: number; radius: number } | undefined {
  return isSimilarity(map, ROUNDNESS) ? { x: map.e, y: map.f, radius: meanScale(map) } : undefined
}
