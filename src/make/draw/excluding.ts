import { noneSatisfies, onlyTheSame } from '../../report/excluding-words.js'
import { wordsFor } from '../../report/quantities.js'
import type { Exclusion } from '../../refusal.js'
import type { Common } from '../../windows/common.js'
import type { Conflict } from '../../windows/window.js'
import { cannotSatisfy } from './cannot.js'

/** Requirements on the drawing that exclude each other before there is one. What only the product or the site shows is no hindrance. */
export function refuseExcluding({ conflicts }: Common): void {
  const ofDrawing = conflicts.filter(({ rows }) => rows.every(({ row }) => row.stage === 'drawing'))
  if (ofDrawing.length === 0) return
  const told = ofDrawing.map(exclusion)
  throw cannotSatisfy('The standards exclude each other: no drawing satisfies them all.', told)
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
