import type { Point } from './point.js'

/**
 * The floor that a hinged door leaf sweeps, seen from above, and squares on the same floor.
 *
 * A square stands with its middle at the origin against the wall y = 0 and reaches into positive y. A sector is what a leaf sweeps when it
 * turns about its hinge. Squares of all sizes lie one within the next, so each point of the floor has one that first reaches it: that of
 * the side max(2|x|, y). The largest square that no point of the sector lies inside is the least of these sides.
 */
export interface Sector {
  hinge: Point
  radius: number
  /** Directions of the leaf at the ends of its turn, in degrees from the x axis towards positive y; `to` is `from` or more. */
  from: number
  to: number
}

/** Behind the wall, by more than arithmetic alone may put a point there; in the unit of the points. */
const BEHIND = -1e-6

/** The side of the square that first reaches a point; no square reaches behind the wall. */
const sideAt = ({ x, y }: Point): number => (y < BEHIND ? Infinity : Math.max(2 * Math.abs(x), y))

const DEGREES = 180 / Math.PI

const onArc = ({ hinge, radius }: Sector, degrees: number): Point => ({
  x: hinge.x + radius * Math.cos(degrees / DEGREES),
  y: hinge.y + radius * Math.sin(degrees / DEGREES),
})

/** Points of a straight line where the side that reaches it may be least: its ends, and where it changes its slope. */
function ofSegment(a: Point, b: Point): Point[] {
  const along = (share: number): Point => ({ x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) })
  // On x = 0, on y = 0, on 2x = y and on 2x = -y.
  const crossings = [(p: Point) => p.x, (p: Point) => p.y, (p: Point) => 2 * p.x - p.y, (p: Point) => 2 * p.x + p.y]
  const shares = crossings.flatMap((value) => {
    const [from, to] = [value(a), value(b)]
    return from === to ? [] : [from / (from - to)]
  })
  return [a, b, ...shares.filter((share) => share > 0 && share < 1).map(along)]
}

/** The same for the arc: its ends, its foremost points, and where it crosses the same lines. */
function ofArc(sector: Sector): Point[] {
  const { hinge, radius, from, to } = sector
  const directions = [from, to, 0, 90, 180, 270]
  // A line through the origin with the unit normal (nx, ny): n · hinge + radius · cos(direction - angle of n) = 0.
  for (const [nx, ny] of [
    [1, 0],
    [0, 1],
    [2, -1],
    [2, 1],
  ]) {
    const length = Math.hypot(nx, ny)
    const cosine = -(nx * hinge.x + ny * hinge.y) / (length * radius)
    if (Math.abs(cosine) > 1) continue
    const normal = Math.atan2(ny, nx) * DEGREES
    const off = Math.acos(cosine) * DEGREES
    directions.push(normal + off, normal - off)
  }
  return directions.filter((direction) => isWithin(direction, sector)).map((direction) => onArc(sector, direction))
}

const TURN = 360

/** Degrees by which a direction may lie outside the turn because of arithmetic alone. */
const NOISE = 1e-9

const isWithin = (direction: number, { from, to }: Sector): boolean => {
  const beyond = (((direction - from) % TURN) + TURN) % TURN
  return beyond <= to - from + NOISE || beyond >= TURN - NOISE
}

/** Whether the origin, the middle of the square's side at the wall, lies in the sector. */
function holdsOrigin(sector: Sector): boolean {
  const { hinge, radius } = sector
  const direction = Math.atan2(-hinge.y, -hinge.x) * DEGREES
  return Math.hypot(hinge.x, hinge.y) <= radius && isWithin(direction, sector)
}

/**
 * The side of the largest square that no point of the sector lies inside; 0 where the sector holds the square's middle at the wall.
 * Method: the side that reaches a point is a convex function, and the sector of less than half a turn a convex set; the least value is
 * at the origin or on the sector's edge, at one of finitely many points.
 */
export function largestSquareBeside(sector: Sector): number {
  if (holdsOrigin(sector)) return 0
  const { hinge, from, to } = sector
  const edge = [...ofSegment(hinge, onArc(sector, from)), ...ofSegment(hinge, onArc(sector, to)), ...ofArc(sector)]
  return Math.min(...edge.map(sideAt))
}
