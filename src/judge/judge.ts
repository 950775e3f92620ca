import type { Measure } from '../measure/measurer.js'
import type { Gap, Measurement, Observation } from '../measure/measurement.js'
import type { Sign } from '../sign/sign.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import type { Requirement } from '../standards/standard.js'
import { exemption, limitsFor, openException, type Limits } from './exceptions.js'
import { notApplicable, rowsFor, type Row } from './rows.js'
import type { Met } from './met.js'
import { conditionsMet } from './scope.js'
import type { Judgement, Reason, Verdict } from './finding.js'
import type { JudgeOptions } from './types.js'
import { weigh, type Weighed } from './weigh.js'

/** A row that is held against a sign, with what was measured for it. */
interface Held {
  row: Row
  /** Whether its conditions are met, or open. */
  met: Met
  measurement: Measurement
}

/** What of a standard is held against a sign, in the order of the table; of a row that is not, its judgement. */
export type HeldRows = (Held | Judgement)[]

/** Every row of a standard judged on one sign, in the order of the table. */
export const judge = (standard: LoadedStandard, sign: Sign, measure: Measure, options: JudgeOptions): Judgement[] =>
  judgeHeld(holdAgainst(standard, sign, measure), sign, options)

/** The first half of judging: what each row asks for is measured, where it asks for anything. */
export const holdAgainst = (standard: LoadedStandard, sign: Sign, measure: Measure): HeldRows =>
  rowsFor(standard, sign.use).map((row) => row.outOfScope ?? hold(row, sign, measure))

/** The second half: what was measured is held against the limits. */
export const judgeHeld = (rows: HeldRows, sign: Sign, options: JudgeOptions): Judgement[] =>
  rows.map((row) => ('verdict' in row ? row : judgeRow(row, sign, options)))

function hold(row: Row, sign: Sign, measure: Measure): Held | Judgement {
  const { requirement, limit, scope } = row
  const met = conditionsMet(requirement.scope.when, sign)
  if (met.met === false) return notApplicable(requirement, limit, met.because)
  const measurement = measure(requirement.quantity, scope)
  if (measurement.observations.length + measurement.gaps.length === 0)
    return notApplicable(requirement, limit, measurement.nothing ?? 'The sign has nothing to measure this on.')
  return { row, met, measurement }
}

const judgeRow = ({ row, met, measurement }: Held, sign: Sign, options: JudgeOptions): Judgement =>
  withCondition(withExceptions(row, sign, measurement, options), met)

/** With the limits that exceptions leave in force; where one may hold, what fails without it and not with it is open. */
function withExceptions(row: Row, sign: Sign, measurement: Measurement, options: JudgeOptions): Judgement {
  const { standard, requirement } = row
  const against = (limits: Limits): Judgement =>
    conclude(requirement, measurement, weigh(measurement, limits, standard.firstUnit, options))
  if (requirement.exceptions.length === 0) return against(() => requirement)
  const exempt = exemption(requirement, sign)
  if (exempt) return notApplicable(requirement, row.limit, exempt.text)
  const judgement = against(limitsFor(requirement, sign, { whenOpen: false }))
  const open = judgement.verdict === 'fail' ? openException(requirement, sign, judgement.decisive) : undefined
  if (!open) return judgement
  const relaxed = open.exempt || against(limitsFor(requirement, sign, { whenOpen: true })).verdict !== 'fail'
  return relaxed ? leftOpen(judgement, open.gap) : judgement
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
  const gaps = weighed.gaps.length > 0 ? [...measurement.gaps, ...weighed.gaps] : measurement.gaps
  const reasons: Reason[] = gaps.map((gap) => gap.reason)
  if (weighed.within) reasons.push('within-uncertainty')
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
