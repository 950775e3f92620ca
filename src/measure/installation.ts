import { isKnown, SIDES, type Fact, type Leaves, type Side, type Sign } from '../sign/sign.js'
import { NO_BRAILLE } from './braille.js'
import { basisOf, gapOf, INSTALLATION_POINTER, installationPlace, nothing, take } from './facts.js'
import { floorSpace } from './floor-space.js'
import { baselines, extreme, lowest } from './heights.js'
import type { Found, Quantities, Quantity } from './quantity.js'

/**
 * Where the sign is at its door and what is round it. How high it is mounted is in mounting.ts, the clear floor before it in
 * floor-space.ts.
 */

type Length = 'edgeToArchitrave' | 'edgeToJamb' | 'clearWall' | 'nearestApproach'

/** A length that is as it was described. */
const described = (key: Length, path: string, ask: string, method: string): Quantity => ({
  unit: 'mm',
  method,
  couldBe: [],
  doubt: 'more',
  take: ({ sign }) => {
    const fact: Fact<number> = sign.installation[key]
    return take(fact, installationPlace(sign), { pointer: `${INSTALLATION_POINTER}/${path}`, ask, unit: 'mm' })
  },
})

/** Places that a doorway of one leaf, or of two, does not have. */
const NOT_AT: Record<Leaves, readonly Side[]> = {
  single: ['inactive-leaf', 'right-of-double-doors'],
  double: ['latch'],
}

function side(sign: Sign): Found {
  const { side: fact, leaves } = sign.installation
  const place = installationPlace(sign)
  if (isKnown(fact) && isKnown(leaves) && NOT_AT[leaves.value].includes(fact.value)) {
    const why = `a doorway with ${leaves.value === 'single' ? 'one leaf' : 'two leaves'} has no such place as the description names`
    return { observations: [], gaps: [{ reason: 'needs-judgement', why, places: [place] }] }
  }
  const pointer = `${INSTALLATION_POINTER}/side`
  return take(fact, place, { pointer, ask: 'Where at the door is the sign?', choices: [...SIDES] })
}

const HANDLE_ASK = {
  pointer: `${INSTALLATION_POINTER}/door/handleHeight`,
  ask: 'How high above the finish floor is the handle of the door?',
  unit: 'mm' as const,
}

/** From the handle up to the lowest baseline of the braille: the decree does not say to which point of the plate. */
function aboveHandle(sign: Sign): Found {
  if (sign.braille.length === 0) return nothing(NO_BRAILLE)
  const { handleHeight } = sign.installation
  const found = extreme(sign, baselines(sign, [], sign.braille), lowest)
  if (!isKnown(handleHeight))
    return { observations: [], gaps: [gapOf(handleHeight, installationPlace(sign), HANDLE_ASK), ...found.gaps] }
  const observations = found.observations.map((observation) => ({
    ...observation,
    value: typeof observation.value === 'number' ? observation.value - handleHeight.value : observation.value,
    basis: basisOf(observation, handleHeight),
  }))
  return { observations, gaps: found.gaps }
}

export const INSTALLATION: Quantities = {
  'installation.side': {
    unit: 'kind',
    method: 'The place of the sign at its door.',
    couldBe: [],
    doubt: 'more',
    take: ({ sign }) => side(sign),
  },
  'installation.floorSpace': {
    unit: 'mm',
    method:
      'Side of the largest square on the floor, centred on the text, that stays beyond the arc of the door from closed to 45 degrees.',
    couldBe: [],
    doubt: 'more',
    take: ({ sign }) => floorSpace(sign),
  },
  'installation.architraveDistance': described(
    'edgeToArchitrave',
    'door/edgeToArchitrave',
    'How far is the nearest edge of the sign from the architrave of the door?',
    'Along the wall, from the nearest edge of the sign to the architrave of the door.',
  ),
  'installation.jambDistance': described(
    'edgeToJamb',
    'door/edgeToJamb',
    'How far is the nearest edge of the sign from the jamb of the door?',
    'Along the wall, from the nearest edge of the sign to the jamb of the door.',
  ),
  'installation.clearWall': described(
    'clearWall',
    'clearWall',
    'How wide is the clear wall round the sign where it is narrowest?',
    'From the edge of the sign to the nearest thing on the wall.',
  ),
  'installation.reach': described(
    'nearestApproach',
    'nearestApproach',
    'How near to the sign can a reader come without meeting an obstruction or standing in the swing of a door?',
    'From the sign to the nearest place where a reader can stand, clear of obstructions and of the swing of doors.',
  ),
  'installation.aboveHandle': {
    unit: 'mm',
    method: 'From the handle of the door up to the lowest baseline of the braille.',
    couldBe: ['braille'],
    doubt: 'more',
    take: ({ sign }) => aboveHandle(sign),
  },
}
