import { boxOfPoints, type Box } from './box.js'
import type { Polyline } from './outline.js'
import type { Point } from './point.js'

/**
 * A shape with straight sides that is drawn turned, put upright: its size, its corners and what reaches over its edge are told along its own
 * sides, since the box of a turned shape is larger than the shape.
 */
export interface Upright {
  /** Degrees from the x axis to one of its sides, clockwise as seen, over -45 to 45. */
  rotation: number
  /** Whether it has sides at right angles; else it is left as it lies. */
  isSided: boolean
  /** In the turned frame. */
  box: Box
  /** Into the turned frame. */
  of: (point: Point) => Point
}

const QUARTER = Math.PI / 2
const DEGREES = 180 / Math.PI

/** Share of its outline that runs along two directions at a right angle in a shape with straight sides, its corners rounded or not. */
const STRAIGHT = 0.75
/** Radians: sides that run so near to a direction run along it. Rounding of coordinates. */
const SAME_DIRECTION = 2e-4
/** Radians: a shape so near to upright is upright, its size the same to a few thousandths of a millimetre. */
const UPRIGHT = 1e-5

/** @param box of the outline */
export function uprightOf(outline: Polyline, box: Box): Upright {
  const turn = turnOf(outline)
  if (!turn) return { rotation: 0, isSided: turn === 0, box, of: (point) => point }
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
  const of = ({ x, y }: Point): Point => ({ x: cos * x + sin * y, y: cos * y - sin * x })
  return { rotation: turn * DEGREES, isSided: true, box: boxOfPoints(outline.map(of)) ?? box, of }
}

/** On the drawing. */
export function cornersOf({ rotation, box: { x, y, width, height } }: Upright): Point[] {
  const [cos, sin] = [Math.cos(rotation / DEGREES), Math.sin(rotation / DEGREES)]
  const back = (px: number, py: number): Point => ({ x: cos * px - sin * py, y: sin * px + cos * py })
  return [back(x, y), back(x + width, y), back(x + width, y + height), back(x, y + height)]
}

/** Radians from the x axis to the longest side, less whole quarter turns; undefined for an outline without sides at right angles. */
function turnOf(outline: Polyline): number | undefined {
  const sides = outline.map((from, i) => {
    const to = outline[(i + 1) % outline.length]
    return { length: Math.hypot(to.x - from.x, to.y - from.y), angle: Math.atan2(to.y - from.y, to.x - from.x) }
  })
  const { angle: along } = sides.reduce((a, b) => (b.length > a.length ? b : a), { length: 0, angle: 0 })
  const turn = withinQuarter(along)
  const straight = sides.filter(({ angle }) => Math.abs(withinQuarter(angle - turn)) <= SAME_DIRECTION)
  if (lengthOf(straight) < STRAIGHT * lengthOf(sides)) return undefined
  return Math.abs(turn) <= UPRIGHT ? 0 : turn
}

const lengthOf = (sides: readonly { length: number }[]): number => sides.reduce((sum, { length }) => sum + length, 0)

const withinQuarter = (angle: number): number => angle - Math.round(angle / QUARTER) * QUARTER
