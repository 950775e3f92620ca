import type { z } from 'zod'
import type { LoadedStandard } from '../standards/catalogue.js'
import type { Condition as ConditionSchema, Requirement } from '../standards/standard.js'

export type Condition = z.infer<typeof ConditionSchema>

/** A row within its standard. */
export interface LoadedScope {
  standard: LoadedStandard
  requirement: Requirement
}

/** How a client wants values near a limit and limits printed in two units to be treated. */
export interface JudgeOptions {
  /** `guarded`: a value whose expanded uncertainty reaches over a limit is undetermined. */
  decisionRule: 'simple' | 'guarded'
  /** `both`: the printed inches and the printed millimetres must both be met. */
  unitSystem: 'printed' | 'both'
}
