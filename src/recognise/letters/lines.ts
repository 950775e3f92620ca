import type { Box } from '../../geometry/box.js'
import { medianOf } from '../../geometry/fit.js'
import { apply } from '../../geometry/matrix.js'
import type { Blob } from './blobs.js'
import { isDigit, isLetter } from './characters.js'
import { settleByExpected, settleByWord } from './context.js'
import { decide, isOpen, UNRECOGNISED, type Decision } from './decide.js'
import type { ReadCharacter, ReadLine } from './read.js'
import type { ReadRow } from './readrow.js'
import { viewBack, type Lie, type Part } from './rows.js'
import { textOf } from './text.js'
import { spacesIn, type Spacing } from './words.js'

/** From rows of characters to lines of text: sizes compared between rows, spaces, and what the words settle. */

/** Something so much higher than the capitals of its row is none of its characters. */
const MOST_HEIGHT = 1.6
/** Rows are of one size when their capitals differ by no more than this share. */
const ONE_SIZE = 0.03

/** Fewer characters than this have no company that would make them letters: they must look the more like some. */
const COMPANY = 3
const MOST_UNLIKE_ALONE = 6

interface Sized {
  parts: Part[]
  decisions: Decision[]
  capital: number
  baseline: number
}

export function linesOf(
  rows: readonly ReadRow[],
  blobs: readonly Blob[],
  lie: Lie,
  expected: readonly string[],
): ReadLine[] {
  const alone = rows.reduce((n, r) => n + r.parts.length, 0) < COMPANY
  const sized = sizedByOthers(rows).flatMap(({ parts, fits, decisions }): Sized[] => {
    const scale = fits.at(0)?.scale
    if (!scale) return []
    const kept = parts.map((_, i) => i).filter((i) => parts[i].box.height <= MOST_HEIGHT * scale.height)
    const own = kept.map((i) => (alone && decisions[i].distance > MOST_UNLIKE_ALONE ? UNRECOGNISED : decisions[i]))
    if (!own.some((d) => d.readings.some((r) => isLetter(r) || isDigit(r)))) return []
    return [{ parts: kept.map((i) => parts[i]), decisions: own, capital: scale.height, baseline: scale.baseline }]
  })
  const taken = new Set(sized.flatMap((s) => s.parts))
  const left = rows.flatMap((r) => r.parts).filter((p) => !taken.has(p))
  const spacings = spacesIn(sized.map((s) => ({ ...s, ones: s.decisions.map((d) => d.readings.includes('1')) })))
  return sized.map((line, i) => {
    const read = lineOf(line, spacings[i], blobs, lie, expected)
    const crowded = 'value' in read.text && left.some((p) => isNear(p.box, line))
    return crowded ? { ...read, text: CROWDED } : read
  })
}

const CROWDED = { unknown: 'unreadable' as const, why: 'a shape that is not recognised stands among the characters' }
/** What lies this near to a line may belong to its text: shares of the height of the capitals. */
const NEARBY = 0.3

function isNear(box: Box, { parts, capital, baseline }: Sized): boolean {
  const reach = NEARBY * capital
  const first = parts[0].box
  const last = parts[parts.length - 1].box
  return (
    box.y <= baseline + reach &&
    box.y + box.height >= baseline - capital - reach &&
    box.x <= last.x + last.width + reach &&
    box.x + box.width >= first.x - reach
  )
}

/** Rows that can be read in two sizes, read in the size of another row that leaves no choice. */
function sizedByOthers(rows: readonly ReadRow[]): ReadRow[] {
  const sure = rows.filter((r) => r.fits.length > 0 && !isOpen(r.fits)).map((r) => r.fits[0].scale.height)
  return rows.map((row) => {
    if (!isOpen(row.fits)) return row
    const fits = row.fits.filter((f) => sure.some((s) => Math.abs(s / f.scale.height - 1) <= ONE_SIZE))
    return fits.length > 0 ? { ...row, fits, decisions: decide(fits) } : row
  })
}

function lineOf(
  { parts, decisions, capital, baseline }: Sized,
  spacing: Spacing,
  blobs: readonly Blob[],
  lie: Lie,
  expected: readonly string[],
): ReadLine {
  const words: Decision[][] = []
  decisions.forEach((decision, i) => {
    if (i === 0 || spacing.spaces[i - 1] === true) words.push([])
    words[words.length - 1].push(decision)
  })
  let settledByExpected = false
  const settled = words.flatMap((word) => {
    const own = settleByWord(word, decisions)
    if (own.every((d) => d.readings.length === 1)) return own
    const byExpected = settleByExpected(own, expected)
    if (byExpected) settledByExpected = true
    return byExpected ?? own
  })
  const characters = settled.map((decision, i): ReadCharacter => ({
    ...decision,
    part: parts[i],
    outlines: parts[i].blobs.flatMap((b) => blobs[b].members),
  }))
  return {
    text: textOf(settled, spacing),
    settledByExpected,
    characters,
    spacing,
    capital,
    baseline: drawnBaseline(characters) ?? baseline,
    start: apply(viewBack(lie), { x: parts[0].box.x, y: drawnBaseline(characters) ?? baseline }),
    outlines: characters.flatMap((c) => c.outlines),
  }
}

/** Characters whose feet stand flat on the baseline in ordinary faces. */
const FLAT_FEET = 'AEFHIKLMNPRTXYZfhiklmnrxz1247'

/** Where the flat feet of the characters stand; undefined when none has any. */
function drawnBaseline(characters: readonly ReadCharacter[]): number | undefined {
  const feet = characters
    .filter((c) => c.readings.length === 1 && FLAT_FEET.includes(c.readings[0]))
    .map((c) => c.part.box.y + c.part.box.height)
  return feet.length > 0 ? medianOf(feet) : undefined
}
