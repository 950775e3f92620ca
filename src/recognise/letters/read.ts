import type { Point } from '../../geometry/point.js'
import type { Fact } from '../../sign/sign.js'
import { bestAttempt, doubtOf } from './attempt.js'
import { blobsOf, type LetterOutline } from './blobs.js'
import type { Decision } from './decide.js'
import { liesOf } from './direction.js'
import { linesOf } from './lines.js'
import type { Lie, Part } from './rows.js'
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
  /** Whether the sign is drawn for reading from the other side, as its braille tells. */
  mirrored?: boolean
  /** Words that the sign says elsewhere; they only settle what shapes cannot (O and 0, I and l). */
  expected?: readonly string[]
}

/** More outlines than this are no lettering of a sign. */
export const MOST_OUTLINES = 1000

/**
 * Reads outlined letters: A–Z, a–z, 0–9 and common punctuation, in any direction, upright or slanted.
 * @param outlines closed contours, in millimetres
 */
export function readLetters(outlines: readonly LetterOutline[], options: ReadLettersOptions = {}): LetteringReading {
  const { rotation, mirrored = false, expected = [] } = options
  const all = outlines.map((_, i) => i)
  const nothing = { lie: { rotation: rotation ?? 0, slant: 0, mirrored }, lines: [], others: all, limitReached: false }
  if (outlines.length > MOST_OUTLINES) return { ...nothing, limitReached: true }
  const blobs = blobsOf(outlines)
  if (blobs.length === 0) return nothing
  const lies = liesOf(outlines, rotation, mirrored)
  const best = bestAttempt(blobs, lies)
  const lines = linesOf(best.rows, blobs, best.lie, expected)
  const used = new Set(lines.flatMap((line) => line.outlines))
  const doubt = doubtOf(best, blobs, rotation)
  return {
    lie: best.lie,
    lines: doubt ? lines.map((line) => ({ ...line, text: { unknown: 'unreadable', why: doubt } })) : lines,
    others: all.filter((i) => !used.has(i)),
    limitReached: false,
  }
}
