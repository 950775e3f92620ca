import { isKnown, type Colour, type Fact, type Place } from '../../sign/sign.js'
import { basisOf, gapOf, join, PANEL_POINTER, pointerOf } from '../facts.js'
import { letteringIn, NO_LETTERING } from '../lettering.js'
import type { Found, Quantities, Quantity, Subject } from '../quantity.js'
import { STANDS_IN } from '../role.js'
import { FORMULAS, type Formula } from './formulas.js'
import { reflectanceContrast } from './lighter.js'
import { contrastRatio } from './ratio.js'

/**
 * Contrast of characters with what is behind them. All formulas are computed from the relative luminance of the colours drawn or given,
 * or from the light reflectance values given, which stand for the reflectance of the material: a swatch under a meter decides.
 */

/** A colour, and what would make it known. */
export interface Side {
  fact: Fact<Colour>
  pointer: string
  ask: string
}

const written = ({ css, luminance }: Colour): string => css ?? `reflectance ${Math.round(luminance * 100)}`

const NOTHING_BEHIND = 'the formula divides by the reflectance of the background, which is none'

/** The contrast of two colours at one place, or what is missing for it. */
export function contrastOf(formula: Formula, front: Side, back: Side, place: Place, more = ''): Found {
  if (isKnown(front.fact) && isKnown(back.fact)) {
    const [a, b] = [front.fact.value, back.fact.value]
    const value = formula(a.luminance, b.luminance)
    if (value === undefined)
      return { observations: [], gaps: [{ reason: 'needs-judgement', why: NOTHING_BEHIND, places: [place] }] }
    const remark = `${written(a)} on ${written(b)}.${more}`
    return { observations: [{ value, basis: basisOf(front.fact, back.fact), places: [place], remark }], gaps: [] }
  }
  const gaps = [front, back].flatMap(({ fact, pointer, ask }) =>
    isKnown(fact) ? [] : [gapOf(fact, place, { pointer, ask })],
  )
  return { observations: [], gaps }
}

const ofCharacters =
  (formula: Formula) =>
  (subject: Subject): Found =>
    join(
      letteringIn(subject).map(({ lettering: { part, place, colour, background }, n }) =>
        contrastOf(
          formula,
          { fact: colour, pointer: pointerOf(place, 'lettering', n, 'colour'), ask: 'What colour are the characters?' },
          { fact: background, pointer: `${PANEL_POINTER}/colour`, ask: 'What colour is behind the characters?' },
          place,
          part === 'raised' ? ` ${STANDS_IN}` : '',
        ),
      ),
      NO_LETTERING,
    )

const characters = (formula: Formula, method: string): Quantity => ({
  unit: 'ratio',
  method,
  couldBe: ['lettering', 'colour'],
  doubt: 'more',
  take: ofCharacters(formula),
})

export const RATIO_METHOD = 'Contrast ratio of the two relative luminances as WCAG 2.2 defines it.'

/** The difference over the lighter has an older name. */
const NAMED_REFLECTANCE = 'Lighter'

const byFormula = Object.entries(FORMULAS)
  .filter(([name]) => name !== NAMED_REFLECTANCE)
  .map(([name, { formula, method }]): [string, Quantity] => [
    `contrast.charactersBy${name}`,
    characters(formula, method),
  ])

export const CONTRAST: Quantities = {
  'contrast.characters': characters(contrastRatio, RATIO_METHOD),
  'contrast.reflectance': characters(
    reflectanceContrast,
    'Difference of the two reflectances over the lighter, estimated from the relative luminance of the colours.',
  ),
  'contrast.lighterReflectance': characters(Math.max, 'Reflectance of the lighter of characters and background.'),
  ...Object.fromEntries(byFormula),
}
