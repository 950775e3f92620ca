import type { Finding, ReportStage, ReportVerdict } from './finding-schema.js'
import type { Report } from './schema.js'

/** What all findings together say. */
export type Outcome = Pick<Report, 'verdict' | 'stages' | 'summary'>

/** From what decides most to what decides least. */
const BY_WEIGHT: ReportVerdict[] = ['fail', 'undetermined', 'pass', 'not-applicable']

const heavier = (a: ReportVerdict, b: ReportVerdict): ReportVerdict =>
  BY_WEIGHT.indexOf(a) < BY_WEIGHT.indexOf(b) ? a : b

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
