import { largestSquareBesideLeaf } from '../geometry/sector.js'
import { isKnown, SWINGS, type Side, type Sign } from '../sign/sign.js'
import { gapOf, INSTALLATION_POINTER, installationPlace, type Ask } from './facts.js'
import type { Found } from './quantity.js'

/**
 * The clear floor space at a tactile sign: a square centred on the tactile characters, beyond the arc of any door from
 * closed to 45 degrees open (2010 ADA Standards 703.4.2). Constructed as the largest square of which one side runs along
 * the wall (door and wall in one plane) and which the leaf does not sweep. Only the door is looked at: what else stands on
 * the floor is for the site.
 */

const SWING_ASK: Ask = {
  pointer: `${INSTALLATION_POINTER}/door/swing`,
  ask: 'Which way does the door open, seen from the reader?',
  choices: [...SWINGS],
}

/** Where the distance from the latch edge does not tell how far the sign is from the arc, or which leaf is meant. */
const AWAY_FROM_THE_LATCH: readonly Side[] = [
  'hinge',
  'right-of-double-doors',
  'nearest-adjacent-wall',
  'on-door-push-side',
]

const NOT_TOLD =
  'the distance from the latch edge of the door does not tell where a sign at this place is beside the arc of the door'

const SPACE_ASK: Ask = {
  pointer: '/sign/measured',
  ask: 'How large is the square of clear floor before the sign, beyond the arc of the door, measured on site (installation.floorSpace)?',
  unit: 'mm',
}

const ONLY_THE_DOOR = 'Only the door is looked at; other things that stand on the floor are not known.'

export function floorSpace(sign: Sign): Found {
  const { swing, side, latchToTextCentre } = sign.installation
  const place = installationPlace(sign)
  if (!isKnown(swing)) return { observations: [], gaps: [gapOf(swing, place, SWING_ASK)] }
  if (swing.value !== 'toward-reader') {
    const remark = `No door leaf turns over the floor before the sign. ${ONLY_THE_DOOR}`
    return { observations: [{ value: true, basis: swing.basis, places: [place], remark }], gaps: [] }
  }
  if (isKnown(side) && AWAY_FROM_THE_LATCH.includes(side.value))
    return { observations: [], gaps: [gapOf({ unknown: 'missing-fact', why: NOT_TOLD }, place, SPACE_ASK)] }
  if (!isKnown(latchToTextCentre)) {
    const ask = {
      pointer: `${INSTALLATION_POINTER}/door/latchToTextCentre`,
      ask: 'How far along the wall is it from the latch edge of the closed door to the middle of the raised characters and braille?',
      unit: 'mm' as const,
    }
    return { observations: [], gaps: [gapOf(latchToTextCentre, place, ask)] }
  }
  const value = largestSquareBesideLeaf(latchToTextCentre.value)
  return { observations: [{ value, basis: latchToTextCentre.basis, places: [place], remark: ONLY_THE_DOOR }], gaps: [] }
}
