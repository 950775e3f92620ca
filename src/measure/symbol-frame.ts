import { isKnown, type Pictogram, type Sign } from '../sign/sign.js'
import { join, nothing } from './facts.js'
import { basisOfField, withField } from './field.js'
import { symbolOrNot, UNCLEAR } from './meaning.js'
import type { Found, Quantities } from './quantity.js'

/**
 * The frame of a symbol of accessibility, with the distance from which it is read, since its limit hangs on that (Regulation (EU) 1300/2014,
 * annex, appendix N.2). Datum: the height of the field, in millimetres.
 */

const NO_SYMBOL = 'The sign has no symbol of accessibility.'

function frameHeight(pictogram: Pictogram, n: number, sign: Sign): Found {
  const is = symbolOrNot(pictogram, sign)
  if (is === 'none') return nothing(NO_SYMBOL)
  const { place } = pictogram
  if (is !== 'symbol') return { observations: [], gaps: [{ reason: 'needs-judgement', why: UNCLEAR, places: [place] }] }
  return withField(pictogram, n, sign, ({ top, bottom }) => ({
    observations: [{ value: bottom - top, basis: basisOfField(pictogram), places: [place], ...beside(sign) }],
    gaps: [],
  }))
}

const beside = ({ installation: { viewingDistance } }: Sign) =>
  isKnown(viewingDistance) ? { context: { viewingDistance: viewingDistance.value } } : {}

export const SYMBOL_FRAME: Quantities = {
  'symbol.frameHeight': {
    unit: 'mm',
    method: 'Height of the field of the symbol.',
    couldBe: ['pictogram'],
    doubt: 'more',
    take: ({ sign }) =>
      join(
        sign.pictograms.map((pictogram, n) => frameHeight(pictogram, n, sign)),
        NO_SYMBOL,
      ),
    beside: ({ sign }) => beside(sign),
  },
}
