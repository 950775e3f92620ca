import type { Place, Sign } from '../sign/sign.js'
import { nothing } from './facts.js'
import type { Quantities, Quantity } from './quantity.js'

/** Matters that a code asks for without a figure: nothing measures them, so they are named for a person and never passed in silence. */

const NO_PICTOGRAM = 'The sign has no pictogram.'

/** @param places where on the sign the matter is; none: it does not arise. */
const matter = (method: string, why: string, places: (sign: Sign) => Place[], absent: string): Quantity => ({
  unit: 'truth',
  method,
  couldBe: [],
  doubt: 'more',
  take: ({ sign }) => {
    const found = places(sign)
    return found.length === 0
      ? nothing(absent)
      : { observations: [], gaps: [{ reason: 'needs-judgement', why, places: found }] }
  },
})

const pictograms = (sign: Sign): Place[] => sign.pictograms.map(({ place }) => place)
const seen = (sign: Sign): Place[] => [...sign.lettering.map(({ place }) => place), ...pictograms(sign)]

export const MATTERS: Quantities = {
  'sign.contrastWithoutFigure': matter(
    'By sight, or by the standard that the code refers to.',
    'the code asks for contrast and prints no figure',
    seen,
    'The sign has no characters and no pictogram.',
  ),
  'sign.pictogramUnderstood': matter(
    'By asking people.',
    'whether a pictogram is easy to understand is a matter of judgement',
    pictograms,
    NO_PICTOGRAM,
  ),
  'sign.symbolColours': matter(
    'By sight.',
    'the colours of the symbol are held against the printed ones by eye',
    pictograms,
    NO_PICTOGRAM,
  ),
}
