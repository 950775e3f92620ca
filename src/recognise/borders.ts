import { boxContains, boxOfPoints, centreOfBox, type Box } from '../geometry/box.js'
import type { Polyline } from '../geometry/outline.js'
import { contains } from '../geometry/polyline.js'
import { cornersOf, uprightOf } from '../geometry/upright.js'
import { missing, type Border, type Colour, type Fact } from '../sign/sign.js'
import type { Holder, Piece } from './pieces.js'
import { colourOf } from './rgb.js'

/**
 * Borders: a line round something on the sign. Drawn as a stroke without a fill, or as the area between two outlines of
 * one path. A filled area is none, whatever lies on it.
 */
export interface Ring {
  outer: Piece
  /** The inner edge, when the ring is an area between two outlines. */
  inner?: Piece
  /** Thickness in millimetres. */
  width: number
}

/** The inner edge of a ring is at least so large a share of the outer one; else it is a plate with a window. */
const LEAST_INNER = 0.6
/** Sides of a ring are as thick as each other, give or take this share, or this many millimetres. */
const EVEN_SHARE = 0.25
const EVEN_SLACK = 0.2

const painted = (paint?: { opacity: number }) => paint !== undefined && paint.opacity > 0

/** The rings among the holders, the largest first. A contour is in one ring at most. */
export function ringsOf(holders: readonly Holder[]): Ring[] {
  const rings: Ring[] = []
  const used = new Set<Piece>()
  for (const { piece } of holders) {
    if (used.has(piece)) continue
    const ring =
      strokedRing(piece) ??
      filledRing(
        piece,
        holders.map((h) => h.piece).filter((p) => !used.has(p)),
      )
    if (!ring) continue
    used.add(ring.outer)
    if (ring.inner) used.add(ring.inner)
    rings.push(ring)
  }
  return rings
}

const strokedRing = (piece: Piece): Ring | undefined => {
  const { fill, stroke } = piece.shape
  return !painted(fill) && stroke && painted(stroke) ? { outer: piece, width: stroke.width } : undefined
}

function filledRing(outer: Piece, others: readonly Piece[]): Ring | undefined {
  if (!painted(outer.shape.fill)) return undefined
  const inner = others.find((p) => p !== outer && p.shape === outer.shape && isInnerEdge(outer, p))
  if (!inner) return undefined
  const [o, i] = boxesUpright(outer, inner)
  return { outer, inner, width: (o.width - i.width + o.height - i.height) / 4 }
}

/** Of a ring that is drawn turned, as the outer edge lies. */
function boxesUpright(outer: Piece, inner: Piece): [Box, Box] {
  const { rotation, box, of } = uprightOf(outer.outline, outer.box)
  return [box, (rotation !== 0 && boxOfPoints(inner.outline.map(of))) || inner.box]
}

function isInnerEdge(outer: Piece, inner: Piece): boolean {
  if (!boxContains(outer.box, inner.box)) return false
  const [o, i] = boxesUpright(outer, inner)
  if (i.width < LEAST_INNER * o.width || i.height < LEAST_INNER * o.height) return false
  const sides = [i.x - o.x, i.y - o.y, o.x + o.width - i.x - i.width, o.y + o.height - i.y - i.height]
  const [least, most] = [Math.min(...sides), Math.max(...sides)]
  if (most - least > EVEN_SHARE * most + EVEN_SLACK) return false
  return !contains([outer.outline, inner.outline], centreOfBox(inner.box), outer.shape.fillRule)
}

/** The plain paint of a ring: its stroke, or the fill between its outlines. */
function colourOfRing({ shape: { fill, stroke } }: Piece, isFilled: boolean): Fact<Colour> {
  const paint = isFilled ? fill : stroke
  return paint?.rgb && paint.opacity === 1
    ? { value: colourOf(paint.rgb), basis: 'drawn', method: 'paint of the border' }
    : missing('the border has no plain colour')
}

/** A ring as a border of the sign. That it is raised is an assumption, which the caller states. */
export function borderOf({ outer, inner, width }: Ring, element: string): Border {
  const half = inner ? 0 : width / 2
  const box = {
    x: outer.box.x - half,
    y: outer.box.y - half,
    width: outer.box.width + 2 * half,
    height: outer.box.height + 2 * half,
  }
  return {
    place: { element, box, source: outer.shape.source },
    box,
    width: { value: width, basis: 'drawn', method: inner ? 'between its two outlines' : 'width of its stroke' },
    raised: { value: true, basis: 'drawn', method: 'assumed of a drawn border' },
    colour: colourOfRing(outer, inner !== undefined),
    outlines: inner ? [outer.outline, inner.outline] : edgesOfTurned(outer, half),
  }
}

/** The outer and the inner edge of a stroke along a shape that is drawn turned; none of an upright one, of which its box tells. */
function edgesOfTurned({ outline, box }: Piece, half: number): Polyline[] {
  const upright = uprightOf(outline, box)
  if (upright.rotation === 0) return []
  const { x, y, width, height } = upright.box
  const grown = (by: number) =>
    cornersOf({ ...upright, box: { x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by } })
  return Math.min(width, height) > 2 * half ? [grown(half), grown(-half)] : [grown(half)]
}
