import type { Point } from '../geometry/point.js'
import { isKnown, type Pictogram, type Place, type Sign } from '../sign/sign.js'
import { raisedLettering } from './lettering.js'
import { contrastOf, contrastRatio, RATIO_METHOD } from './contrast.js'
import { gapOf, join, nothing, pointerOf } from './facts.js'
import { finishOf } from './finish.js'
import { extentOfBox, frameOf, linesOf, type Extent } from './frame.js'
import { designatesRoom, isSymbol } from './meaning.js'
import { noDots, placeAsk } from './placing.js'
import type { Found, Quantities, Quantity, Subject } from './quantity.js'

/**
 * Pictograms and symbols of accessibility.
 *
 * Datum: the field is the whole background area set apart for the pictogram; its height is measured, not the figure's (2010 ADA
 * Standards 703.6.1 and the Access Board's guide to chapter 7). The descriptor stands directly below the field (703.6.3).
 */

type Which = 'designating' | 'symbols'

const each =
  (which: Which, measure: (pictogram: Pictogram, n: number, sign: Sign) => Found) =>
  ({ sign }: Subject): Found => {
    if (sign.pictograms.length === 0) return nothing('The sign has no pictogram.')
    const wanted = sign.pictograms
      .map((pictogram, n) => ({ pictogram, n }))
      .filter(({ pictogram }) => (which === 'symbols' ? isSymbol(pictogram, sign) : designatesRoom(pictogram)))
    const none =
      which === 'symbols'
        ? 'The sign has no symbol of accessibility.'
        : 'The pictogram informs; it does not name the room.'
    return join(
      wanted.map(({ pictogram, n }) => measure(pictogram, n, sign)),
      none,
    )
  }

function withField(pictogram: Pictogram, n: number, sign: Sign, measure: (field: Extent) => Found): Found {
  if (isKnown(pictogram.field)) return measure(extentOfBox(pictogram.field.value, frameOf(sign)))
  const ask = {
    pointer: pointerOf(pictogram.place, 'pictograms', n, 'field'),
    ask: 'Where is the field of the pictogram, and how large is it?',
    unit: 'mm' as const,
  }
  return { observations: [], gaps: [gapOf(pictogram.field, pictogram.place, ask)] }
}

const basisOfField = ({ field }: Pictogram) => (isKnown(field) ? field.basis : 'declared')

const fieldHeight = (pictogram: Pictogram, n: number, sign: Sign): Found =>
  withField(pictogram, n, sign, ({ top, bottom }) => ({
    observations: [{ value: bottom - top, basis: basisOfField(pictogram), places: [pictogram.place] }],
    gaps: [],
  }))

const inside = (field: Extent, { x, y }: Point): boolean =>
  x > field.left && x < field.right && y > field.top && y < field.bottom

/** Whether a line reaches into a field; undefined when that hangs on the line's unknown right end. */
function reachesInto(field: Extent, line: Extent): boolean | undefined {
  if (line.top >= field.bottom || line.bottom <= field.top || line.left >= field.right || line.right <= field.left)
    return false
  return Number.isFinite(line.right) || line.left > field.left ? true : undefined
}

function fieldClear(pictogram: Pictogram, n: number, sign: Sign): Found {
  return withField(pictogram, n, sign, (field) => {
    const frame = frameOf(sign)
    const intruders: Place[] = []
    const gaps: Found['gaps'] = []
    for (const block of sign.braille) {
      const dots = block.lines.flatMap((line) => line.dots.map(frame.of))
      if (dots.some((dot) => inside(field, dot))) intruders.push(block.place)
      if (dots.length === 0)
        gaps.push({
          reason: 'missing-fact',
          why: 'the place of the braille is not known',
          places: [block.place],
          ask: noDots(block.lines[0], block, sign.braille.indexOf(block)).ask,
        })
    }
    sign.lettering.forEach((lettering, m) => {
      const lines = linesOf(lettering, frame).map((line) => line && reachesInto(field, line))
      if (lines.includes(true)) intruders.push(lettering.place)
      else if (lines.includes(undefined))
        gaps.push({
          reason: 'missing-fact',
          why: 'the place of the characters is not known',
          places: [lettering.place],
          ask: placeAsk(lettering, m),
        })
    })
    if (intruders.length > 0)
      return {
        observations: [{ value: false, basis: basisOfField(pictogram), places: [pictogram.place, ...intruders] }],
        gaps: [],
      }
    return gaps.length > 0
      ? { observations: [], gaps }
      : { observations: [{ value: true, basis: basisOfField(pictogram), places: [pictogram.place] }], gaps }
  })
}

/** Whether raised characters stand below the field and under some part of it. */
function descriptor(pictogram: Pictogram, n: number, sign: Sign): Found {
  const raised = raisedLettering(sign)
  const places = [pictogram.place, ...raised.map(({ lettering }) => lettering.place)]
  if (raised.length === 0)
    return {
      observations: [{ value: false, basis: 'declared', places, remark: 'The sign has no raised characters.' }],
      gaps: [],
    }
  return withField(pictogram, n, sign, (field) => {
    const lines = raised.flatMap(({ lettering, n: m }) =>
      linesOf(lettering, frameOf(sign)).map((extent) => ({ extent, lettering, m })),
    )
    const under = lines.filter(
      ({ extent }) => extent && extent.top >= field.bottom && extent.left < field.right && extent.right > field.left,
    )
    const read = under.filter(({ lettering }) => isKnown(lettering.text))
    if (read.length > 0) return { observations: [{ value: true, basis: basisOfField(pictogram), places }], gaps: [] }
    const unread = lines.find(({ lettering }) => !isKnown(lettering.text))
    if (unread)
      return { observations: [], gaps: [{ reason: 'unreadable', why: 'the characters were not read', places }] }
    const unplaced = lines.find(({ extent }) => extent === undefined)
    if (unplaced) {
      return {
        observations: [],
        gaps: [
          {
            reason: 'missing-fact',
            why: 'the place of the characters is not known',
            places,
            ask: placeAsk(unplaced.lettering, unplaced.m),
          },
        ],
      }
    }
    return { observations: [{ value: false, basis: basisOfField(pictogram), places }], gaps: [] }
  })
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
  'pictogram.fieldHeight': row('mm', 'Height of the field.', each('designating', fieldHeight)),
  'pictogram.fieldClear': row(
    'truth',
    'Whether characters or braille reach into the field.',
    each('designating', fieldClear),
  ),
  'pictogram.finish': row('kind', FINISH_METHOD, each('designating', finish)),
  'contrast.pictogram': row('ratio', RATIO_METHOD, each('designating', contrast)),
  'pictogram.descriptor': row(
    'truth',
    'Whether raised characters stand directly below the field.',
    each('designating', descriptor),
    {
      couldBe: ['pictogram', 'lettering'],
      doubt: 'either',
    },
  ),
  'symbol.finish': row('kind', FINISH_METHOD, each('symbols', finish)),
  'contrast.symbol': row('ratio', RATIO_METHOD, each('symbols', contrast)),
  'symbol.shape': row('truth', 'The symbol against the printed figure.', each('symbols', shape)),
}
