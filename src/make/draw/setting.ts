import { gapBetween, type Edges } from '../../geometry/gap.js'
import type { Ends } from '../../windows/ends.js'
import type { Glyph } from './typeface.js'

/**
 * Characters set on a line so that the closest points of neighbouring outlines lie within a window: with the advances of the face
 * where these do, else pushed apart or drawn together until they do. Kerning is left out, since it brings outlines nearer.
 */

export interface Placed {
  glyph: Glyph
  /** Of the start of its baseline, millimetres from the left end of the line's outlines. */
  x: number
}

export interface SetWord {
  text: string
  placed: Placed[]
  /** From the left end of the outlines to the right one. */
  width: number
}

export interface SetLine {
  text: string
  placed: Placed[]
  width: number
}

/** Millimetres to which a gap is brought to the end of its window. */
const EXACT = 0.002
const MOST_STEPS = 30

/** @param gaps window of the least distance of neighbouring outlines, millimetres */
export function setWord(text: string, glyphOf: (character: string) => Glyph, gaps: Required<Ends>): SetWord {
  const placed: Placed[] = []
  let before: Placed | undefined
  for (const character of text) {
    const glyph = glyphOf(character)
    const x = before ? before.x + stepBetween(before.glyph, glyph, gaps) : -glyph.box.x
    before = { glyph, x }
    placed.push(before)
  }
  return { text, placed, width: before ? rightOf(before) : 0 }
}

const rightOf = ({ glyph, x }: Placed): number => x + glyph.box.x + glyph.box.width

/** How far one baseline start lies behind the other. */
function stepBetween(a: Glyph, b: Glyph, { min, max }: Required<Ends>): number {
  const natural = a.advance
  const gapAt = (step: number): number => gapBetween(a.edges, movedBy(b.edges, step)).distance
  // Where the boxes touch, no part of one character stands over the other.
  const touching = a.box.x + a.box.width - b.box.x
  const gap = natural > touching ? gapAt(natural) : 0
  if (gap >= min && gap <= max) return natural
  if (gap > max) return solve(gapAt, max, touching, natural)
  return solve(gapAt, min, touching, Math.max(natural, touching + min))
}

/** The least step from which on the gap is wanted: it grows with the step once the boxes are apart. */
function solve(gapAt: (step: number) => number, wanted: number, from: number, to: number): number {
  let [low, high] = [from, to]
  if (gapAt(low) > wanted) return low
  for (let i = 0; i < MOST_STEPS && high - low > EXACT; i++) {
    const middle = (low + high) / 2
    if (gapAt(middle) < wanted) low = middle
    else high = middle
  }
  return high
}

function movedBy({ corners, runs, boxes }: Edges, x: number): Edges {
  const moved = { corners: corners.slice(), runs, boxes: boxes.slice() }
  for (let i = 0; i < corners.length; i += 2) moved.corners[i] += x
  for (let i = 0; i < boxes.length; i += 2) moved.boxes[i] += x
  return moved
}

/** Words beside each other. @param space between their boxes, millimetres */
export function joinWords(words: readonly SetWord[], space: number): SetLine {
  let width = 0
  const placed = words.flatMap((word, i) => {
    const left = i === 0 ? 0 : width + space
    width = left + word.width
    return word.placed.map(({ glyph, x }) => ({ glyph, x: left + x }))
  })
  return { text: words.map(({ text }) => text).join(' '), placed, width }
}
