import type { SetFinding } from '../../report/set/evidence.js'
import { doorsIn, sameName } from '../same-name.js'
import type { ListedDoor } from '../upload.js'
import type { ComparedSign } from './compared-sign.js'
import { grouped } from './listing.js'
import { numberOfRoom } from './room.js'

/**
 * A door that a schedule lists and no sign of the set is said to stand at. A sign that names no door stands for the doors of its
 * place and for those that are numbered after its room: 101, and 101A, 101B where there are several (common practice, no source).
 */
export function doorWithoutSign(signs: readonly ComparedSign[], doors: readonly ListedDoor[]): SetFinding[] {
  const signed = new Set(signs.flatMap(({ door }) => doorsIn(door).map(sameName)))
  const ofPlaces = signs.filter(({ door }) => doorsIn(door).length === 0)
  const places = new Set(ofPlaces.flatMap(({ location }) => (location === null ? [] : sameName(location))))
  const rooms = new Set(ofPlaces.flatMap(({ location }) => numberOfRoom(location) ?? []))
  const nowhere = ofPlaces.filter(({ location }) => location === null).length
  return [...grouped(doors, ({ door }) => sameName(door)).values()].flatMap((same) => {
    const [first] = same
    if (!first) return []
    const name = sameName(first.door)
    const atPlace = same.some(({ location }) => location !== null && places.has(sameName(location)))
    if (signed.has(name) || atPlace || rooms.has(name) || rooms.has(withoutLetter(name))) return []
    return [{ kind: 'door-without-sign', marks: [], message: message(first, nowhere) }]
  })
}

const withoutLetter = (door: string): string => door.replace(/(\d)[A-Z]$/, '$1')

function message({ door, location, file, row }: ListedDoor, nowhere: number): string {
  const place = location === null ? '' : ` (${location})`
  const doubt =
    nowhere === 0
      ? ''
      : ` ${nowhere === 1 ? 'One sign names' : `${nowhere} signs name`} neither a door nor a place and may be for it.`
  return `Door ${door}${place} is listed in ${file}, row ${row}, and no sign is said to stand at it.${doubt}`
}
