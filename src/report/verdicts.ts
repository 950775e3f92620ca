import type { Finding, ReportStage, ReportVerdict } from './finding-schema.js'

/**
 * The verdict of a set of findings: only rows of force `shall` decide. `fail` if any fails, else `undetermined` if any
 * is, else `pass`; `not-applicable` when no such row applies.
 */
export function verdictOf(findings: readonly Finding[]): ReportVerdict {
  const verdicts = new Set(findings.filter((f) => f.force === 'shall').map((f) => f.verdict))
  return (['fail', 'undetermined', 'pass'] as const).find((verdict) => verdicts.has(verdict)) ?? 'not-applicable'
}

export function stagesOf(findings: readonly Finding[]): Record<ReportStage, ReportVerdict> {
  const of = (stage: ReportStage) => verdictOf(findings.filter((f) => f.stage === stage))
  return { drawing: of('drawing'), product: of('product'), site: of('site') }
}

export function summaryOf(findings: readonly Finding[]) {
  const count = (verdict: ReportVerdict) => findings.filter((f) => f.verdict === verdict).length
  return {
    pass: count('pass'),
    fail: count('fail'),
    undetermined: count('undetermined'),
    notApplicable: count('not-applicable'),
  }
}
