import type { Gap, Observation } from '../measure/measurement.js'
import type { Sign } from '../sign/sign.js'
import type { Limit, Requirement } from '../standards/standard.js'
import type { Met } from './met.js'
import { conditionMet } from './scope.js'

/**
 * The limit that a row's exceptions leave in force. An exception may hold for some of the characters on a sign only, so the limit
 * is found for each observation. Exceptions only ever relax: what passes without one passes.
 */

type Exception = Requirement['exceptions'][number]

export interface InForce {
  limit: Limit
  clause: string
}

/** The limit for an observation; without one, for all that the row is about. */
export type Limits = (observation?: Observation) => InForce

const metFor = (exception: Exception, sign: Sign, observation: Observation | undefined): Met =>
  conditionMet(exception.when, sign, observation?.lettering)

/** @param holds whether an exception of which it is open that it is met is taken to be. */
export const limitsFor =
  ({ limit, clause, exceptions }: Requirement, sign: Sign, holds: { whenOpen: boolean }): Limits =>
  (observation) => {
    for (const exception of exceptions) {
      if (!exception.limit) continue
      const { met } = metFor(exception, sign, observation)
      if (met === true || (met === 'open' && holds.whenOpen))
        return { limit: exception.limit, clause: exception.clause }
    }
    return { limit, clause }
  }

/** The exception that sets a row aside for a sign, if one does. */
export const exemption = ({ exceptions }: Requirement, sign: Sign): Exception | undefined =>
  exceptions.find((exception) => exception.exempt && conditionMet(exception.when, sign).met === true)

/** What leaves it open whether an exception holds for one of these observations. */
export function openException(
  { exceptions }: Requirement,
  sign: Sign,
  observations: Observation[],
): { gap: Gap; exempt: boolean } | undefined {
  for (const exception of exceptions) {
    if (!exception.limit && !exception.exempt) continue
    for (const observation of observations) {
      const met = metFor(exception, sign, observation)
      if (met.met === 'open') return { gap: met.gap, exempt: exception.exempt }
    }
  }
  return undefined
}
