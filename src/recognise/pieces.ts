import type { Shape } from '../drawing/drawing.js'
import { boxContains, boxOfPoints, centreOfBox, type Box } from '../geometry/box.js'
import { cornersOf } from '../geometry/curve.js'
import { polylineOf, windsRound, type Loop } from '../geometry/loop.js'
import type { Contour, Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import { boxesOfContours } from './contour-boxes.js'
import type { NamedPart } from './parts.js'

/**
 * Contours one by one, whatever path they were drawn in: a program may write a whole sign as one path, or each contour as
 * its own. What encloses what is told from the contours alone.
 */
export class Piece {
  /**
   * @param box the exact box of the contour
   * @param order shapes painted before this one
   * @param corners the contour as straight edges
   */
  constructor(
    readonly shape: Shape,
    readonly contour: Contour,
    readonly box: Box,
    readonly order: number,
    readonly named: NamedPart | undefined,
    readonly corners: Loop,
  ) {}

  /** The corners as points. */
  get outline(): Polyline {
    return polylineOf(this.corners)
  }
}

/** How far the straight edges of an outline may lie from its curves, millimetres. */
export const OUTLINE_TOLERANCE = 0.001
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

/** The contours of a shape, one piece each. @param order of the shape among those that are painted */
export function piecesOfShape(shape: Shape, order: number, named?: NamedPart): Piece[] {
  const boxes = boxesOfContours(shape)
  return shape.contours.map(
    (contour, i) => new Piece(shape, contour, boxes[i], order, named, cornersOf(contour, OUTLINE_TOLERANCE)),
  )
}

const areaOf = (b: Box) => b.width * b.height

/** Whether a contour bounds an area: closed, or filled as if it were. */
const bounds = ({ contour, shape, corners }: Piece) =>
  corners.length > 4 && (contour.closed || (shape.fill !== undefined && shape.fill.opacity > 0))

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
  const bySize = pieces.map((piece) => ({ piece, area: areaOf(piece.box) })).sort((a, b) => b.area - a.area)
  const [aroundDots, aroundTexts] = [boxOfPoints(dots), boxOfPoints(texts)]
  const holders: Holder[] = []
  let looked = 0
  for (const { piece, area } of bySize) {
    if (!bounds(piece)) continue
    if (++looked > MOST_HOLDERS) break
    const severalCharacters = piece.shape.contours.length > CONTOURS_OF_A_CHARACTER
    const held = {
      dots: meet(piece.box, aroundDots) ? numberHeld(piece, dots) : 0,
      texts: meet(piece.box, aroundTexts) ? numberHeld(piece, texts) : 0,
      pieces: 0,
    }
    let smaller = 0
    for (let i = bySize.length - 1; bySize[i].area < area; i--) {
      const other = bySize[i].piece
      if (other.shape === piece.shape && !severalCharacters) continue
      smaller++
      if (holdsPiece(piece, other)) held.pieces++
    }
    const all = dots.length + texts.length + smaller
    const count = held.dots + held.texts + held.pieces
    if (count > 0) holders.push({ piece, ...held, nearlyAll: count >= NEARLY_ALL * all })
  }
  return holders
}

/** Boxes that at least touch; one of points may have no width or height. */
const meet = (a: Box, b: Box | undefined): boolean =>
  b !== undefined && a.x <= b.x + b.width && b.x <= a.x + a.width && a.y <= b.y + b.height && b.y <= a.y + a.height

function numberHeld(piece: Piece, points: readonly Point[]): number {
  const { x: left, y: top, width, height } = piece.box
  let held = 0
  for (const { x, y } of points)
    if (x >= left && x <= left + width && y >= top && y <= top + height && windsRound(piece.corners, x, y)) held++
  return held
}

export function holds({ box, corners }: Piece, { x, y }: Point): boolean {
  const inside = x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height
  return inside && windsRound(corners, x, y)
}

/** Whether one piece holds the middle of the other, which is smaller. */
export const holdsPiece = (outer: Piece, inner: Piece): boolean =>
  boxContains(outer.box, inner.box) && holds(outer, centreOfBox(inner.box))
