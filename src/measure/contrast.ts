import { isKnown, type Colour, type Fact, type Place } from '../sign/sign.js'
import { basisOf, gapOf, join, PANEL_POINTER, pointerOf } from './facts.js'
import { letteringIn, NO_LETTERING } from './lettering.js'
import type { Found, Quantities } from './quantity.js'
import { STANDS_IN } from './role.js'

/**
 * Contrast of characters with what is behind them.
 *
 * Contrast ratio: (L1 + 0.05) / (L2 + 0.05), L1 the lighter relative luminance (WCAG 2.2, definition of contrast ratio).
 * Reflectance contrast: (B1 - B2) / B1, B1 the light reflectance value of the lighter area, B2 of the darker (ADAAG 1991 as
 * amended to 2002, appendix A4.30.5). Both are computed from the relative luminance of the colours drawn or given, which
 * stands for the reflectance of the material: a swatch under a meter decides.
 */

const FLARE = 0.05

export function contrastRatio(a: number, b: number): number {
  const [dark, light] = a < b ? [a, b] : [b, a]
  return (light + FLARE) / (dark + FLARE)
}

/** The share by which the darker of two reflectances falls short of the lighter; 0 for two black areas. */
export function reflectanceContrast(a: number, b: number): number {
  const [dark, light] = a < b ? [a, b] : [b, a]
  return light > 0 ? (light - dark) / light : 0
}

type Formula = (a: number, b: number) => number

interface Side {
  fact: Fact<Colour>
  pointer: string
  ask: string
}

const written = ({ css, luminance }: Colour): string => css ?? `reflectance ${Math.round(luminance * 100)}`

/** The contrast of two colours at one place, or what is missing for it. */
export function contrastOf(formula: Formula, front: Side, back: Side, place: Place, more = ''): Found {
  if (isKnown(front.fact) && isKnown(back.fact)) {
    const [a, b] = [front.fact.value, back.fact.value]
    const value = formula(a.luminance, b.luminance)
    const remark = `${written(a)} on ${written(b)}.${more}`
    return { observations: [{ value, basis: basisOf(front.fact, back.fact), places: [place], remark }], gaps: [] }
  }
  const gaps = [front, back].flatMap(({ fact, pointer, ask }) =>
    isKnown(fact) ? [] : [gapOf(fact, place, { pointer, ask })],
  )
  return { observations: [], gaps }
}

const characters = (formula: Formula, method: string): Quantities[string] => ({
  unit: 'ratio',
  method,
  couldBe: ['lettering', 'colour'],
  doubt: 'more',
  take: (subject) =>
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
    ),
})

export const RATIO_METHOD = 'Contrast ratio of the two relative luminances as WCAG 2.2 defines it.'

export const CONTRAST: Quantities = {
  'contrast.characters': characters(contrastRatio, RATIO_METHOD),
  'contrast.reflectance': characters(
    reflectanceContrast,
    'Difference of the two reflectances over the lighter, estimated from the relative luminance of the colours.',
  ),
}
