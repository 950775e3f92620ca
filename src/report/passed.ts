import type { Judgement } from '../judge/finding.js'
import type { Observation } from '../measure/measurement.js'
import type { Requirement } from '../standards/standard.js'
import type { Found } from './finding.js'

/**
 * What was found of a row that passes, from one sign to the next: the signs of a shop have the same few sizes, and nothing of a
 * pass hangs on which sign it is but its values.
 */

/** Of each row, the last few. */
const MOST_KEPT = 4

interface Passed {
  judgement: Judgement
  /** Made for the second sign with these values: most values of most signs come once. */
  found?: Found
}

const kept = new WeakMap<Requirement, Passed[]>()

/**
 * What `find` gives, or gave of a judgement that is alike. What is kept is frozen with its measured values, since it is shared.
 * @param judgement a pass
 */
export function passedAsBefore(judgement: Judgement, find: () => Found): Found {
  const value = plainValue(judgement)
  if (!value) return find()
  const { requirement } = judgement
  const known = kept.get(requirement) ?? []
  for (const before of known) if (isAlike(before.judgement, judgement, value)) return (before.found ??= frozen(find()))
  if (known.length === 0) kept.set(requirement, known)
  known.unshift({ judgement })
  if (known.length > MOST_KEPT) known.pop()
  return find()
}

function frozen(found: Found): Found {
  Object.freeze(found.measured)
  return Object.freeze(found)
}

/** The one declared value that a judgement rests on. Of others more is told than can be held against each other at a glance. */
function plainValue({ measurement, gaps, unitSplit, decisive }: Judgement): Observation | undefined {
  const [value] = decisive
  if (value?.basis !== 'declared' || value.sample || gaps.length > 0 || unitSplit !== null) return undefined
  return measurement?.observations.length === 1 && measurement.observations[0] === value ? value : undefined
}

function isAlike(before: Judgement, { limit, margin, measurement }: Judgement, b: Observation): boolean {
  const [a] = before.decisive
  return (
    a !== undefined &&
    a.value === b.value &&
    before.limit === limit &&
    before.margin === margin &&
    a.remark === b.remark &&
    a.min === b.min &&
    a.max === b.max &&
    a.count === b.count &&
    a.uncertainty === b.uncertainty &&
    a.instrument === b.instrument &&
    a.between === b.between &&
    before.measurement?.method === measurement?.method
  )
}
