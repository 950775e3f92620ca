import { Refusal, type Exclusion } from '../../refusal.js'
import type { Wanted } from './wanted.js'

/** Why no drawing is made. */

export function cannotSatisfy(detail: string, conflicts: Exclusion[]): Refusal {
  const errors = conflicts.map(({ text }) => ({ detail: text }))
  return new Refusal('cannot-satisfy', detail, errors, undefined, conflicts)
}

/** A quantity that cannot be met, with the rows that ask for it. */
export const exclusionOf = (quantity: string, text: string, wanted: Wanted, quantities = [quantity]): Exclusion => ({
  quantity,
  requirements: wanted.requirements(quantities).map(({ row }) => row.requirement),
  text,
})
