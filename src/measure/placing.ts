import { isKnown, type BrailleBlock, type BrailleLine, type Lettering, type Place, type Unknown } from '../sign/sign.js'
import { gapOf, pointerOf, type Ask } from './facts.js'
import { QUESTIONS } from './lettering.js'
import type { Gap } from './measurement.js'

/** The questions that place characters and braille on the panel: for where they begin, or for the spacing that is missing. */

export const PLACING = {
  baseline: 'Where is the baseline of the first line?',
  baselineSpacing: QUESTIONS.baselineSpacing,
  characterHeight: QUESTIONS.characterHeight,
  origin: 'Where is the centre of dot 1 of the first cell?',
  dotSpacing: 'How far apart are neighbouring dots of one cell, centre to centre?',
  cellSpacing: 'How far apart are neighbouring cells, from a dot to the same dot of the next cell?',
  lineSpacing: 'How far apart are the braille lines, from a dot to the same dot of the line below?',
} as const

type List = 'lettering' | 'braille'

const askFor = (key: keyof typeof PLACING, place: Place, list: List, n: number): Ask => ({
  pointer: pointerOf(place, list, n, key),
  ask: PLACING[key],
  unit: 'mm',
})

/** The question about a baseline that is not known: for the spacing where that is what is missing. */
export const baselineAsk = (unknown: Unknown | undefined, place: Place, list: List, n: number): Ask =>
  askFor(unknown?.key ?? (list === 'braille' ? 'origin' : 'baseline'), place, list, n)

/** The question about characters whose lines are not all known to be somewhere. */
export function placeAsk({ lines, place, characterHeight }: Lettering, n: number): Ask {
  const unknown = lines.map(({ baseline }) => baseline).find((baseline) => !isKnown(baseline))
  if (unknown && !isKnown(unknown)) return baselineAsk(unknown, place, 'lettering', n)
  const key = lines.length > 0 && !isKnown(characterHeight) ? 'characterHeight' : 'baseline'
  return askFor(key, place, 'lettering', n)
}

const NOT_PLACED: Unknown = { unknown: 'missing-fact', why: 'the place of the braille is not given' }

/** Why a line of braille has no dots, and what would give it some. */
export function noDots(line: BrailleLine | undefined, block: BrailleBlock, n: number): Gap {
  const { place, cellSpacing } = block
  if (line && !isKnown(line.cells)) {
    const ask = { pointer: pointerOf(place, 'braille', n, 'text'), ask: 'What does the braille say?' }
    return gapOf(line.cells, place, line.cells.unknown === 'missing-fact' ? ask : undefined)
  }
  if (line && !isKnown(line.baseline))
    return gapOf(line.baseline, place, baselineAsk(line.baseline, place, 'braille', n))
  if (line && !isKnown(cellSpacing)) return gapOf(cellSpacing, place, askFor('cellSpacing', place, 'braille', n))
  return gapOf(NOT_PLACED, place, askFor('origin', place, 'braille', n))
}
