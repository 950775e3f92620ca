import { boxOfPoints, unionOfBoxes, type Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'
import { isKnown, missing, type Lettering, type LetteringLine, type LetteringPart, type Unknown } from '../sign/sign.js'
import type { LetterOutline } from './letters/blobs.js'
import { measureLetters, type LetterMeasures } from './letters/measure.js'
import { readLetters, type LetteringReading, type ReadCharacter, type ReadLine } from './letters/read.js'
import type { Piece } from './pieces.js'
import { withStrokes } from './strokes.js'
import { textOfLines } from './text.js'

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
  pieces: Piece[]
}

interface OutlinedLine {
  read: ReadLine
  /** Left end of the baseline, in the drawing. */
  start: Point
  pieces: Piece[]
}

export interface Expectation {
  /** Reading direction of the braille, if there is any. */
  rotation?: number
  mirrored: boolean
  /** Words of the braille. */
  words: readonly string[]
}

/** Lines whose capitals differ in height by less than this share are one set. */
const SAME_SIZE = 0.12
/** Fewer recognised characters than this share: perhaps the drawing is seen from behind. */
const HARDLY_READ = 0.5
/** Two contours drawn one over the other: their boxes differ by less, in shares of the box. */
const SAME_BOX = 0.005
/** Specks that programs leave behind are smaller than this, millimetres. */
const SPECK = 0.05

export function readOutlines(pieces: readonly Piece[], expectation: Expectation): OutlinedSets {
  const readable = pieces.filter(isReadable)
  if (readable.reduce((n, { outline }) => n + outline.length, 0) > MOST_CORNERS_IN_ALL)
    return { sets: [], others: [...pieces], mirrored: false, settledByBraille: false, limitReached: true }
  const attempts: Attempt[] = []
  for (const mirrored of [expectation.mirrored, !expectation.mirrored]) {
    const attempt = readOnce(readable, expectation, mirrored)
    attempts.push(attempt)
    if (attempt.reading.limitReached || attempt.recognised >= HARDLY_READ * readable.length) break
  }
  const best = attempts.reduce((a, b) => (b.recognised > a.recognised ? b : a))
  return arranged(pieces, readable, best)
}

interface Attempt {
  reading: LetteringReading
  mirrored: boolean
  /** Outlines of characters that were recognised. */
  recognised: number
}

/** Corners of one outline, curves flattened, that are looked at: a traced letter has some hundreds. */
const MOST_CORNERS = 5000
/** Corners of all outlines together: more are no lettering of a sign. */
const MOST_CORNERS_IN_ALL = 150_000

/** A contour that bounds an area; lines that end somewhere do not. */
const isReadable = ({ contour, shape, outline }: Piece): boolean =>
  outline.length > 2 &&
  outline.length <= MOST_CORNERS &&
  (contour.closed || (shape.fill !== undefined && shape.fill.opacity > 0))

const flipped = ({ x, y }: Point): Point => ({ x: -x, y })

function readOnce(pieces: readonly Piece[], { rotation, words }: Expectation, mirrored: boolean): Attempt {
  const outlines = pieces.map(({ outline, order, shape }): LetterOutline => {
    const painted = shape.fill !== undefined && shape.fill.opacity > 0
    return {
      outline: mirrored ? outline.map(flipped) : outline,
      path: order,
      rule: shape.fillRule,
      ...(painted && { fill: shape.fill?.written }),
    }
  })
  const direction = rotation !== undefined && mirrored ? 180 - rotation : rotation
  const reading = readLetters(outlines, { rotation: direction, expected: words })
  const characters = reading.lines.flatMap((line) => line.characters.filter(isRecognised))
  return { reading, mirrored, recognised: characters.reduce((sum, c) => sum + c.outlines.length, 0) }
}

export const isRecognised = ({ readings }: Pick<ReadCharacter, 'readings'>): boolean => readings.length > 0

function arranged(all: readonly Piece[], readable: readonly Piece[], { reading, mirrored }: Attempt): OutlinedSets {
  const lines = reading.lines.map((read): OutlinedLine => ({
    read,
    start: mirrored ? flipped(read.start) : read.start,
    pieces: read.outlines.map((i) => readable[i]),
  }))
  const groups: OutlinedLine[][] = []
  for (const line of lines) {
    const group = groups.find(([first]) => sameSize(first.read.capital, line.read.capital))
    if (group) group.push(line)
    else groups.push([line])
  }
  const sets = groups.map((group): OutlinedSet => {
    const measures = measureLetters(
      group.map((line) => line.read),
      reading.lie,
    )
    const own = group.flatMap((line) => line.pieces)
    return { lines: group, measures: withStrokes(measures, own), pieces: own }
  })
  const used = new Set(lines.flatMap((line) => line.pieces))
  const others = all.filter((p) => !used.has(p) && !isSpeck(p.box) && ![...used].some((u) => sameBox(u.box, p.box)))
  return {
    sets,
    others,
    mirrored: mirrored && sets.length > 0,
    settledByBraille: reading.lines.some((line) => line.settledByExpected),
    limitReached: reading.limitReached,
  }
}

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
export function letteringOfSet({ lines, measures }: OutlinedSet, part: LetteringPart, element: string): Lettering {
  const letteringLines = lines.map(({ read, start, pieces }, i): LetteringLine => {
    const outlines = pieces.map((p) => p.outline)
    const box = boxOfPoints(outlines.flat())
    return {
      place: { element: `${element}/line/${i}`, box, source: pieces[0].shape.source },
      text: read.text,
      baseline: read.characters.every(isRecognised) ? { value: start, basis: 'drawn' } : UNSURE,
      outlines,
    }
  })
  const sure = lines.every(({ read }) => read.characters.every(isRecognised))
  const section = missing('a drawing does not say the section of raised characters')
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
    relief: missing('a drawing does not say how high characters are raised'),
    section,
    characterSpacingAtBase: section,
    finish: missing('a drawing does not say the finish'),
    colour: { unknown: 'unreadable', why: 'not looked at' },
    background: { unknown: 'unreadable', why: 'not looked at' },
  }
}
