import { largestSquareBeside, type Sector } from '../geometry/sector.js'
import { isKnown, SWINGS, type Installation, type NeighbouringDoor, type Side, type Sign } from '../sign/sign.js'
import { gapOf, INSTALLATION_POINTER, installationPlace, type Ask } from './facts.js'
import type { Gap } from './measurement.js'
import type { Found } from './quantity.js'

/**
 * The clear floor space at a tactile sign: a square centred on the tactile characters, beyond the arc of any door from
 * closed to 45 degrees open (2010 ADA Standards 703.4.2). Constructed as the largest square of which one side runs along
 * the wall (doors in one plane with it, or in the wall beyond an inner corner) and which no leaf sweeps. What else stands on
 * the floor is for the site.
 */

const OPEN_TO = 45

const SWING_ASK: Ask = {
  pointer: `${INSTALLATION_POINTER}/door/swing`,
  ask: 'Which way does the door open, seen from the reader?',
  choices: [...SWINGS],
}

const LATCH_ASK: Ask = {
  pointer: `${INSTALLATION_POINTER}/door/latchToTextCentre`,
  ask: 'How far along the wall is it from the latch edge of the closed door to the middle of the raised characters and braille?',
  unit: 'mm',
}

const SPACE_ASK: Ask = {
  pointer: '/sign/measured',
  ask: 'How large is the square of clear floor before the sign, beyond the arc of the door, measured on site (installation.floorSpace)?',
  unit: 'mm',
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

const ONLY_THE_DOOR = 'Only the door is looked at; other things that stand on the floor are not known.'
const DOORS_AND_WALLS = 'Only doors and walls are looked at; other things that stand on the floor are not known.'
const NO_LEAF = 'No door leaf turns over the floor before the sign.'

/** The side of the largest square that one thing leaves, and what that thing is. */
interface Room {
  side: number
  beside: string
}

/** A leaf in the wall beyond an inner corner, which starts at `near` from the corner. */
const beyondCorner = (corner: number, near: number, radius: number, hinge: NeighbouringDoor['hinge']): Sector =>
  hinge === 'near'
    ? { hinge: { x: corner, y: near }, radius, from: 90, to: 90 + OPEN_TO }
    : { hinge: { x: corner, y: near + radius }, radius, from: 270 - OPEN_TO, to: 270 }

/** A leaf in the wall of the sign, with its nearest edge at `near` from the middle of the text. */
const besideSign = (near: number, radius: number, hinge: NeighbouringDoor['hinge']): Sector =>
  hinge === 'near'
    ? { hinge: { x: near, y: 0 }, radius, from: 0, to: OPEN_TO }
    : { hinge: { x: near + radius, y: 0 }, radius, from: 180 - OPEN_TO, to: 180 }

/** What the neighbouring doors and the inner corners leave. A square that is centred on the text reaches a wall beside it halfway. */
function roomsOfNeighbours({ neighbouringDoors = [], innerCorner }: Installation): Room[] {
  const doors = neighbouringDoors.flatMap(({ distance, leafWidth, swing, hinge, corner }): Room[] => {
    const wall = corner === undefined ? [] : [cornerRoom(corner)]
    if (swing !== 'toward-reader') return wall
    const sector =
      corner === undefined ? besideSign(distance, leafWidth, hinge) : beyondCorner(corner, distance, leafWidth, hinge)
    return [{ side: largestSquareBeside(sector), beside: 'A neighbouring door' }, ...wall]
  })
  return innerCorner === undefined ? doors : [...doors, cornerRoom(innerCorner)]
}

const cornerRoom = (corner: number): Room => ({ side: 2 * corner, beside: 'The wall beyond the corner' })

/** What the sign's own door leaves: nothing in the way where no leaf turns over the floor. */
function roomOfDoor(sign: Sign): Room | Gap | 'no-leaf' {
  const { swing, side, latchToTextCentre, latchToCorner, innerCorner, leafWidth } = sign.installation
  const place = installationPlace(sign)
  if (!isKnown(swing)) return gapOf(swing, place, SWING_ASK)
  if (swing.value !== 'toward-reader') return 'no-leaf'
  const beside = 'The door'
  if (isKnown(side) && AWAY_FROM_THE_LATCH.includes(side.value)) {
    if (
      side.value === 'nearest-adjacent-wall' &&
      innerCorner !== undefined &&
      isKnown(latchToCorner) &&
      isKnown(leafWidth)
    )
      return {
        side: largestSquareBeside(beyondCorner(innerCorner, latchToCorner.value, leafWidth.value, 'far')),
        beside,
      }
    return gapOf({ unknown: 'missing-fact', why: NOT_TOLD }, place, SPACE_ASK)
  }
  if (!isKnown(latchToTextCentre)) return gapOf(latchToTextCentre, place, LATCH_ASK)
  // Of a leaf in one plane with the wall, the latch edge comes nearest, where it is closed: the width of the leaf does not matter.
  return { side: Math.max(0, 2 * latchToTextCentre.value), beside }
}

export function floorSpace(sign: Sign): Found {
  const place = installationPlace(sign)
  const { neighbouringDoors, innerCorner } = sign.installation
  const looked = neighbouringDoors || innerCorner !== undefined ? DOORS_AND_WALLS : ONLY_THE_DOOR
  const own = roomOfDoor(sign)
  const rooms = roomsOfNeighbours(sign.installation)
  const gaps: Gap[] = []
  if (own !== 'no-leaf') {
    if ('reason' in own) gaps.push(own)
    else rooms.unshift(own)
  }
  const [first] = rooms
  if (first) {
    const least = rooms.reduce((a, b) => (b.side < a.side ? b : a))
    const remark = rooms.length > 1 ? `${least.beside} leaves the least room. ${looked}` : looked
    return { observations: [{ value: least.side, basis: 'declared', places: [place], remark }], gaps }
  }
  if (gaps.length > 0) return { observations: [], gaps }
  return {
    observations: [{ value: true, basis: 'declared', places: [place], remark: `${NO_LEAF} ${looked}` }],
    gaps: [],
  }
}
