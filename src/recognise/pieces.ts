import type { Shape } from '../drawing/drawing.js'
import { boxContains, centreOfBox, type Box } from '../geometry/box.js'
import { boxOfContour, flatten } from '../geometry/curve.js'
import type { Contour, Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import { contains } from '../geometry/polyline.js'
import type { NamedPart } from './parts.js'

/**
 * Contours one by one, whatever path they were drawn in: a program may write a whole sign as one path, or each contour as
 * its own. What encloses what is told from the contours alone.
 */
export interface Piece {
  shape: Shape
  contour: Contour
  box: Box
  /** Shapes painted before this one. */
  order: number
  named?: NamedPart
  /** The contour as straight edges. */
  outline: Polyline
}

/** Millimetres. */
const TOLERANCE = 0.001
/** Contours that are looked at as possible panels, borders and fields: the largest ones. */
const MOST_HOLDERS = 100
/** Share of all things on a sign that its panel holds; a title block or a cut mark may lie outside. */
const NEARLY_ALL = 0.9
/** Contours of one path that an ordinary character has at most, `%` say; a path with more may hold a whole sign. */
const CONTOURS_OF_A_CHARACTER = 5

/** What lies on a sign, as far as it is known before anything is told apart. */
export interface Things {
  dots: Point[]
  texts: Point[]
  pieces: Piece[]
}

export const pieceOf = (shape: Shape, contour: Contour, order: number, named?: NamedPart): Piece => ({
  shape,
  contour,
  box: boxOfContour(contour),
  order,
  named,
  outline: flatten(contour, TOLERANCE),
})

const areaOf = (b: Box) => b.width * b.height

/** Whether a contour bounds an area: closed, or filled as if it were. */
const bounds = ({ contour, shape, outline }: Piece) =>
  outline.length > 2 && (contour.closed || (shape.fill !== undefined && shape.fill.opacity > 0))

export interface Holder {
  piece: Piece
  dots: number
  texts: number
  /** Contours of other paths, and of its own when that path is more than one character. */
  pieces: number
  /** Whether it holds nearly everything that is smaller than itself. */
  nearlyAll: boolean
}

/** The contours that hold other things, the largest first. */
export function holdersOf({ dots, texts, pieces }: Things): Holder[] {
  const largest = pieces
    .filter(bounds)
    .sort((a, b) => areaOf(b.box) - areaOf(a.box))
    .slice(0, MOST_HOLDERS)
  return largest.flatMap((piece) => {
    const foreign = (other: Piece) =>
      other.shape !== piece.shape || piece.shape.contours.length > CONTOURS_OF_A_CHARACTER
    const smaller = pieces.filter((p) => areaOf(p.box) < areaOf(piece.box) && foreign(p))
    const held = {
      dots: dots.filter((p) => holds(piece, p)).length,
      texts: texts.filter((p) => holds(piece, p)).length,
      pieces: smaller.filter((p) => boxContains(piece.box, p.box) && holds(piece, centreOfBox(p.box))).length,
    }
    const all = dots.length + texts.length + smaller.length
    const count = held.dots + held.texts + held.pieces
    return count === 0 ? [] : [{ piece, ...held, nearlyAll: count >= NEARLY_ALL * all }]
  })
}

export function holds({ box, outline }: Piece, p: Point): boolean {
  const inside = p.x >= box.x && p.x <= box.x + box.width && p.y >= box.y && p.y <= box.y + box.height
  return inside && contains([outline], p, 'nonzero')
}

/** Whether one piece holds the middle of the other, which is smaller. */
export const holdsPiece = (outer: Piece, inner: Piece): boolean =>
  boxContains(outer.box, inner.box) && holds(outer, centreOfBox(inner.box))
