import { gapOf, INSTALLATION_POINTER, installationPlace } from '../measure/facts.js'
import { isKnown, SIDES, type Sign } from '../sign/sign.js'
import { met as MET, notMet as not, when, type Met } from './met.js'
import type { Condition } from './types.js'

/** Conditions on the door that a sign belongs to. */

/** A door is there when the client says anything of one; a doorway without a leaf is none. */
function atADoor(sign: Sign): Met {
  const { side, swing, leafWidth } = sign.installation
  if (isKnown(swing) && swing.value === 'none')
    return not('There is no door; no place is prescribed beside an open doorway.')
  const said = isKnown(side) || isKnown(swing) || isKnown(leafWidth)
  if (said || sign.use !== 'transit-station') return MET
  const ask = {
    pointer: `${INSTALLATION_POINTER}/side`,
    ask: 'Is the sign at a door, and on which side of it?',
    choices: [...SIDES],
  }
  return {
    met: 'open',
    gap: gapOf(
      { unknown: 'missing-fact', why: 'whether the sign is at a door is not given' },
      installationPlace(sign),
      ask,
    ),
  }
}

/** Whether the place that a code prefers has no wall to hang the sign on. */
function noWallAtLatch(sign: Sign): Met {
  const { wallAtLatch } = sign.installation
  if (isKnown(wallAtLatch)) return when(!wallAtLatch.value, 'There is wall for the sign beside the latch.')
  const ask = {
    pointer: `${INSTALLATION_POINTER}/door/wallAtLatch`,
    ask: 'Is there wall for the sign beside the latch of the door (at two active leaves, to the right of them)?',
    choices: ['true', 'false'],
  }
  const why = 'whether there is wall for the sign beside the latch is not given'
  return { met: 'open', gap: gapOf({ unknown: 'missing-fact', why }, installationPlace(sign), ask) }
}

export const DOOR_CONDITIONS = {
  'at-a-door': atADoor,
  'no-wall-at-latch': noWallAtLatch,
} satisfies Partial<Record<Condition, (sign: Sign) => Met>>
