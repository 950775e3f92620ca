import { isKnown, type Border, type Sign } from '../../sign/sign.js'
import { INSTALLATION_POINTER, installationPlace, join, PANEL_POINTER, pointerOf } from '../facts.js'
import type { Gap, Observation } from '../measurement.js'
import type { Found, Quantities, Quantity, Subject } from '../quantity.js'
import { contrastOf, type Side } from './contrast.js'
import { FORMULAS, type Formula } from './formulas.js'

/**
 * Contrast of pictograms with their field, and of the sign with the wall round it, by every formula. Against the wall stands the panel
 * or a border, whichever contrasts more (NCC 2022, S15C4(a): background, fill or border); how wide a border must be for that is another row.
 */

const ofPictograms =
  (formula: Formula) =>
  ({ sign }: Subject): Found =>
    join(
      sign.pictograms.map(({ colour, fieldColour, place }, n) =>
        contrastOf(
          formula,
          {
            fact: colour,
            pointer: pointerOf(place, 'pictograms', n, 'colour'),
            ask: 'What colour is the pictogram?',
          },
          {
            fact: fieldColour,
            pointer: pointerOf(place, 'pictograms', n, 'fieldColour'),
            ask: 'What colour is its field?',
          },
          place,
        ),
      ),
      'The sign has no pictogram.',
    )

const wallOf = ({ installation }: Sign): Side => ({
  fact: installation.wallColour,
  pointer: `${INSTALLATION_POINTER}/wallColour`,
  ask: 'What colour is the wall round the sign?',
})

const numberOf = ({ value }: Observation): number => (typeof value === 'number' ? value : -Infinity)

/** The greatest of the contrasts that are known; where others may be greater, at least that. */
function greatest(found: Found[]): Found {
  const known = found.flatMap(({ observations }) => observations).sort((a, b) => numberOf(b) - numberOf(a))
  const gaps = found.flatMap((one) => one.gaps)
  const [best] = known
  if (!best) return { observations: [], gaps: once(gaps) }
  const [open] = gaps
  return { observations: [open ? { ...best, atLeast: open } : best], gaps: [] }
}

/** The wall is asked for once, however many things stand on it. */
function once(gaps: Gap[]): Gap[] {
  const seen = new Set<string>()
  return gaps.filter(({ why, ask }) => {
    const key = `${why} ${ask?.pointer ?? ''}`
    return seen.has(key) ? false : seen.add(key)
  })
}

const ofWall =
  (formula: Formula) =>
  ({ sign }: Subject): Found => {
    const wall = wallOf(sign)
    const panel: Side = {
      fact: sign.panel.colour,
      pointer: `${PANEL_POINTER}/colour`,
      ask: 'What colour is the panel?',
    }
    const border = ({ colour, place }: Border, n: number): Found => {
      const side = {
        fact: colour,
        pointer: pointerOf(place, 'borders', n, 'colour'),
        ask: 'What colour is the border?',
      }
      return contrastOf(formula, side, wall, place, ' The border stands against the wall.')
    }
    const place = isKnown(wall.fact) ? sign.panel.place : installationPlace(sign)
    return greatest([contrastOf(formula, panel, wall, place), ...sign.borders.map(border)])
  }

const quantity = (method: string, couldBe: Quantity['couldBe'], take: Quantity['take']): Quantity => ({
  unit: 'ratio',
  method,
  couldBe,
  doubt: 'more',
  take,
})

export const SURROUNDINGS: Quantities = Object.fromEntries(
  Object.entries(FORMULAS).flatMap(([name, { formula, method }]): [string, Quantity][] => [
    [`contrast.pictogramBy${name}`, quantity(method, ['pictogram', 'colour'], ofPictograms(formula))],
    [`contrast.wallBy${name}`, quantity(method, ['colour'], ofWall(formula))],
  ]),
)
