import type { ReportStage, ReportVerdict } from '../report/finding-schema.js'
import type { SetEvidence, SetSign } from '../report/set/evidence.js'
import { setCounts, setVerdict } from '../report/set/verdict.js'

/** The exit status. Those above the verdicts are the ones of sysexits.h: EX_USAGE, EX_SOFTWARE, EX_CANTCREAT. */
export const STATUS = { pass: 0, fail: 1, undetermined: 2, unchecked: 3, usage: 64, internal: 70, output: 73 } as const
export type Status = (typeof STATUS)[keyof typeof STATUS]

export interface Accepted {
  undetermined: 'fail' | 'pass'
  /** Only this stage counts. */
  stage?: ReportStage
}

/**
 * A fail comes first. Then what could not be checked, which no option lets pass: nobody looked at it. A set to which nothing applies is
 * not a set that passes.
 */
export function statusOf(evidence: SetEvidence, { undetermined, stage }: Accepted): Status {
  const verdict = stage === undefined ? setVerdict(evidence) : stageVerdict(evidence.signs, stage)
  if (verdict === 'fail') return STATUS.fail
  if (setCounts(evidence.signs).unchecked + evidence.intakeProblems.length > 0 || evidence.signs.length === 0)
    return STATUS.unchecked
  return verdict === 'pass' || undetermined === 'pass' ? STATUS.pass : STATUS.undetermined
}

function stageVerdict(signs: readonly SetSign[], stage: ReportStage): ReportVerdict {
  const verdicts = signs.flatMap(({ report }) => report?.stages[stage] ?? [])
  const worst = (['fail', 'undetermined', 'pass'] as const).find((verdict) => verdicts.includes(verdict))
  return worst ?? 'not-applicable'
}
