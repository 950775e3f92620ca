import { noneSatisfies, onlyTheSame } from '../../report/excluding-words.js'
import { wordsFor } from '../../report/quantities.js'
import type { Exclusion } from '../../refusal.js'
import type { Common } from '../../windows/common.js'
import type { Conflict } from '../../windows/window.js'
import { cannotSatisfy } from './cannot.js'
import type { Wanted } from './wanted.js'

/**
 * Requirements on the drawing that exclude each other before there is one. What only the product or the site shows is no hindrance.
 * @returns those that ask for opposite things, which a text may satisfy that comes out the same either way
 * @throws {Refusal} `cannot-satisfy` when others exclude each other
 */
export function excludingOf({ conflicts }: Common): Exclusion[] {
  const ofDrawing = conflicts.filter(({ rows }) => rows.every(({ row }) => row.stage === 'drawing'))
  const told = ofDrawing.map(exclusion)
  if (ofDrawing.some(({ why }) => why !== 'opposite'))
    throw cannotSatisfy('The standards exclude each other: no drawing satisfies them all.', told)
  return told
}

/** Braille below the text is no farther from it than from its baseline. */
export function gapAgainstClearance(wanted: Wanted): Exclusion[] {
  const { max = Infinity } = wanted.ends('braille.textGap')
  const { min = 0 } = wanted.ends('braille.characterClearance')
  if (max >= min) return []
  const rows = wanted.requirements(['braille.textGap', 'braille.characterClearance'])
  const parties = rows.map(({ standard, limit }) => `${standard.id} ${limit.clause} (${limit.printed})`)
  const text = `Braille below the text is no farther from it than from its baseline, so that these exclude each other: ${parties.join('; ')}.`
  return [{ quantity: 'braille.textGap', requirements: rows.map(({ row }) => row.requirement), text }]
}

function exclusion({ quantities: [quantity = ''], rows, why }: Conflict): Exclusion {
  const parties = rows.map(({ standard, limit }) => ({
    standard: standard.id,
    clause: limit.clause,
    printed: limit.printed,
  }))
  const text = why === 'opposite' ? onlyTheSame(parties) : noneSatisfies(wordsFor(quantity).name, parties)
  return { quantity, requirements: rows.map(({ row }) => row.requirement), text }
}
