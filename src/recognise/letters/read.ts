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
  /** Whether the sign is drawn for reading from the other side, as its braille tells. */
  mirrored?: boolean
  /** Words that the sign says elsewhere; they only settle what shapes cannot (O and 0, I and l). */
  expected?: readonly string[]
}

/** More outlines than this are no lettering of a sign. */
export const MOST_OUTLINES = 2000
/** A direction in which the characters look so much like some needs no comparison with others. */
const GOOD = 0.85
/** The distance from the nearest reference at which a character counts half. */
const HALF_AS_GOOD = 12

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
  let best: Attempt | undefined
  for (const lie of liesOf(outlines, rotation, mirrored)) {
    const attempt = readAlong(blobs, lie)
    if (!best || attempt.quality > best.quality + preference(best.lie, lie)) best = attempt
    if (best.quality >= GOOD) break
  }
  if (!best) return nothing
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

/** Why the direction or the side is in doubt, if it is: neither was told nor is the drawing's own, and another reads as well. */
function doubtOf({ lie, quality }: Attempt, blobs: readonly Blob[], hint: number | undefined): string | undefined {
  const turn = Math.abs(((lie.rotation - (hint ?? 0) + 540) % 360) - 180)
  const qualityOf = (other: Partial<Lie>) => readAlong(blobs, { ...lie, ...other }).quality
  if (turn > QUARTER / 2 && qualityOf({ rotation: (lie.rotation + 2 * QUARTER) % 360 }) > quality - CLEARLY_MORE)
    return 'the characters can be read either way up'
  const behind = { rotation: (lie.rotation + 2 * QUARTER) % 360, slant: -lie.slant, mirrored: !lie.mirrored }
  if (hint === undefined && quality < BEYOND_DOUBT && qualityOf(behind) > quality + BETTER)
    return 'the characters read better from the other side'
  return undefined
}

/** Characters that look so much like some are not mirrored ones; a little better is better when all else is equal. */
const BEYOND_DOUBT = 0.97
const BETTER = 0.02
const QUARTER = 90

/** Another direction is believed only when it reads so much better; another slant, when it reads better at all. */
const CLEARLY_MORE = 0.12

const preference = (before: Lie, after: Lie): number => (before.rotation === after.rotation ? 0 : CLEARLY_MORE)

interface Attempt {
  lie: Lie
  rows: ReadRow[]
  /** How much the characters look like some on average: one for exactly like a reference, none for unrecognised. */
  quality: number
}

function readAlong(blobs: readonly Blob[], lie: Lie): Attempt {
  const rows = rowsOf(blobs, lie).map(readRow)
  const decisions = rows.flatMap((r) => r.decisions)
  const likeness = decisions.reduce((sum, d) => sum + 1 / (1 + (d.distance / HALF_AS_GOOD) ** 2), 0)
  return { lie, rows, quality: likeness / Math.max(decisions.length, 1) }
}
