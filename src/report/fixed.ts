import type { ResolvedLimit } from '../judge/finding.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import type { Requirement } from '../standards/standard.js'
import type { Finding } from './finding-schema.js'
import { kept } from './numbers.js'
import type { Report } from './schema.js'

/** What a standard itself puts into a report: the same in every report, so it is made once, and frozen, since it is shared. */

/** The part of a finding that says what is asked; it hangs on the row and on the limit in force. */
export type Asked = Pick<
  Finding,
  'requirement' | 'clause' | 'title' | 'asks' | 'force' | 'stage' | 'quantity' | 'limit' | 'citation'
>

/** Limits that hang on the place of the single sign. */
const WORKED_OUT = new Set<ResolvedLimit['kind']>(['by-viewing-distance', 'distance-share', 'distance-steps'])

interface AskedOnce {
  standard: LoadedStandard
  requirement: Requirement
  asked: Asked
}

/** A limit in force is one of one row. */
const known = new WeakMap<ResolvedLimit, AskedOnce>()

/**
 * What a row asks, with the limit in force. The same row and limit give the same frozen object; a limit that is worked out for
 * each sign is not kept.
 */
export function askedBy(standard: LoadedStandard, requirement: Requirement, limit: ResolvedLimit): Asked {
  if (WORKED_OUT.has(limit.kind)) return ask(standard, requirement, limit)
  const before = known.get(limit)
  if (before?.standard === standard && before.requirement === requirement) return before.asked
  const asked = frozen(ask(standard, requirement, limit))
  known.set(limit, { standard, requirement, asked })
  return asked
}

function frozen(made: Asked): Asked {
  Object.freeze(made.limit)
  Object.freeze(made.citation)
  return Object.freeze(made)
}

function ask(standard: LoadedStandard, row: Requirement, limit: ResolvedLimit): Asked {
  const { requirement, clause, title, force, stage, quantity, citation } = row
  return {
    requirement,
    clause,
    title,
    asks: row.text,
    force,
    stage,
    quantity,
    limit: {
      min: kept(limit.min),
      max: kept(limit.max),
      allowed: limit.pass ?? null,
      unit: limit.unit,
      printed: limit.printed,
    },
    citation: {
      document: standard.sources[citation.source]?.document ?? citation.source,
      clause: limit.clause,
      scopedBy: row.scope.clause,
      confidence: citation.confidence,
      note: citation.note ?? null,
    },
  }
}

type Named = Pick<
  Report['standards'][number],
  'id' | 'revision' | 'title' | 'edition' | 'kind' | 'supersededBy' | 'digest' | 'sources'
>

const named = new WeakMap<LoadedStandard, Named>()

/** A standard as a report names it, with the documents in which it was read. */
export function standardOf(standard: LoadedStandard): Named {
  const before = named.get(standard)
  if (before) return before
  const { id, revision, title, edition, kind, supersededBy = null, digest } = standard
  const sources = Object.values(standard.sources).map(({ document, where }) => ({ document, where }))
  const made = Object.freeze({ id, revision, title, edition, kind, supersededBy, digest, sources })
  named.set(standard, made)
  return made
}
