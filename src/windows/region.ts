import type { MeasureUnit } from '../measure/measurement.js'
import { isEmpty, meet, type Ends } from './ends.js'
import type { RowInForce } from './in-force.js'

/** What satisfies all rows of one quantity: an interval, a set of kinds, or a plain yes. */

export type Region =
  | { unit: Exclude<MeasureUnit, 'kind' | 'truth'>; ends: Ends }
  | { unit: 'kind'; kinds: string[]; judgement: string[] }
  | { unit: 'truth' }

/** Undefined: nothing satisfies them all. */
export function regionOf(rows: readonly RowInForce[]): Region | undefined {
  const [first] = rows
  if (!first) return undefined
  const { unit } = first.limit
  if (unit === 'truth') return { unit }
  if (unit === 'kind') return kindsOf(rows)
  const ends = rows.map(({ limit: { min, max } }): Ends => ({ min, max })).reduce(meet)
  return isEmpty(ends) ? undefined : { unit, ends }
}

/** Kinds that pass every row and, beside them, those that fail none but that a person has to judge for some. */
function kindsOf(rows: readonly RowInForce[]): Region | undefined {
  const sets = rows.map(({ row, limit }) => ({
    pass: limit.pass ?? [],
    judged: row.limit.kind === 'one-of' ? row.limit.judgement : [],
  }))
  const all = [...new Set(sets.flatMap(({ pass, judged }) => [...pass, ...judged]))]
  const kinds = all.filter((kind) => sets.every(({ pass }) => pass.includes(kind)))
  const possible = all.filter((kind) => sets.every(({ pass, judged }) => pass.includes(kind) || judged.includes(kind)))
  if (possible.length === 0) return undefined
  return { unit: 'kind', kinds, judgement: possible.filter((kind) => !kinds.includes(kind)) }
}
