import { csvTable, type Cell } from '../csv-table.js'
import { STAGES } from '../finding-schema.js'
import type { SetEvidence, SetSign } from './evidence.js'
import { outcomeOf, reportProblem, type Outcome } from './outcome.js'

/** The columns of a sign; a sign without a report has nothing in them but what the schedule says and `problem`. */
const COLUMNS: Record<string, (sign: SetSign) => Cell> = {
  sign: ({ id }) => id,
  mark: ({ mark }) => mark,
  location: ({ location }) => location,
  door: ({ door }) => door,
  files: ({ files }) => files.join(', '),
  use: ({ report }) => report?.use ?? null,
  verdict: ({ report }) => report?.verdict ?? null,
  ...Object.fromEntries(STAGES.map((stage) => [stage, ({ report }: SetSign) => report?.stages[stage] ?? null])),
  failing: (sign) => counted(sign, 'fail', 'fail-waived'),
  failing_waived: (sign) => counted(sign, 'fail-waived'),
  undetermined: (sign) => counted(sign, 'undetermined', 'undetermined-waived'),
  undetermined_waived: (sign) => counted(sign, 'undetermined-waived'),
  to_measure: ({ report }) => report?.toMeasure.length ?? null,
  failing_clauses: (sign) => clauses(sign, 'fail', 'fail-waived'),
  waived_clauses: (sign) => clauses(sign, 'fail-waived'),
  report: ({ report }) => report?.id ?? null,
  problem: reportProblem,
}

/** Required rows that come to one of these. */
const findings = (sign: SetSign, outcomes: Outcome[]) =>
  sign.report?.findings.filter((finding) => finding.force === 'shall' && outcomes.includes(outcomeOf(sign, finding)))

const counted = (sign: SetSign, ...outcomes: Outcome[]): Cell => findings(sign, outcomes)?.length ?? null

const clauses = (sign: SetSign, ...outcomes: Outcome[]): Cell =>
  findings(sign, outcomes)
    ?.map(({ requirement }) => requirement)
    .join(' ') ?? null

/**
 * The schedule with its verdicts: one row a sign, in the order of the set, then one column for the verdict of each standard. Counts are
 * of requirements that verdicts rest on. A waiver changes no verdict and no count: how many of them it lets stand has columns of its own.
 */
export function scheduleCsv({ signs }: SetEvidence): string {
  const standards = [...new Set(signs.flatMap(({ report }) => report?.standards.map(({ id }) => id) ?? []))]
  const rows = signs.map((sign) => [
    ...Object.values(COLUMNS).map((cell) => cell(sign)),
    ...standards.map((standard) => sign.report?.standards.find(({ id }) => id === standard)?.verdict ?? null),
  ])
  return csvTable([...Object.keys(COLUMNS), ...standards], rows)
}
