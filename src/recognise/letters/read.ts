import type { Point } from '../../geometry/point.js'
import type { Fact } from '../../sign/sign.js'
import { blobsOf, type Blob, type LetterOutline } from './blobs.js'
import type { Decision } from './decide.js'
import { liesOf } from './direction.js'
import { linesOf } from './lines.js'
import { readRow, type ReadRow } from './readrow.js'
import { rowsOf, type Lie, type Part } from './rows.js'
import type { Spacing } from './words.js'

/** What a set of outlines says, read from shape alone. */
export interface LetteringReading {
  lie: Lie
  lines: ReadLine[]
  /** Indices of outlines that are no characters, or were not looked at. */
  others: number[]
  /** There were more outlines than are looked at: nothing was read. */
  limitReached: boolean
}

export interface ReadLine {
  text: Fact<string>
  /** A letter that shape leaves open was settled by what the sign says elsewhere. */
  settledByExpected: boolean
  characters: ReadCharacter[]
  spacing: Spacing
  /** Height of the capitals and place of the baseline as the whole line fits them; millimetres in the reader's view. */
  capital: number
  baseline: number
  /** Left end of the baseline, in the drawing. */
  start: Point
  outlines: number[]
}

export interface ReadCharacter extends Decision {
  part: Part
  /** Which of the given outlines it is made of. */
  outlines: number[]
}

export interface ReadLettersOptions {
  /** Reading direction in degrees clockwise as seen, when something else on the sign tells it. */
  rotation?: number
  /** Words that the sign says elsewhere; they only settle what shapes cannot (O and 0, I and l). */
  expected?: readonly string[]
}

/** More outlines than this are no lettering of a sign. */
export const MOST_OUTLINES = 2000
/** A direction in which this share of all characters is read needs no comparison with others. */
const NEARLY_ALL = 0.85

/**
 * Reads outlined letters: A–Z, a–z, 0–9 and common punctuation, in any direction, upright or slanted.
 * @param outlines closed contours, in millimetres
 */
export function readLetters(outlines: readonly LetterOutline[], options: ReadLettersOptions = {}): LetteringReading {
  const all = outlines.map((_, i) => i)
  const nothing = { lie: { rotation: options.rotation ?? 0, slant: 0 }, lines: [], others: all, limitReached: false }
  if (outlines.length > MOST_OUTLINES) return { ...nothing, limitReached: true }
  const blobs = blobsOf(outlines)
  if (blobs.length === 0) return nothing
  let best: Attempt | undefined
  for (const lie of liesOf(outlines, options.rotation)) {
    const attempt = readAlong(blobs, lie)
    if (!best || attempt.quality > best.quality + preference(best.lie, lie)) best = attempt
    if (best.quality >= NEARLY_ALL) break
  }
  return best ? finished(best, blobs, all, options.expected ?? []) : nothing
}

/** Another direction is believed only when it reads so much more; another slant, when it reads more at all. Shares of the characters. */
const CLEARLY_MORE = 0.2

const preference = (before: Lie, after: Lie): number => (before.rotation === after.rotation ? 0 : CLEARLY_MORE)

interface Attempt {
  lie: Lie
  rows: ReadRow[]
  /** The share of characters that look like some. */
  quality: number
}

function readAlong(blobs: readonly Blob[], lie: Lie): Attempt {
  const rows = rowsOf(blobs, lie).map(readRow)
  const decisions = rows.flatMap((r) => r.decisions)
  const sure = decisions.filter((d) => d.readings.length > 0).length
  return { lie, rows, quality: sure / decisions.length }
}

function finished(
  { lie, rows }: Attempt,
  blobs: readonly Blob[],
  all: number[],
  expected: readonly string[],
): LetteringReading {
  const lines = linesOf(rows, blobs, lie, expected)
  const used = new Set(lines.flatMap((line) => line.outlines))
  return { lie, lines, others: all.filter((i) => !used.has(i)), limitReached: false }
}
