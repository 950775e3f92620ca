import type { Figure } from './figure.js'

/**
 * Figures of DIN 32976:2007-08, 3.2.2 (large setting), in a preview (http://m.mydoc123.com/p-656153.html), and of the DBSV guideline for
 * tactile lettering of 27 May 2007.
 */
export const FIGURES: Figure[] = [
  // 3.2.2: 2.7 mm; 6.6 mm; 10.8 mm; about 1.5 mm at the base of the embossing pin; words 13.2 mm apart, twice the cell distance
  { row: '3.2.2/dot-spacing', nominal: 2.7 },
  { row: '3.2.2/cell-spacing', nominal: 6.6 },
  { row: '3.2.2/line-spacing', nominal: 10.8 },
  { row: '3.2.2/dot-base-diameter', nominal: 1.5 },
  { row: '3.2.2/word-gap', number: { min: 13.2 / 6.6 - 1, max: 13.2 / 6.6 - 1 } },
  // guideline, citing DIN 32976, 3.3: normally 0.6 mm to 0.7 mm, never below 0.5 mm
  { row: '3.3/dot-height', millimetres: { min: 0.5 } },
  { row: 'guideline/dot-height', millimetres: { min: 0.6, max: 0.7 } },
]
