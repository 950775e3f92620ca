import { sameName } from '../same-name.js'

/** A number with at most some letters round it, such as 104, B-104 or 2.13A; a name may follow. An ordinal (“2nd floor”) is none. */
const ROOM = /^(?:room |rm\.? )?([a-z]{0,3}[-.]?\d[\da-z.-]*)(?: .*)?$/i
const ORDINAL = /^\d+(?:st|nd|rd|th)$/i

/** The room that a location names, building and level before it included; null when it names none. */
export function roomIn(location: string | null): string | null {
  const parts = (location ?? '').split(',').map((part) => part.trim())
  const number = ROOM.exec(parts.at(-1) ?? '')?.[1]
  if (number === undefined || ORDINAL.test(number)) return null
  return [...parts.slice(0, -1), number].map(sameName).join('/')
}

/** Numbers that a door of the location may have: that of its room. */
export const numberOfRoom = (location: string | null): string | null => roomIn(location)?.split('/').at(-1) ?? null
