import { unionOfBoxes, type Box } from '../geometry/box.js'
import { boxOfLoops } from '../geometry/loop.js'
import {
  isKnown,
  missing,
  type Lettering,
  type Lie,
  type LetteringLine,
  type LetteringPart,
  type Unknown,
} from '../sign/sign.js'
import { baselineSpacingOf, measureLetters, type LetterMeasures } from './letters/measure.js'
import type { Lie as ReadLie } from './letters/rows.js'
import { isWhollyRecognised, readLines, type Expectation, type OutlinedLine } from './outlinelines.js'
import type { Piece } from './pieces.js'
import { withStrokes } from './strokes.js'
import { textOfLines } from './text.js'
import { UNDRAWN_OF_LETTERING } from './undrawn.js'

/**
 * Outlines read as characters: which of them are lettering, in sets of one size, and which are something else. The reading
 * itself and the measures are those of `letters/`; here they are fitted into the sign.
 */
export interface OutlinedSets {
  sets: OutlinedSet[]
  /** Outlines that are no characters, or none that was recognised. */
  others: Piece[]
  mirrored: boolean
  /** A letter that its shape leaves open was settled by the braille. */
  settledByBraille: boolean
  limitReached: boolean
}

/** Lines of one size; they become one lettering. */
export interface OutlinedSet {
  lines: OutlinedLine[]
  measures: LetterMeasures
  lie: Lie
  pieces: Piece[]
}

/** Lines whose capitals differ in height by less than this share are one set. */
const SAME_SIZE = 0.12
/** Two contours drawn one over the other: their boxes differ by less, in shares of the box. */
const SAME_BOX = 0.005
/** Specks that programs leave behind are smaller than this, millimetres. */
const SPECK = 0.05

/** @param accepts whether a line is lettering; what is not counts among the others */
export function readOutlines(
  pieces: readonly Piece[],
  expectation: Expectation,
  accepts: (line: OutlinedLine) => boolean,
): OutlinedSets {
  const { lines, lie, mirrored, limitReached } = readLines(pieces, expectation)
  const groups: OutlinedLine[][] = []
  for (const line of lines.filter(accepts)) {
    const group = groups.find(([first]) => sameSize(first.read.capital, line.read.capital))
    if (group) group.push(line)
    else groups.push([line])
  }
  const sets = groups.map((group): OutlinedSet => {
    const own = group.flatMap((line) => line.pieces)
    const measures = withStrokes(measured(group, lie), own)
    return { lines: group, measures, lie: { rotation: lie.rotation, mirrored }, pieces: own }
  })
  const used = new Set(groups.flatMap((group) => group.flatMap((line) => line.pieces)))
  const boxes = [...used].map((p) => p.box)
  const others = pieces.filter((p) => !used.has(p) && !isSpeck(p.box) && !boxes.some((box) => sameBox(box, p.box)))
  const settledByBraille = lines.some(({ read }) => read.settledByExpected)
  return { sets, others, mirrored: mirrored && sets.length > 0, settledByBraille, limitReached }
}

/** The measures of a set; lines beside each other on one baseline count once for the distance of baselines. */
function measured(lines: readonly OutlinedLine[], lie: ReadLie): LetterMeasures {
  const read = lines.map((line) => line.read)
  const below = read.filter((line, i) => i === 0 || line.baseline - read[i - 1].baseline > BESIDE * line.capital)
  return { ...measureLetters(read, lie), baselineSpacing: baselineSpacingOf(below) }
}

/** Baselines nearer than this share of the height of capitals are one. */
const BESIDE = 0.3

const sameSize = (a: number, b: number) => Math.abs(a - b) <= SAME_SIZE * Math.max(a, b)

const isSpeck = (box: Box) => Math.max(box.width, box.height) < SPECK

function sameBox(a: Box, b: Box): boolean {
  const slack = SAME_BOX * Math.max(a.width, a.height)
  return (
    Math.abs(a.x - b.x) <= slack &&
    Math.abs(a.y - b.y) <= slack &&
    Math.abs(a.width - b.width) <= slack &&
    Math.abs(a.height - b.height) <= slack
  )
}

const UNSURE: Unknown = { unknown: 'unreadable', why: 'not every character was recognised' }

/** The lettering of a set; colours are filled in by the caller. @param element its place, e.g. `lettering/0` */
export function letteringOfSet({ lines, measures, lie }: OutlinedSet, part: LetteringPart, element: string): Lettering {
  const letteringLines = lines.map((line, i): LetteringLine => {
    const { read, start, pieces } = line
    const corners = pieces.map((p) => p.corners)
    const box = boxOfLoops(corners)
    return {
      place: { element: `${element}/line/${i}`, box, source: pieces[0].shape.source },
      text: read.text,
      baseline: isWhollyRecognised(line) ? { value: start, basis: 'drawn' } : UNSURE,
      outlines: pieces.map((p) => p.outline),
    }
  })
  const sure = lines.every(isWhollyRecognised)
  return {
    place: {
      element,
      box: unionOfBoxes(letteringLines.map((l) => l.place.box)),
      source: letteringLines[0].place.source,
    },
    part,
    text: textOfLines(letteringLines),
    lines: letteringLines,
    ...measures,
    characterSpacing: sure || !isKnown(measures.characterSpacing) ? measures.characterSpacing : UNSURE,
    ...(measures.baselineSpacing && { baselineSpacing: sure ? measures.baselineSpacing : UNSURE }),
    ...UNDRAWN_OF_LETTERING,
    section: missing('a drawing does not say the section of raised characters'),
    colour: { unknown: 'unreadable', why: 'not looked at' },
    background: { unknown: 'unreadable', why: 'not looked at' },
    lie,
  }
}
