import type { Point } from '../../geometry/point.js'
import type { Fact } from '../../sign/sign.js'
import { blobsOf, type Blob, type LetterOutline } from './blobs.js'
import { isDigit, isLetter } from './characters.js'
import { decide, settleByExpected, settleByWord, type Decision } from './decide.js'
import { liesOf } from './direction.js'
import { fitLine, type FittedLine } from './fit.js'
import { lookAt, type Look } from './look.js'
import { joined, rowsOf, viewBack, type Lie, type Part, type Row } from './rows.js'
import { textOf } from './text.js'
import { spacesIn, type Spacing } from './words.js'

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
/** Something so much higher than the capitals of its row is none of its characters. */
const MOST_HEIGHT = 1.6

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
    if (!best || attempt.quality > best.quality) best = attempt
    if (best.quality >= NEARLY_ALL) break
  }
  return best ? finished(best, blobs, all, options.expected ?? []) : nothing
}

interface Attempt {
  lie: Lie
  rows: ReadRow[]
  /** The share of characters that are read without doubt. */
  quality: number
}

interface ReadRow {
  row: Row
  fits: FittedLine[]
  decisions: Decision[]
}

function readAlong(blobs: readonly Blob[], lie: Lie): Attempt {
  const rows = rowsOf(blobs, lie).map(readRow)
  const decisions = rows.flatMap((r) => r.decisions)
  const sure = decisions.filter((d) => d.readings.length > 0).length
  return { lie, rows, quality: sure / blobs.length }
}

function readRow(parts: Row): ReadRow {
  const seen = withPercents(parts.map((part) => ({ part, look: lookAt(part.ink) })))
  const looked = seen.filter((s): s is { part: Part; look: Look } => s.look !== undefined)
  const fits = fitLine(looked.map((s) => s.look))
  const row = looked.map((s) => s.part)
  return { row, fits, decisions: fits.length > 0 ? decide(fits) : row.map(() => ({ readings: [], confidence: 0 })) }
}

/** A per cent sign has three pieces, which alone look like others: put together where that looks like one. */
function withPercents(seen: { part: Part; look?: Look }[]): { part: Part; look?: Look }[] {
  const result: { part: Part; look?: Look }[] = []
  for (let i = 0; i < seen.length; i++) {
    const three = seen.slice(i, i + 3)
    const [left, bar, right] = three.map((s) => s.part.box)
    const together = three.length === 3 && left.height < bar.height && right.height < bar.height && left.y < right.y
    if (together && right.x - (left.x + left.width) < bar.width) {
      const part = joined(three.map((s) => s.part))
      const look = lookAt(part.ink)
      if (look && look.likenesses[0].label === '%' && look.likenesses[0].distance < PERCENT_DISTANCE) {
        result.push({ part, look })
        i += 2
        continue
      }
    }
    result.push(seen[i])
  }
  return result
}

const PERCENT_DISTANCE = 14

function finished(
  attempt: Attempt,
  blobs: readonly Blob[],
  all: number[],
  expected: readonly string[],
): LetteringReading {
  const lines = attempt.rows.flatMap((row) => lineOf(row, blobs, attempt.lie, expected))
  const used = new Set(lines.flatMap((line) => line.outlines))
  return { lie: attempt.lie, lines, others: all.filter((i) => !used.has(i)), limitReached: false }
}

function lineOf(
  { row, fits, decisions }: ReadRow,
  blobs: readonly Blob[],
  lie: Lie,
  expected: readonly string[],
): ReadLine[] {
  const scale = fits.at(0)?.scale
  if (!scale) return []
  const kept = row.map((_, i) => i).filter((i) => row[i].box.height <= MOST_HEIGHT * scale.height)
  const parts = kept.map((i) => row[i])
  const spacing = spacesIn(parts, scale.height)
  const words: Decision[][] = [[]]
  kept.forEach((i, n) => {
    if (n > 0 && spacing.spaces[n - 1] === true) words.push([])
    words[words.length - 1].push(decisions[i])
  })
  let settledByExpected = false
  const whole = words.flat()
  const settled = words.flatMap((word) => {
    const own = settleByWord(word, whole)
    if (own.every((d) => d.readings.length === 1)) return own
    const byExpected = settleByExpected(own, expected)
    if (byExpected) settledByExpected = true
    return byExpected ?? own
  })
  if (!settled.some((d) => d.readings.some((r) => isLetter(r) || isDigit(r)))) return []
  const characters = settled.map((decision, n): ReadCharacter => ({
    ...decision,
    part: parts[n],
    outlines: parts[n].blobs.flatMap((b) => blobs[b].members),
  }))
  const left = parts[0].box.x
  return [
    {
      text: textOf(settled, spacing),
      settledByExpected,
      characters,
      spacing,
      capital: scale.height,
      baseline: scale.baseline,
      start: viewBack(lie)({ x: left, y: scale.baseline }),
      outlines: characters.flatMap((c) => c.outlines),
    },
  ]
}
