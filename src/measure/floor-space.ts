import { largestSquareBesideLeaf } from '../geometry/sector.js'
import { isKnown, SWINGS, type Sign } from '../sign/sign.js'
import { gapOf, INSTALLATION_POINTER, installationPlace, type Ask } from './facts.js'
import type { Found } from './quantity.js'

/**
 * The clear floor space at a tactile sign: a square centred on the tactile characters, beyond the arc of any door from
 * closed to 45 degrees open (2010 ADA Standards 703.4.2). Constructed as the largest square of which one side runs along
 * the wall (door and wall in one plane) and which the leaf does not sweep. Only the door is looked at: what else stands on
 * the floor is for the site.
 */

/** A door that does not turn toward the reader limits no square; none larger than this is looked at. */
const LARGEST_LOOKED_AT = 1000

const SWING_ASK: Ask = {
  pointer: `${INSTALLATION_POINTER}/door/swing`,
  ask: 'Which way does the door open, seen from the reader?',
  choices: [...SWINGS],
}

export function floorSpace(sign: Sign): Found {
  const { swing, latchToTextCentre } = sign.installation
  const place = installationPlace(sign)
  if (!isKnown(swing)) return { observations: [], gaps: [gapOf(swing, place, SWING_ASK)] }
  if (swing.value !== 'toward-reader') {
    const remark = 'No door leaf turns over the floor before the sign. Other things that stand there are not known.'
    return { observations: [{ value: LARGEST_LOOKED_AT, basis: swing.basis, places: [place], remark }], gaps: [] }
  }
  if (!isKnown(latchToTextCentre)) {
    const ask = {
      pointer: `${INSTALLATION_POINTER}/door/latchToTextCentre`,
      ask: 'How far along the wall is it from the latch edge of the closed door to the middle of the raised characters and braille?',
      unit: 'mm' as const,
    }
    return { observations: [], gaps: [gapOf(latchToTextCentre, place, ask)] }
  }
  const value = Math.min(LARGEST_LOOKED_AT, largestSquareBesideLeaf(latchToTextCentre.value))
  const remark = 'Only the door is looked at; other things that stand on the floor are not known.'
  return { observations: [{ value, basis: latchToTextCentre.basis, places: [place], remark }], gaps: [] }
}
