import type { WhyUnknown } from '../sign/sign.js'
import type { Gap, Measurement, MeasureUnit, Observation } from '../measure/measurement.js'
import type { Limit, Requirement } from '../standards/standard.js'

export type Verdict = 'pass' | 'fail' | 'undetermined' | 'not-applicable'
export type Reason = WhyUnknown | 'within-uncertainty'

/** One requirement judged on one sign: typed data only; texts are made in report/. */
export interface Judgement {
  requirement: Requirement
  verdict: Verdict
  reason: Reason | null
  /** Why not applicable, in one sentence. */
  because?: string
  measurement?: Measurement
  /** The limit that was used, after exceptions, in the unit of the measurement (mm or ratio). */
  limit: ResolvedLimit
  /** The observations that failed, the worst first; for a pass, the one nearest to its limit. */
  decisive: Observation[]
  gaps: Gap[]
  /** Signed distance of the worst value inside (+) or outside (-) the nearer end. */
  margin: number | null
  unitSplit: { judged: 'in' | 'mm'; pass: 'in' | 'mm'; fail: 'in' | 'mm' } | null
}

/** A limit with its ends in millimetres (or as a ratio), ready to compare. */
export interface ResolvedLimit {
  kind: Limit['kind']
  min?: number
  max?: number
  /** The other printed unit's ends in millimetres, when it prints any. */
  other?: { min?: number; max?: number }
  pass?: string[]
  unit: MeasureUnit
  printed: string
  clause: string
}
