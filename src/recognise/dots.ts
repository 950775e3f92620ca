import type { Shape } from '../drawing/drawing.js'
import { boxContains, unionOfBoxes, type Box } from '../geometry/box.js'
import type { Contour } from '../geometry/outline.js'
import { brailleAmong } from './blocks.js'
import { boxesOfContours } from './contour-boxes.js'
import { onceEach } from './once.js'
import type { Round } from './round.js'
import { roundOnce, type KnownRounds } from './round-once.js'

/** Something round that may be a braille dot: middle and diameter in millimetres, half a painted stroke on each side included. */
export interface Dot {
  x: number
  y: number
  diameter: number
  shape: Shape
  /** Index into `shape.contours`. */
  contour: number
  /** Contours that lie in this one and count as the same dot: drawn twice, filled and outlined apart, shaded in rings. */
  twins?: { shape: Shape; contour: number }[]
}

/** What may be a dot at all, generously; the lattice decides what is. */
const SMALLEST = 0.4
export const LARGEST = 4
/** A box with sides more unequal than this holds no dot. */
const MOST_OBLONG = 1.3
/** Within a contour of the same shape less than this many diameters in size, a round contour is the counter of a character. */
const COUNTER_REACH = 8
/** A stroke with round caps that is no longer than this share of its width is a dot. */
const SHORT_STROKE = 0.05
/** So many contours are remembered in one square when counters are looked for. */
const MOST_HOLDERS = 32

/**
 * The round things of a drawing that may be braille dots, and what is left for lettering and all else.
 * `dots` are candidates: counters of characters are not among them, but full stops, rivets and holes still may be. `rest` holds
 * every shape but the contours that stand on a braille lattice; when braille was read with more knowledge than geometry has
 * (the client named it), `withoutDots` gives what is left without just those.
 */
export function dotsOf(shapes: Shape[]): { dots: Dot[]; rest: Shape[] } {
  const known: KnownRounds = new Map()
  const dots = onceEach(shapes.flatMap((shape) => candidatesOf(shape, known)))
  return {
    dots,
    get rest() {
      return withoutDots(shapes, brailleAmong(dots))
    },
  }
}

/** The shapes without the contours of the given dots; a shape that is left with no contour is left out. */
export function withoutDots(shapes: readonly Shape[], dots: readonly Dot[]): Shape[] {
  const less = shapesLess(dots)
  return shapes.flatMap((shape) => less(shape) ?? [])
}

/** What is left of a shape without the contours of the given dots, if anything is. */
export function shapesLess(dots: readonly Dot[]): (shape: Shape) => Shape | undefined {
  const taken = new Map<Shape, Set<number>>()
  const take = (shape: Shape, contour: number) => {
    const set = taken.get(shape)
    if (set) set.add(contour)
    else taken.set(shape, new Set([contour]))
  }
  for (const dot of dots) {
    take(dot.shape, dot.contour)
    for (const twin of dot.twins ?? []) take(twin.shape, twin.contour)
  }
  return (shape) => {
    const contours = taken.get(shape)
    if (!contours) return shape
    return contours.size < shape.contours.length ? lessContours(shape, contours) : undefined
  }
}

function lessContours(shape: Shape, taken: Set<number>): Shape {
  const left = (_: unknown, i: number) => !taken.has(i)
  const contours = shape.contours.filter(left)
  const box = unionOfBoxes(boxesOfContours(shape).filter(left)) ?? shape.box
  return { ...shape, contours, circle: undefined, box }
}

function candidatesOf(shape: Shape, known: KnownRounds): Dot[] {
  const filled = shape.fill !== undefined && shape.fill.opacity > 0
  const stroke = shape.stroke && shape.stroke.opacity > 0 ? shape.stroke : undefined
  if (!filled && !stroke) return []
  const width = stroke?.width ?? 0
  if (shape.circle && shape.contours.length === 1) {
    const { x, y, radius } = shape.circle
    const diameter = 2 * radius + width
    return fits(diameter) ? [{ x, y, diameter, shape, contour: 0 }] : []
  }
  const dots: Dot[] = []
  const boxes = boxesOfContours(shape)
  shape.contours.forEach((contour, i) => {
    const box = boxes[i]
    const size = Math.max(box.width, box.height)
    if (size > LARGEST || !(size >= 0)) return
    const round =
      stroke?.linecap === 'round' && size <= SHORT_STROKE * width
        ? cap(contour, box)
        : roundedContour(contour, box, filled, known)
    if (round && fits(round.diameter + width))
      dots.push({ x: round.x, y: round.y, diameter: round.diameter + width, shape, contour: i })
  })
  return shape.contours.length > 1 ? withoutCounters(dots, boxes) : dots
}

const fits = (diameter: number): boolean => diameter >= SMALLEST && diameter <= LARGEST

/** A stroke of no length: nothing but its round caps. A contour that is only a start paints nothing (SVG 2, 13.5.5). */
const cap = (contour: Contour, box: Box): Round | undefined =>
  contour.segments.length > 0 || contour.closed
    ? { x: box.x + box.width / 2, y: box.y + box.height / 2, diameter: Math.hypot(box.width, box.height) }
    : undefined

function roundedContour(contour: Contour, box: Box, filled: boolean, known: KnownRounds): Round | undefined {
  const larger = Math.max(box.width, box.height)
  if (larger < SMALLEST / 2 || larger > MOST_OBLONG * Math.min(box.width, box.height)) return undefined
  return roundOnce(contour, larger, filled, known)
}

/**
 * Leaves out what lies within a somewhat larger contour of the same shape that is no dot itself: the counter of an O. The
 * larger contours are filed in squares of the plane, a bounded number in each, so that the work grows with the contours.
 */
function withoutCounters(dots: Dot[], boxes: readonly Box[]): Dot[] {
  if (dots.length === 0 || dots.length === boxes.length) return dots
  const round = new Set(dots.map((dot) => dot.contour))
  const squares = new Map<string, Box[]>()
  boxes.forEach((box, i) => {
    if (round.has(i) || Math.max(box.width, box.height) > COUNTER_REACH * LARGEST) return
    for (let x = squareOf(box.x); x <= squareOf(box.x + box.width); x++)
      for (let y = squareOf(box.y); y <= squareOf(box.y + box.height); y++) {
        const filed = squares.get(`${x} ${y}`)
        if (!filed) squares.set(`${x} ${y}`, [box])
        else if (filed.length < MOST_HOLDERS) filed.push(box)
      }
  })
  return dots.filter((dot) => {
    const own = boxes[dot.contour]
    const holders = squares.get(`${squareOf(dot.x)} ${squareOf(dot.y)}`) ?? []
    return !holders.some(
      (box) => Math.max(box.width, box.height) <= COUNTER_REACH * dot.diameter && boxContains(box, own),
    )
  })
}

const squareOf = (coordinate: number): number => Math.floor(coordinate / LARGEST)
