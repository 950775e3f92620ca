import { FINDING_COLUMNS } from '../csv.js'
import { csvTable, type Cell } from '../csv-table.js'
import type { Finding } from '../finding-schema.js'
import { waiversFor } from '../overlay.js'
import type { SetEvidence, SetSign } from './evidence.js'
import { reportProblem } from './outcome.js'

/** The columns before those of a finding. */
const SIGN_COLUMNS: Record<string, (sign: SetSign) => Cell> = {
  sign: ({ id }) => id,
  mark: ({ mark }) => mark,
  location: ({ location }) => location,
  door: ({ door }) => door,
}

/** The columns behind them: how a failing or undecided finding was waived, and why a sign has no findings at all. */
const LAST_COLUMNS = [
  'report',
  'waiver',
  'waiver_reason',
  'waiver_authority',
  'waiver_author',
  'waiver_at',
  'waiver_expires',
  'problem',
]

/**
 * The findings of all signs as one table for spreadsheets: one row a finding, in the order of the signs and of their reports. A sign
 * without a report has one row, which says why. `waiver` is the standing of the waiver.
 */
export function setCsv({ signs }: SetEvidence): string {
  const heads = [...Object.keys(SIGN_COLUMNS), ...Object.keys(FINDING_COLUMNS), ...LAST_COLUMNS]
  return csvTable(heads, signs.flatMap(rowsOf))
}

function rowsOf(sign: SetSign): Cell[][] {
  const first = Object.values(SIGN_COLUMNS).map((cell) => cell(sign))
  const columns = Object.values(FINDING_COLUMNS)
  const { report } = sign
  if (!report)
    return [[...first, ...columns.map(() => null), ...LAST_COLUMNS.slice(1).map(() => null), reportProblem(sign)]]
  return report.findings.map((finding) => [
    ...first,
    ...columns.map((cell) => cell(finding)),
    report.id,
    ...waiverCells(sign, finding),
    reportProblem(sign),
  ])
}

/** The waiver that holds or, when none does, the last that held. */
function waiverCells(sign: SetSign, finding: Finding): Cell[] {
  const all = waiversFor(sign, finding)
  const waiver = all.find(({ standing }) => standing === 'in-force') ?? all.at(-1)
  if (!waiver) return [null, null, null, null, null, null]
  const { standing, reason, authority, author, at, expires } = waiver
  return [standing, reason, authority, author, at, expires]
}
