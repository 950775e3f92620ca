import type { SetFinding } from '../../report/set/evidence.js'
import type { ComparedSign } from './compared-sign.js'
import { apart, grouped, listed } from './listing.js'
import { roomIn } from './room.js'
import { wordsOf } from './wording.js'

/**
 * Signs of one room, each said to be for naming a permanent room, that say different things. A room’s exit sign is for another use, and
 * a place that is no room number (“Level 2”, “North corridor”) may well have many signs, so that neither is compared.
 */
export function wordingDiffers(signs: readonly ComparedSign[]): SetFinding[] {
  const ofRooms = signs.filter(({ use, wording }) => use === 'permanent-room' && wording !== null)
  return [...grouped(ofRooms, ({ location }) => roomIn(location)).values()].flatMap((group) => {
    const texts = grouped(group, wordsOf)
    const [first] = group
    if (!first || texts.size < 2) return []
    const each = [...texts.values()].map(
      (same) => `“${(same[0]?.wording ?? []).join(' ')}” (${listed(same.map(({ mark }) => mark))})`,
    )
    return [
      {
        kind: 'wording-differs',
        marks: [...new Set(group.map(({ mark }) => mark))],
        message: `The signs of room ${first.location ?? ''} have different wording: ${apart(each)}.`,
      },
    ]
  })
}
