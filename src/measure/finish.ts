import { FINISHES, isKnown, type Fact, type Finish, type Place, type Sign } from '../sign/sign.js'
import { join, nothing, PANEL_POINTER, pointerOf, take } from './facts.js'
import { letteringIn, NO_LETTERING } from './lettering.js'
import type { Found, Quantities } from './quantity.js'

/**
 * The finish of characters and of their background: both must be free of glare (2010 ADA Standards 703.5.1). A part whose own
 * finish is not given has the panel's. No gloss value is printed, so the kinds of the trade are told apart by name.
 */

const CHOICES = [...FINISHES]

/** The panel's finish. */
const finishOfPanel = ({ panel }: Sign): Found =>
  take(panel.finish, panel.place, {
    pointer: `${PANEL_POINTER}/finish`,
    ask: 'What finish has the panel?',
    choices: CHOICES,
  })

/** A part's own finish; nothing for a part that has the panel's. */
function ownFinish(own: Fact<Finish>, place: Place, pointer: string): Found[] {
  if (!isKnown(own) && own.unknown === 'missing-fact') return []
  return [take(own, place, { pointer, ask: 'What finish has this part?', choices: CHOICES })]
}

/** The finish of a part and of the panel that it stands on. */
export const finishOf = (sign: Sign, own: Fact<Finish>, place: Place, pointer: string): Found[] => [
  finishOfPanel(sign),
  ...ownFinish(own, place, pointer),
]

export const FINISH: Quantities = {
  'visual.finish': {
    unit: 'kind',
    method: 'The finish of the characters and of what is behind them.',
    couldBe: ['lettering'],
    doubt: 'more',
    take: (subject) => {
      const all = letteringIn(subject)
      if (all.length === 0) return nothing(NO_LETTERING)
      const own = all.flatMap(({ lettering: { finish, place }, n }) =>
        ownFinish(finish, place, pointerOf(place, 'lettering', n, 'finish')),
      )
      // The panel is asked about once, however many parts stand on it.
      return join([finishOfPanel(subject.sign), ...own], NO_LETTERING)
    },
  },
}
