import type { ResolvedLimit } from '../judge/finding.js'
import { resolve } from '../judge/limits.js'
import type { Condition } from '../judge/types.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import type { Limit, Requirement } from '../standards/standard.js'
import { decided, type Setting } from './setting.js'

/** The rows of a standard that bear on every sign of a setting, and those of which only a sign can tell. */

export interface RowInForce {
  standard: LoadedStandard
  row: Requirement
  /** After the exceptions that the setting decides. */
  limit: ResolvedLimit
}

/** A row, or an exception of one, that may be in force. */
export interface ConditionalRow {
  standard: LoadedStandard
  row: Requirement
  /** What hangs on the sign: conditions, or the distance from which it is read. */
  when: (Condition | 'viewing-distance')[]
  clause: string
  /** An exception that would relax the row. */
  isException: boolean
  /** Null: the exception sets the row aside. */
  limit: Limit | null
}

export interface RowsOfSetting {
  inForce: RowInForce[]
  conditional: ConditionalRow[]
}

/** Rows of force `shall` for the setting's use. An exception that is open leaves the row as it is: exceptions only relax. */
export function rowsOf(standard: LoadedStandard, setting: Setting): RowsOfSetting {
  const rows: RowsOfSetting = { inForce: [], conditional: [] }
  for (const row of standard.requirements)
    if (row.force === 'shall' && row.scope.uses.includes(setting.use)) sort(standard, row, setting, rows)
  return rows
}

const BY_DISTANCE: Limit['kind'][] = ['by-viewing-distance', 'distance-share', 'distance-steps']

function sort(standard: LoadedStandard, row: Requirement, setting: Setting, rows: RowsOfSetting): void {
  const found = row.scope.when.map((condition) => decided(condition, setting))
  if (found.includes(false)) return
  const { exceptions } = row
  const holding = exceptions.find(({ when }) => decided(when, setting) === true)
  if (holding?.exempt) return
  const { limit, clause } = holding?.limit ? { limit: holding.limit, clause: holding.clause } : row
  const when: ConditionalRow['when'] = row.scope.when.filter((_, i) => found[i] === undefined)
  if (BY_DISTANCE.includes(limit.kind)) when.push('viewing-distance')
  if (when.length > 0) rows.conditional.push({ standard, row, when, clause, isException: false, limit })
  else rows.inForce.push({ standard, row, limit: resolve(limit, clause, standard.firstUnit) })
  for (const exception of exceptions) {
    if (exception === holding || decided(exception.when, setting) !== undefined) continue
    const relaxed = { when: [exception.when], clause: exception.clause, limit: exception.limit ?? null }
    rows.conditional.push({ standard, row, isException: true, ...relaxed })
  }
}
