import { FINISHES, isKnown, type Fact, type Finish, type Place, type Sign } from '../sign/sign.js'
import { join, PANEL_POINTER, pointerOf, take } from './facts.js'
import { letteringIn, NO_LETTERING } from './lettering.js'
import type { Found, Quantities } from './quantity.js'

/**
 * The finish of characters and of their background: both must be free of glare (2010 ADA Standards 703.5.1). A part whose own
 * finish is not given has the panel's. No gloss value is printed, so the kinds of the trade are told apart by name.
 */

const CHOICES = [...FINISHES]

export function finishOf(sign: Sign, own: Fact<Finish>, place: Place, pointer: string): Found[] {
  const panel = take(sign.panel.finish, sign.panel.place, {
    pointer: `${PANEL_POINTER}/finish`,
    ask: 'What finish has the panel?',
    choices: CHOICES,
  })
  if (!isKnown(own) && own.unknown === 'missing-fact') return [panel]
  return [panel, take(own, place, { pointer, ask: 'What finish has this part?', choices: CHOICES })]
}

export const FINISH: Quantities = {
  'visual.finish': {
    unit: 'kind',
    method: 'The finish of the characters and of what is behind them.',
    couldBe: ['lettering'],
    doubt: 'more',
    take: (subject) => {
      const all = letteringIn(subject)
      if (all.length === 0) return join([], NO_LETTERING)
      const found = all.flatMap(({ lettering: { finish, place }, n }) =>
        finishOf(subject.sign, finish, place, pointerOf(place, 'lettering', n, 'finish')),
      )
      return join(unique(found), NO_LETTERING)
    },
  },
}

/** The panel is asked about once, however many parts stand on it. */
function unique(found: Found[]): Found[] {
  const seen = new Set<string>()
  return found.filter(({ observations, gaps }) => {
    const key = JSON.stringify([observations, gaps])
    return seen.has(key) ? false : seen.add(key)
  })
}
