import type { Scope } from '../measure/quantity.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import type { Requirement } from '../standards/standard.js'
import type { Use } from '../sign/sign.js'
import type { Judgement, ResolvedLimit } from './finding.js'
import { resolve } from './limits.js'
import { outOfScope } from './scope.js'

/** The rows of a standard made ready once: what does not hang on the single sign is not found again at each check. */

/** A row as it meets signs of one use. */
export interface Row {
  standard: LoadedStandard
  requirement: Requirement
  /** The limit as printed, before exceptions. */
  limit: ResolvedLimit
  /** Which lettering it looks at; the same object for equal scopes. */
  scope: Scope
  /** The judgement of every sign of this use, where nothing puts the row in force for it. */
  outOfScope?: Judgement
}

const ready = new WeakMap<LoadedStandard, Map<Use, Row[]>>()

/** Every row of a standard, in the order of the table. */
export function rowsFor(standard: LoadedStandard, use: Use): Row[] {
  const byUse = ready.get(standard) ?? new Map<Use, Row[]>()
  const before = byUse.get(use)
  if (before) return before
  const rows = standard.requirements.map((requirement) => makeRow(standard, requirement, use))
  byUse.set(use, rows)
  ready.set(standard, byUse)
  return rows
}

function makeRow(standard: LoadedStandard, requirement: Requirement, use: Use): Row {
  const limit = resolve(requirement.limit, requirement.clause, standard.firstUnit)
  const row: Row = { standard, requirement, limit, scope: scopeOf(requirement) }
  const because = outOfScope({ standard, requirement }, { use })
  if (because !== undefined) row.outOfScope = notApplicable(requirement, limit, because)
  return row
}

const scopes = new Map<string, Scope>()

function scopeOf({ scope: { parts, sections } }: Requirement): Scope {
  const key = JSON.stringify([parts, sections])
  const scope = scopes.get(key) ?? { ...(parts && { parts }), ...(sections && { sections }) }
  scopes.set(key, scope)
  return scope
}

/** Reasons kept for each row; most are one of a few sentences. */
const MOST_REASONS = 50

const judged = new WeakMap<Requirement, Map<string, Judgement>>()

/** A row that is not held against a sign. The same reason gives the same object. */
export function notApplicable(requirement: Requirement, limit: ResolvedLimit, because: string): Judgement {
  const known = judged.get(requirement) ?? new Map<string, Judgement>()
  const before = known.get(because)
  if (before?.limit === limit) return before
  const judgement: Judgement = {
    requirement,
    verdict: 'not-applicable',
    reason: null,
    because,
    limit,
    decisive: [],
    gaps: [],
    margin: null,
    unitSplit: null,
  }
  if (known.size >= MOST_REASONS) known.clear()
  known.set(because, judgement)
  judged.set(requirement, known)
  return judgement
}
