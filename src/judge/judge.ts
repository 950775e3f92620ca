import type { Measure } from '../measure/measurer.js'
import type { Gap, Measurement, Observation } from '../measure/measurement.js'
import type { Sign } from '../sign/sign.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import type { Limit, Requirement } from '../standards/standard.js'
import { conditionMet, conditionsMet, outOfScope, type Met } from './scope.js'
import type { Judgement, Reason, ResolvedLimit, Verdict } from './finding.js'
import { resolve } from './limits.js'
import type { JudgeOptions } from './types.js'
import { weigh, type Weighed } from './weigh.js'

/** Every row of a standard judged on one sign, in the order of the table. */
export function judge(standard: LoadedStandard, sign: Sign, measure: Measure, options: JudgeOptions): Judgement[] {
  return standard.requirements.map((requirement) => judgeRow(standard, requirement, sign, measure, options))
}

function judgeRow(
  standard: LoadedStandard,
  requirement: Requirement,
  sign: Sign,
  measure: Measure,
  options: JudgeOptions,
): Judgement {
  const printed = resolve(requirement.limit, requirement.clause, standard.firstUnit)
  const because = outOfScope({ standard, requirement }, sign)
  if (because !== undefined) return notApplicable(requirement, printed, because)
  const met = conditionsMet(requirement.scope.when, sign)
  if (met.met === false) return notApplicable(requirement, printed, met.because)
  const { parts, sections } = requirement.scope
  const measurement = measure(requirement.quantity, { ...(parts && { parts }), ...(sections && { sections }) })
  if (measurement.observations.length + measurement.gaps.length === 0)
    return notApplicable(requirement, printed, measurement.nothing ?? 'The sign has nothing to measure this on.')
  return withCondition(withExceptions(standard, requirement, sign, measurement, options), met)
}

function notApplicable(requirement: Requirement, limit: ResolvedLimit, because: string): Judgement {
  return {
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
}

/** The limit in force. Exceptions only ever relax: what passes without one passes. */
function withExceptions(
  standard: LoadedStandard,
  requirement: Requirement,
  sign: Sign,
  measurement: Measurement,
  options: JudgeOptions,
): Judgement {
  const against = (limit: Limit, clause: string): Judgement =>
    conclude(requirement, measurement, weigh(measurement, limit, clause, standard.firstUnit, options))
  let judgement = against(requirement.limit, requirement.clause)
  for (const exception of requirement.exceptions) {
    const met = conditionMet(exception.when, sign)
    if (met.met === false) continue
    if (met.met === true && exception.exempt) return notApplicable(requirement, judgement.limit, exception.text)
    if (!exception.limit && !exception.exempt) continue
    if (met.met === true && exception.limit) return against(exception.limit, exception.clause)
    if (judgement.verdict !== 'fail' || met.met !== 'open') continue
    const relaxed = exception.limit && against(exception.limit, exception.clause).verdict
    if (relaxed !== 'fail') judgement = leftOpen(judgement, met.gap)
  }
  return judgement
}

/** A row that may not be in force: what passes passes, what fails is open. */
function withCondition(judgement: Judgement, met: Met): Judgement {
  return met.met === 'open' && judgement.verdict === 'fail' ? leftOpen(judgement, met.gap) : judgement
}

const leftOpen = (judgement: Judgement, gap: Gap): Judgement => ({
  ...judgement,
  verdict: 'undetermined',
  reason: gap.reason,
  gaps: [gap, ...judgement.gaps],
})

/** A reason of several: what a client can answer comes first, what a person must judge last. */
const REASONS: Reason[] = ['missing-fact', 'unreadable', 'limit-reached', 'within-uncertainty', 'needs-judgement']

/** A fail beats what is open, what is open beats a pass. */
function conclude(requirement: Requirement, measurement: Measurement, weighed: Weighed): Judgement {
  const gaps = [...measurement.gaps, ...weighed.gaps]
  const reasons: Reason[] = [
    ...gaps.map((gap) => gap.reason),
    ...(weighed.within ? (['within-uncertainty'] as const) : []),
  ]
  const verdict: Verdict = weighed.failed.length > 0 ? 'fail' : reasons.length > 0 ? 'undetermined' : 'pass'
  return {
    requirement,
    verdict,
    reason: verdict === 'undetermined' ? (REASONS.find((reason) => reasons.includes(reason)) ?? null) : null,
    measurement,
    limit: weighed.limit,
    decisive: decisive(weighed),
    gaps,
    margin: weighed.margin,
    unitSplit: weighed.unitSplit,
  }
}

const decisive = ({ failed, nearest }: Weighed): Observation[] =>
  failed.length > 0 ? failed : nearest ? [nearest] : []
