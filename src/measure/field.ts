import type { Box } from '../geometry/box.js'
import { uprightOf } from '../geometry/upright.js'
import { isKnown, type Known, type Pictogram, type Sign, type Unknown } from '../sign/sign.js'
import { gapOf, pointerOf } from './facts.js'
import { extentOfBox, extentOfOutlines, frameOf, isLevelWith, type Extent, type Frame } from './frame.js'
import type { Found } from './quantity.js'

/** The field of a pictogram: the whole background area set apart for it. */

export function withField(pictogram: Pictogram, n: number, sign: Sign, measure: (field: Extent) => Found): Found {
  if (isKnown(pictogram.field)) {
    const extent = extentOfField(pictogram, pictogram.field, frameOf(sign))
    return extent ? measure(extent) : { observations: [], gaps: [gapOf(ASKEW, pictogram.place)] }
  }
  const ask = {
    pointer: pointerOf(pictogram.place, 'pictograms', n, 'field'),
    ask: 'Where is the field of the pictogram, and how large is it?',
    unit: 'mm' as const,
  }
  return { observations: [], gaps: [gapOf(pictogram.field, pictogram.place, ask)] }
}

export const ASKEW: Unknown = { unknown: 'unreadable', why: 'the characters run neither along nor across the field' }

/** The field in the frame; undefined where it is drawn with sides that do not run with the frame. */
export function extentOfField({ outlines }: Pictogram, field: Known<Box>, frame: Frame): Extent | undefined {
  const outline = field.basis === 'drawn' ? outlines?.field : undefined
  if (!outline || frame.rotation % 90 === 0) return extentOfBox(field.value, frame)
  const { rotation, isSided } = uprightOf(outline, field.value)
  return isSided && !isLevelWith(frame.rotation, rotation) ? undefined : extentOfOutlines([outline], frame)
}

/** The figure in the frame; undefined when it is not drawn. */
export const extentOfFigure = ({ figure, outlines }: Pictogram, frame: Frame): Extent | undefined =>
  frame.rotation % 90 === 0 || !outlines
    ? figure && extentOfBox(figure, frame)
    : extentOfOutlines(outlines.figure, frame)

export const basisOfField = ({ field }: Pictogram) => (isKnown(field) ? field.basis : 'declared')
