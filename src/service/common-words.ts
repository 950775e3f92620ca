import { noneSatisfies, onlyTheSame } from '../report/excluding-words.js'
import { wordsFor } from '../report/quantities.js'
import type { ConditionalRow, RowInForce } from '../windows/in-force.js'
import type { Conflict } from '../windows/window.js'

/** The sentences of an answer on common windows. */

const named = ({ standard, limit }: RowInForce) => ({
  standard: standard.id,
  clause: limit.clause,
  printed: limit.printed,
})

const NAMES: Partial<Record<Conflict['why'], string>> = { dome: 'base diameter and height of a dot' }

/** @param conditional the rows that are open: an exception among them may still reconcile what excludes each other */
export function conflictText({ quantities, rows, why }: Conflict, conditional: readonly ConditionalRow[]): string {
  const parties = rows.map(named)
  const name = NAMES[why] ?? wordsFor(quantities[0] ?? '').name
  const relaxed = conditional.filter(({ isException, row }) => isException && rows.some((r) => r.row === row))
  return [
    why === 'opposite' ? onlyTheSame(parties) : noneSatisfies(name, parties),
    ...rows
      .filter(({ limit }) => limit.kind === 'nominal')
      .map(
        ({ standard }) =>
          `${standard.id} prints its figure without a tolerance; a person may still allow a difference.`,
      ),
    ...relaxed.map(({ standard, clause, when }) => `${standard.id} ${clause} may relax it (${when.join(', ')}).`),
  ].join(' ')
}

export function conditionalText({ row, when, clause, isException }: ConditionalRow): string {
  const hangs = `depending on the sign (${when.join(', ')})`
  return isException ? `${clause} may relax this, ${hangs}.` : `${row.title}: asked or not, ${hangs}.`
}
