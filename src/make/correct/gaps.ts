import { flatten } from '../../geometry/curve.js'
import { distanceBetween } from '../../geometry/gap.js'
import type { Polyline } from '../../geometry/outline.js'
import { frameOf, type Frame } from '../../measure/frame.js'
import type { Finding } from '../../report/finding-schema.js'
import { isKnown, type Lettering, type LetteringLine } from '../../sign/sign.js'
import { brailleContours, type Contours } from './marks.js'
import { addMoves, contoursWithin, moved, type Moves } from './move.js'
import { NotCorrectable, type Rewrite } from './outcome.js'
import type { Sheet } from './sheet.js'
import { fromFrame } from './surroundings.js'

/** Characters set wider or narrower until the gaps between them pass. */

export const CHARACTER_SPACING = [
  'raised.characterSpacing',
  'raised.characterSpacingInStrokes',
  'raised.characterSpacingAtBase',
  'visual.characterSpacing',
]

/** How far inside of a limit a gap is put, millimetres. */
const INSIDE = 0.05
const MOST_STEPS = 40
const LIVE = 'The characters are live text, or are not drawn as outlines; none of them is moved.'
const NOT_APART = 'The outlines could not be parted into the characters that were read.'
const NO_WINDOW = 'No gap between the characters satisfies all that is asked.'

interface Character {
  contours: Contours
  /** In the frame. */
  outlines: Polyline[]
  left: number
  right: number
}

/** @param window what every gap has to be in, millimetres */
export function gapsSet(
  { sign, written }: Sheet,
  numbers: readonly number[],
  window: { least: number; most: number },
): Rewrite | NotCorrectable {
  const least = window.least + INSIDE
  const most = window.most - INSIDE
  if (least > most) return new NotCorrectable(NO_WINDOW)
  const frame = frameOf(sign)
  const back = fromFrame(frame)
  const dots = brailleContours(sign, written.drawing)
  const moves: Moves = new Map()
  for (const n of numbers)
    for (const line of sign.lettering[n].lines) {
      const { box } = line.place
      const contours = box && contoursWithin(written, box, dots)
      if (!contours || contours.size === 0) return new NotCorrectable(LIVE)
      const characters = charactersOf(contours, frame)
      if (characters.length !== lettersIn(line)) return new NotCorrectable(NOT_APART)
      const painted = strokeAround(characters, sign.lettering[n])
      const ways = waysOf(characters, { least: least + painted, most: most + painted })
      // The line grows to both sides alike, so that it stays where it was centred.
      const half = ways[ways.length - 1] / 2
      characters.forEach((character, i) => addMoves(moves, character.contours, back({ x: ways[i] - half, y: 0 })))
    }
  return moved(written, moves)
}

/** How much a painted stroke takes of each gap: what the gaps were read to be, against the gaps of the outlines alone. */
function strokeAround(characters: readonly Character[], { characterSpacing }: Lettering): number {
  if (!isKnown(characterSpacing)) return 0
  const gaps = characters.slice(1).map((next, i) => distanceBetween(characters[i].outlines, next.outlines).distance)
  const painted = Math.min(...gaps) - (characterSpacing.min ?? characterSpacing.value)
  return painted > 0 && painted < WIDEST_STROKE ? painted : 0
}

/** Millimetres. */
const WIDEST_STROKE = 2

const lettersIn = ({ text }: LetteringLine): number =>
  isKnown(text) ? Array.from(text.value.replace(/\s/gu, '')).length : 0

/** How much of the narrower of two outlines the other has to cover, seen from below, for both to be one character. */
const OVERLAP = 0.5

function charactersOf(contours: Contours, frame: Frame): Character[] {
  const pieces = [...contours].flatMap(([shape, own]) =>
    [...own].map((i): Character => {
      const outline = flatten(shape.contours[i]).map(frame.of)
      const across = outline.map(({ x }) => x)
      return {
        contours: new Map([[shape, new Set([i])]]),
        outlines: [outline],
        left: Math.min(...across),
        right: Math.max(...across),
      }
    }),
  )
  pieces.sort((a, b) => a.left - b.left || b.right - a.right)
  const characters: Character[] = []
  for (const piece of pieces) {
    const last = characters[characters.length - 1]
    const common = last ? Math.min(last.right, piece.right) - piece.left : 0
    if (last && common > OVERLAP * Math.min(last.right - last.left, piece.right - piece.left)) join(last, piece)
    else characters.push(piece)
  }
  return characters
}

function join(into: Character, piece: Character): void {
  for (const [shape, own] of piece.contours)
    into.contours.set(shape, new Set([...(into.contours.get(shape) ?? []), ...own]))
  into.outlines.push(...piece.outlines)
  into.right = Math.max(into.right, piece.right)
}

/** How far each character goes to the right when the first one stays: all gaps by as much where that will do, else each by what it lacks. */
function waysOf(characters: readonly Character[], window: { least: number; most: number }): number[] {
  const pairs = characters.slice(1).map((next, i) => ({ before: characters[i], next }))
  const gaps = pairs.map(({ before, next }) => distanceBetween(before.outlines, next.outlines).distance)
  const [narrowest, widest] = [Math.min(...gaps), Math.max(...gaps.filter((gap) => gap <= window.most), 0)]
  const all = Math.max(0, window.least - narrowest)
  const tracked = widest + all <= window.most && narrowest < window.least
  let way = 0
  return [0, ...pairs.map(({ before, next }, i) => (way += tracked ? all : lacking(before, next, gaps[i], window)))]
}

/** No gap grows faster than a character goes, so that going by what is missing never goes too far. */
function lacking(
  before: Character,
  next: Character,
  gap: number,
  { least, most }: { least: number; most: number },
): number {
  let way = gap > most && gap < WORDS_APART * most ? most - gap : 0
  for (let step = 0; step < MOST_STEPS && gap < least; step++) {
    const there = next.outlines.map((outline) => outline.map(({ x, y }) => ({ x: x + way, y })))
    const missing = least - distanceBetween(before.outlines, there).distance
    if (missing <= 0) break
    way += missing
  }
  return way
}

/** A gap so many times the widest allowed is one between words. */
const WORDS_APART = 1.5

/** What a row and those like it leave for the gaps of a lettering, in millimetres, as its remedy has it. */
export function windowOf(
  { remedy, quantity }: Finding,
  stroke: number | undefined,
): { least: number; most: number } | undefined {
  if (!remedy || remedy.aim === null) return undefined
  const factor = quantity === 'raised.characterSpacing' || remedy.unit === 'mm' ? 1 : stroke
  if (factor === undefined) return undefined
  return { least: (remedy.min ?? 0) * factor, most: (remedy.max ?? Infinity) * factor }
}
