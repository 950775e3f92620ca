import { boxOfOutlines, boxOfPoints, type Box } from '../../geometry/box.js'
import { edgesOf, gapBetween, type Edges } from '../../geometry/gap.js'
import { loopOf } from '../../geometry/loop.js'
import type { Polyline } from '../../geometry/outline.js'
import type { Point } from '../../geometry/point.js'

/**
 * The shortest way that dots have to go until everything keeps its distance from them. Along each of eight directions the dots go by what
 * is still missing: no distance grows faster than they go, so nothing is passed over (the march along a ray of sphere tracing, Hart 1996).
 */

/** Outlines from which the edges of dots keep so far, millimetres. */
export interface Obstacle {
  outlines: readonly Polyline[]
  least: number
  /** Whether dots stay out of the outlines, only off their edges, or within them. */
  kind: 'solid' | 'edge' | 'frame'
}

export interface Wish {
  obstacles: readonly Obstacle[]
  radius: number
  /** The way down on the sign, of length 1: a reader has the braille below the text. */
  down: Point
  /** How far along that way the upper edge of the dots has to be at least, and at most. */
  top: { min?: number; max?: number }
}

const DIRECTIONS = 8
/** A little more than is missing, so that a corner is not approached for ever. Millimetres. */
const LEAST_STEP = 0.05
const MOST_STEPS = 24
/** Nobody looks for the braille of a text farther away, millimetres. */
const FARTHEST = 40
/** Going aside counts more than going up or down: the braille stays under its text. */
const ASIDE = 1.5
/** No clearance is so large: dots that lack more, and ever more, have left the panel. Millimetres. */
const LOST = 15

/** The shift; undefined when there is no such place. */
export function roomFor(dots: readonly Point[], wish: Wish): Point | undefined {
  const obstacles = wish.obstacles.map(prepared)
  const settled = toHeight(dots, wish)
  const missing = (by: Point): number =>
    missingAt(dots, { x: settled.x + by.x, y: settled.y + by.y }, wish, obstacles) - ROUNDING
  const shift = missing({ x: 0, y: 0 }) <= 0 ? { x: 0, y: 0 } : shortest(missing, wish)
  return shift && { x: settled.x + shift.x, y: settled.y + shift.y }
}

/** Arithmetic alone, millimetres. */
const ROUNDING = 1e-9

const upperOf = (dots: readonly Point[], { down, radius }: Wish): number =>
  Math.min(...dots.map(({ x, y }) => x * down.x + y * down.y)) - radius

/** First of all up or down to where the upper edge has to be: where that is one height, no march would end on it. */
function toHeight(dots: readonly Point[], wish: Wish): Point {
  const { min = -Infinity, max = Infinity } = wish.top
  const upper = upperOf(dots, wish)
  const by = Math.min(max, Math.max(min, upper)) - upper
  return { x: by * wish.down.x, y: by * wish.down.y }
}

function shortest(missing: (shift: Point) => number, wish: Wish): Point | undefined {
  const across = { x: wish.down.y, y: -wish.down.x }
  let best: { shift: Point; cost: number } | undefined
  for (let i = 0; i < DIRECTIONS; i++) {
    const angle = (2 * Math.PI * i) / DIRECTIONS
    const [down, aside] = [exact(Math.cos(angle)), exact(Math.sin(angle))]
    const way = { x: down * wish.down.x + aside * across.x, y: down * wish.down.y + aside * across.y }
    const weight = 1 + (ASIDE - 1) * Math.abs(aside)
    const length = march(way, missing, best ? best.cost / weight : FARTHEST)
    if (length === undefined) continue
    best = { shift: { x: length * way.x, y: length * way.y }, cost: length * weight }
  }
  return best?.shift
}

const exact = (value: number): number => (Math.abs(value) < 1e-12 ? 0 : value)

function march(way: Point, missing: (shift: Point) => number, farthest: number): number | undefined {
  let [length, before] = [0, Infinity]
  for (let step = 0; step < MOST_STEPS && length < farthest; step++) {
    const more = missing({ x: length * way.x, y: length * way.y })
    if (more <= 0) return length
    if (more > before && more > LOST) return undefined
    before = more
    length += more + LEAST_STEP
  }
  return undefined
}

/** An obstacle with what is asked of it many times. */
interface Prepared extends Pick<Obstacle, 'least' | 'kind'> {
  edges: Edges
  boxes: Box[]
  whole: Box | undefined
}

const prepared = ({ outlines, least, kind }: Obstacle): Prepared => ({
  least,
  kind,
  edges: edgesOf(outlines.map(loopOf)),
  boxes: outlines.flatMap((outline) => boxOfPoints(outline) ?? []),
  whole: boxOfOutlines(outlines),
})

function missingAt(dots: readonly Point[], shift: Point, wish: Wish, obstacles: readonly Prepared[]): number {
  const there = dots.map(({ x, y }) => ({ x: x + shift.x, y: y + shift.y }))
  const { radius, top } = wish
  const upper = upperOf(there, wish)
  let most = Math.max((top.min ?? -Infinity) - upper, upper - (top.max ?? Infinity))
  const own = boxOfPoints(there)
  if (!own) return most
  const edges = edgesOf(there.map((dot) => loopOf([dot])))
  for (const { edges: theirs, boxes, whole, least, kind } of obstacles) {
    const asked = least + radius
    const out = kind === 'frame' && whole ? outside(own, whole) : 0
    // The box round a character stands for it: nobody sets dots between its legs.
    const isIn = kind === 'solid' && boxes.some((box) => there.some((dot) => holds(box, dot)))
    most = Math.max(most, out > 0 ? out + asked : isIn ? asked : asked - gapBetween(edges, theirs).distance)
  }
  return most
}

const holds = ({ x, y, width, height }: Box, dot: Point): boolean =>
  dot.x > x && dot.y > y && dot.x < x + width && dot.y < y + height

/** How far a box reaches out of another. */
const outside = (own: Box, frame: Box): number =>
  Math.max(
    0,
    frame.x - own.x,
    frame.y - own.y,
    own.x + own.width - frame.x - frame.width,
    own.y + own.height - frame.y - frame.height,
  )

export const cornersOf = ({ x, y, width, height }: Box): Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
]
