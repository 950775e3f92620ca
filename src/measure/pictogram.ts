import { isKnown, type Pictogram, type Sign } from '../sign/sign.js'
import { contrastOf, RATIO_METHOD } from './contrast/contrast.js'
import { contrastRatio } from './contrast/ratio.js'
import { join, nothing, pointerOf, take } from './facts.js'
import { descriptor } from './descriptor.js'
import { fieldClear } from './field-clear.js'
import { basisOfField, extentOfFigure, withField } from './field.js'
import { finishOf } from './finish.js'
import { frameOf } from './frame.js'
import { mayDesignateRoom, symbolOrNot, UNCLEAR } from './meaning.js'
import type { Found, Quantities, Quantity, Subject } from './quantity.js'

/**
 * Pictograms and symbols of accessibility.
 *
 * Datum: the field is the whole background area set apart for the pictogram; its height is measured, not the figure's (2010 ADA
 * Standards 703.6.1 and the Access Board's guide to chapter 7). The descriptor stands directly below the field (703.6.3).
 */

type Measured = (pictogram: Pictogram, n: number, sign: Sign) => Found

/** Of pictograms that name the room, or may. */
const eachDesignating =
  (measure: Measured) =>
  ({ sign }: Subject): Found => {
    if (sign.pictograms.length === 0) return nothing(NO_PICTOGRAM)
    const found = sign.pictograms.map((pictogram, n) =>
      mayDesignateRoom(pictogram)
        ? measure(pictogram, n, sign)
        : nothing('The pictogram informs; it does not name the room.'),
    )
    return join(found, NO_PICTOGRAM)
  }

/** Of symbols of accessibility; what may be one is left to a person. */
const eachSymbol =
  (measure: Measured) =>
  ({ sign }: Subject): Found => {
    if (sign.pictograms.length === 0) return nothing(NO_PICTOGRAM)
    const found = sign.pictograms.map((pictogram, n) => {
      const is = symbolOrNot(pictogram, sign)
      if (is === 'none') return nothing('The sign has no symbol of accessibility.')
      return is === 'symbol' ? measure(pictogram, n, sign) : unclear(pictogram)
    })
    return join(found, NO_PICTOGRAM)
  }

const NO_PICTOGRAM = 'The sign has no pictogram.'

const unclear = ({ place }: Pictogram): Found => ({
  observations: [],
  gaps: [{ reason: 'needs-judgement', why: UNCLEAR, places: [place] }],
})

const fieldHeight = (pictogram: Pictogram, n: number, sign: Sign): Found =>
  withField(pictogram, n, sign, ({ top, bottom }) => ({
    observations: [{ value: bottom - top, basis: basisOfField(pictogram), places: [pictogram.place] }],
    gaps: [],
  }))

const fieldWidth = (pictogram: Pictogram, n: number, sign: Sign): Found =>
  withField(pictogram, n, sign, ({ left, right }) => ({
    observations: [{ value: right - left, basis: basisOfField(pictogram), places: [pictogram.place] }],
    gaps: [],
  }))

/** What the limit of a figure hangs on: the distance that it is read from. */
const besideDistance = ({ installation: { viewingDistance } }: Sign) =>
  isKnown(viewingDistance) ? { context: { viewingDistance: viewingDistance.value } } : {}

function figureHeight(pictogram: Pictogram, n: number, sign: Sign): Found {
  const { figureHeight: said, place } = pictogram
  const context = besideDistance(sign)
  const drawn = isKnown(said) ? undefined : extentOfFigure(pictogram, frameOf(sign))
  if (drawn) {
    const value = drawn.bottom - drawn.top
    return { observations: [{ value, basis: 'drawn', places: [place], ...context }], gaps: [] }
  }
  const pointer = pointerOf(place, 'pictograms', n, 'figureHeight')
  const found = take(said, place, { pointer, ask: 'How high is the figure of the pictogram?', unit: 'mm' })
  return { ...found, observations: found.observations.map((observation) => ({ ...observation, ...context })) }
}

/** Of every pictogram on the sign. */
const each =
  (measure: Measured) =>
  ({ sign }: Subject): Found =>
    join(
      sign.pictograms.map((pictogram, n) => measure(pictogram, n, sign)),
      NO_PICTOGRAM,
    )

const count = ({ sign: { pictograms, panel } }: Subject): Found => {
  const drawn = pictograms.some(({ place }) => place.source)
  const places = pictograms.length > 0 ? pictograms.map(({ place }) => place) : [panel.place]
  return { observations: [{ value: pictograms.length, basis: drawn ? 'drawn' : 'declared', places }], gaps: [] }
}

const finish = (pictogram: Pictogram, n: number, sign: Sign): Found =>
  join(finishOf(sign, pictogram.finish, pictogram.place, pointerOf(pictogram.place, 'pictograms', n, 'finish')), '')

const contrast = ({ colour, fieldColour, place }: Pictogram, n: number): Found =>
  contrastOf(
    contrastRatio,
    { fact: colour, pointer: pointerOf(place, 'pictograms', n, 'colour'), ask: 'What colour is the pictogram?' },
    { fact: fieldColour, pointer: pointerOf(place, 'pictograms', n, 'fieldColour'), ask: 'What colour is its field?' },
    place,
  )

/** No drawing is compared with a printed figure: a person does that. */
const shape = ({ place }: Pictogram): Found => ({
  observations: [],
  gaps: [{ reason: 'needs-judgement', why: 'the symbol is held against the printed figure by eye', places: [place] }],
})

const row = (
  unit: Quantity['unit'],
  method: string,
  take: Quantity['take'],
  more: Partial<Quantity> = {},
): Quantity => ({
  unit,
  method,
  couldBe: ['pictogram'],
  doubt: 'more',
  take,
  ...more,
})

const FINISH_METHOD = 'The finish of the pictogram and of its field.'

export const PICTOGRAM: Quantities = {
  'pictogram.fieldHeight': row('mm', 'Height of the field.', eachDesignating(fieldHeight)),
  'pictogram.fieldWidth': row('mm', 'Width of the field.', eachDesignating(fieldWidth)),
  'pictogram.figureHeight': row('mm', 'Height of the figure in the field.', each(figureHeight), {
    beside: ({ sign }) => besideDistance(sign),
  }),
  'pictogram.count': row('count', 'Pictograms on the sign.', count),
  'pictogram.fieldClear': row(
    'truth',
    'Whether characters or braille reach into the field.',
    eachDesignating(fieldClear),
  ),
  'pictogram.finish': row('kind', FINISH_METHOD, eachDesignating(finish)),
  'contrast.pictogram': row('ratio', RATIO_METHOD, eachDesignating(contrast)),
  'pictogram.descriptor': row(
    'truth',
    'Whether raised characters stand directly below the field.',
    eachDesignating(descriptor),
    {
      couldBe: ['pictogram', 'lettering'],
      doubt: 'either',
    },
  ),
  'symbol.finish': row('kind', FINISH_METHOD, eachSymbol(finish)),
  'contrast.symbol': row('ratio', RATIO_METHOD, eachSymbol(contrast)),
  'symbol.shape': row('truth', 'The symbol against the printed figure.', eachSymbol(shape)),
}
