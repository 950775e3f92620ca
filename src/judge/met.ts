import type { Gap } from '../measure/measurement.js'
import type { Place } from '../sign/sign.js'

/** Whether a condition holds for a sign: it does, it does not, or it is open. */
export type Met = { met: true } | { met: false; because: string } | { met: 'open'; gap: Gap }

export const met: Met = { met: true }
export const notMet = (because: string): Met => ({ met: false, because })
export const open = (why: string, place: Place): Met => ({
  met: 'open',
  gap: { reason: 'needs-judgement', why, places: [place] },
})

export const when = (holds: boolean, because: string): Met => (holds ? met : notMet(because))
