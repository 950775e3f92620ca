import { purposeOf, UNCLEAR } from '../measure/meaning.js'
import { roleOf, saidToBeRaisedOnly } from '../measure/role.js'
import { isKnown, type Lettering, type Sign } from '../sign/sign.js'
import { DOOR_CONDITIONS } from './door-conditions.js'
import { LAYOUT_CONDITIONS } from './layout-conditions.js'
import { met as MET, notMet as not, open, type Met } from './met.js'
import { PLACE_CONDITIONS } from './place-conditions.js'
import type { Condition, LoadedScope } from './types.js'

/** Whether a row is in force for a sign: its use, and conditions that are met, not met or open. */

/** Why the row is not in force for the sign's use; undefined when it is. */
export function outOfScope({ standard, requirement }: LoadedScope, sign: Pick<Sign, 'use'>): string | undefined {
  const { uses, clause } = requirement.scope
  if (uses.includes(sign.use)) return undefined
  const aside = standard.setAside[sign.use]
  if (aside) return `${aside.text} (${aside.clause})`
  if (sign.use === 'gift') return 'A gift is no sign of a building: no code asks this of it.'
  return `Nothing puts this in force for the use “${sign.use}” (in force by ${clause} for ${uses.join(', ')}).`
}

/** One function per condition that a row or an exception may name. */
const CONDITIONS: Record<Condition, (sign: Sign, n?: number) => Met> = {
  'separate-visual-set': separateVisualSet,
  'visual-set-elsewhere': visualSetElsewhere,
  'elevator-car-control': (sign) =>
    sign.use === 'elevator-car-control' ? MET : not('The sign does not mark a car control.'),
  'destination-oriented-elevator': (sign) =>
    sign.use === 'elevator-landing'
      ? open('only a car designation of a destination-oriented elevator is concerned', sign.panel.place)
      : not('The sign is not at an elevator entrance.'),
  'main-entry-level': (sign) =>
    sign.use === 'elevator-landing'
      ? open('only the main entry level is concerned', sign.panel.place)
      : not('The sign is not at an elevator entrance.'),
  ...DOOR_CONDITIONS,
  'pictogram-designates-room': (sign) => {
    if (sign.pictograms.length === 0) return MET
    const purposes = sign.pictograms.map(purposeOf)
    const unclear = sign.pictograms[purposes.indexOf('unclear')]
    if (purposes.includes('room')) return MET
    return unclear ? open(UNCLEAR, unclear.place) : not('The pictogram informs; it does not name the room.')
  },
  'over-circulation-path': (sign) =>
    open('whether the sign hangs over a circulation path is seen at the place', sign.panel.place),
  ...LAYOUT_CONDITIONS,
  ...PLACE_CONDITIONS,
  'platform-space-limited': (sign) =>
    sign.use === 'transit-station'
      ? open('whether space is limited at the platform is seen at the station', sign.panel.place)
      : not('The sign is not at a station.'),
}

/** @param n number of the lettering that is asked about; absent: all that the sign has. */
export const conditionMet = (condition: Condition, sign: Sign, n?: number): Met => CONDITIONS[condition](sign, n)

/** All of a row's conditions: not met as soon as one is not, open as soon as one is open and none is not met. */
export function conditionsMet(conditions: Condition[], sign: Sign): Met {
  if (conditions.length === 0) return MET
  const results = conditions.map((condition) => conditionMet(condition, sign))
  return results.find(({ met }) => met === false) ?? results.find(({ met }) => met === 'open') ?? MET
}

const squeeze = (text: string): string => text.toUpperCase().replace(/\s+/gu, ' ').trim()

const textOf = ({ text }: Lettering): string | undefined => (isKnown(text) ? squeeze(text.value) : undefined)

/**
 * Raised characters that have a visual text of the same words on the sign; another sign may carry it too, which is not seen here.
 * Characters that serve both touch and sight have none, whatever else is on the sign.
 */
function separateVisualSet(sign: Sign, n?: number): Met {
  const asked = n === undefined ? undefined : sign.lettering[n]
  if (asked) return visualTwin(asked, sign)
  const all = sign.lettering.filter((l) => l.part !== 'visual').map((l) => visualTwin(l, sign))
  const [first] = all
  if (!first) return not('The sign has no raised characters.')
  if (all.every(({ met }) => met === first.met)) return first
  return all.find(({ met }) => met === 'open') ?? open(SOME_ONLY, sign.panel.place)
}

const SOME_ONLY = 'some of the characters have their text for sight apart, and it is not told which were measured'

function visualTwin(lettering: Lettering, sign: Sign): Met {
  if (roleOf(lettering, sign) === 'both') return visualSetElsewhere(sign)
  const text = textOf(lettering)
  const twin = text !== undefined && sign.lettering.some((l) => l.part === 'visual' && textOf(l) === text)
  return twin ? MET : open(NO_TWIN_SEEN, lettering.place)
}

const NO_TWIN_SEEN = 'whether the same text is given for sight, here or on another sign, is not known'

/** Characters described as raised, on a sign without any for sight: the set for sight may be on another sign. */
function visualSetElsewhere(sign: Sign): Met {
  const raised = saidToBeRaisedOnly(sign)
  return raised
    ? open('whether another sign gives the same text for sight is not known', raised.place)
    : not('The same characters serve touch and sight.')
}
