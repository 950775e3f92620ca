import type { Finding, ReportStage, ReportVerdict } from './finding-schema.js'
import type { Report } from './schema.js'

/** What all findings together say. */
export type Outcome = Pick<Report, 'verdict' | 'stages' | 'summary'>

/** What decides more has the greater weight. */
const WEIGHTS: Record<ReportVerdict, number> = { fail: 3, undetermined: 2, pass: 1, 'not-applicable': 0 }

const heavier = (a: ReportVerdict, b: ReportVerdict): ReportVerdict => (WEIGHTS[a] > WEIGHTS[b] ? a : b)

const COUNTS = {
  pass: 'pass',
  fail: 'fail',
  undetermined: 'undetermined',
  'not-applicable': 'notApplicable',
} as const satisfies Record<ReportVerdict, keyof Report['summary']>

/**
 * The verdict of all findings and of each stage: only rows of force `shall` decide. `fail` if any fails, else
 * `undetermined` if any is, else `pass`; `not-applicable` when no such row applies. The summary counts every finding.
 */
export function outcomeOf(findings: readonly Finding[]): Outcome {
  const stages: Record<ReportStage, ReportVerdict> = {
    drawing: 'not-applicable',
    product: 'not-applicable',
    site: 'not-applicable',
  }
  const summary = { pass: 0, fail: 0, undetermined: 0, notApplicable: 0 }
  for (const { force, stage, verdict } of findings) {
    summary[COUNTS[verdict]]++
    if (force === 'shall') stages[stage] = heavier(stages[stage], verdict)
  }
  return { verdict: heavier(heavier(stages.drawing, stages.product), stages.site), stages, summary }
}
