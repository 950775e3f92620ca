import { isKnown, type Pictogram, type Sign } from '../sign/sign.js'
import { gapOf, pointerOf } from './facts.js'
import { extentOfBox, frameOf, type Extent } from './frame.js'
import type { Found } from './quantity.js'

/** The field of a pictogram: the whole background area set apart for it. */

export function withField(pictogram: Pictogram, n: number, sign: Sign, measure: (field: Extent) => Found): Found {
  if (isKnown(pictogram.field)) return measure(extentOfBox(pictogram.field.value, frameOf(sign)))
  const ask = {
    pointer: pointerOf(pictogram.place, 'pictograms', n, 'field'),
    ask: 'Where is the field of the pictogram, and how large is it?',
    unit: 'mm' as const,
  }
  return { observations: [], gaps: [gapOf(pictogram.field, pictogram.place, ask)] }
}

export const basisOfField = ({ field }: Pictogram) => (isKnown(field) ? field.basis : 'declared')
