import type { SetFinding } from '../../report/set/evidence.js'
import { sameName } from '../same-name.js'
import type { ComparedSign } from './compared-sign.js'
import { grouped, listed } from './listing.js'
import { wordsOf } from './wording.js'

/** A mark tells one sign from all others, so that two signs of one mark cannot be told apart in the papers. */
export function sameMark(signs: readonly ComparedSign[]): SetFinding[] {
  return [...grouped(signs, ({ mark }) => sameName(mark) || null).values()].flatMap((group) => {
    const [first] = group
    if (!first || group.length < 2) return []
    const places = [...new Set(group.flatMap(({ location }) => location ?? []))]
    const where = places.length > 0 ? ` Their places: ${listed(places, '; ')}.` : ''
    return [
      {
        kind: 'same-mark',
        marks: [...new Set(group.map(({ mark }) => mark))],
        message: `The mark ${first.mark} stands for ${group.length} signs, ${wordings(group)}.${where}`,
      },
    ]
  })
}

function wordings(group: readonly ComparedSign[]): string {
  const words = group.map(wordsOf)
  if (words.includes(null)) return 'of which the wording is not all known'
  return new Set(words).size === 1 ? 'all with the same wording' : 'with different wording'
}
