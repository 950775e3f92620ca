import { unionOfBoxes } from '../geometry/box.js'
import { boxOfLoops, pointsOf } from '../geometry/loop.js'
import type { Point } from '../geometry/point.js'
import { missing, type Lettering, type LetteringLine, type LetteringPart, type Unknown } from '../sign/sign.js'
import { alongLine, directionAt, downLine } from './frame.js'
import { overlappingOf } from './overlapping.js'
import { holdsPiece, type Piece } from './pieces.js'
import { UNDRAWN_OF_LETTERING } from './undrawn.js'

/**
 * Outlines that were named characters but could not be read: what they say, how high and how thick they are stays unknown.
 * What can be measured on any outline is kept: where it is, how near it comes to braille, and its colour.
 */

/** Two outlines are on one line when they share this much of the lower one's height. */
const SHARED_HEIGHT = 0.4

/** An outline as it lies on a line of the reading direction. */
interface Lying {
  piece: Piece
  top: number
  bottom: number
  left: number
}

/**
 * The lettering that a set of outlines makes up, in lines.
 * @param rotation reading direction, degrees clockwise as seen
 * @param element its place, e.g. `lettering/0`
 * @param why they could not be read
 */
export function letteringOfOutlines(
  pieces: readonly Piece[],
  part: LetteringPart,
  rotation: number,
  element: string,
  why: string,
): Lettering {
  const unread: Unknown = { unknown: 'unreadable', why }
  const lines = linesOf(pieces, rotation).map((line, i): LetteringLine => {
    const place = {
      element: `${element}/line/${i}`,
      box: boxOfLoops(line.map(({ piece }) => piece.corners)),
      source: line[0].piece.shape.source,
    }
    return { place, text: unread, baseline: unread, outlines: line.map(({ piece }) => piece.outline) }
  })
  return {
    place: { element, box: unionOfBoxes(lines.map((l) => l.place.box)), source: pieces[0].shape.source },
    part,
    text: unread,
    lines,
    style: unread,
    characterProportion: unread,
    characterHeight: unread,
    strokeThickness: unread,
    ...UNDRAWN_OF_LETTERING,
    section: missing('a drawing does not say the section of raised characters'),
    characterSpacing: unread,
    baselineSpacing: lines.length > 1 ? unread : undefined,
    colour: unread,
    background: unread,
  }
}

/** Lines from the top, each from its beginning, as seen by one who reads in the given direction. */
function linesOf(pieces: readonly Piece[], rotation: number): Lying[][] {
  const along = directionAt(rotation)
  const lying = pieces.map((piece) => lie(piece, along)).sort((a, b) => b.bottom - b.top - (a.bottom - a.top))
  const lines: { top: number; bottom: number; members: Lying[] }[] = []
  for (const one of lying) {
    const line = lines.find((l) => shared(l, one) >= SHARED_HEIGHT * (one.bottom - one.top))
    if (line) line.members.push(one)
    else lines.push({ top: one.top, bottom: one.bottom, members: [one] })
  }
  lines.sort((a, b) => a.top - b.top)
  return lines.map((l) => l.members.sort((a, b) => a.left - b.left))
}

const shared = (a: { top: number; bottom: number }, b: { top: number; bottom: number }) =>
  Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top)

function lie(piece: Piece, along: Point): Lying {
  const points = pointsOf(piece.corners)
  const downs = points.map((p) => downLine(p, along))
  const lefts = points.map((p) => alongLine(p, along))
  const least = (values: number[]) => values.reduce((a, b) => Math.min(a, b), Infinity)
  return { piece, top: least(downs), bottom: -least(downs.map((v) => -v)), left: least(lefts) }
}

/**
 * Whether a set of outlines could hold a character at all: a single shape with straight sides and few corners is none.
 * The number of corners is the contract's, for `no-tactile-elements`.
 */
export function couldBeCharacters(pieces: readonly Piece[]): boolean {
  if (pieces.length !== 1) return pieces.length > 0
  const [{ contour, corners }] = pieces
  const straight = contour.segments.every((s) => s.kind === 'line')
  return !(straight && corners.length / 2 < CORNERS_OF_A_CHARACTER)
}

const CORNERS_OF_A_CHARACTER = 6

/** Outlines without those that lie inside another one and were painted over it: counters drawn as shapes of their own. */
export function withoutPaintedCounters(pieces: readonly Piece[]): Piece[] {
  const byArea = [...pieces].sort((a, b) => b.box.width * b.box.height - a.box.width * a.box.height)
  const near = overlappingOf(byArea.map(({ box }) => box))
  const over = new Set<Piece>()
  byArea.forEach((piece, at) => {
    const isUnder = (i: number): boolean => {
      const larger = byArea[i]
      const before = i < at && larger.order < piece.order && larger.shape !== piece.shape
      return before && !over.has(larger) && holdsPiece(larger, piece)
    }
    if (near(piece.box).some(isUnder)) over.add(piece)
  })
  return pieces.filter((p) => !over.has(p))
}
