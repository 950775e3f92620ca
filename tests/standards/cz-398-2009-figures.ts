import type { Figure } from './figure.js'

/**
 * Figures of decree 398/2009 Sb. (https://e-sbirka.gov.cz/eli/cz/sb/2009/398/2009-11-18) and of SONS
 * (https://www.sons.cz/Braillovo-pismo-a-pozemni-a-dopravni-stavby-P4008055.html), tolerances worked out in full.
 */
export const FIGURES: Figure[] = [
  // annex 3, 5.2: 200 mm above the handle
  { row: 'A3.5.2/above-handle', nominal: 200 },
  // SONS: 1.6; 0.5 ± 5 %; 2.5 ± 4 %; 6.0 ± 10 %; 10.1 ± 9 %
  { row: 'SONS/dot-base-diameter', nominal: 1.6 },
  { row: 'SONS/dot-height', millimetres: { min: 0.475, max: 0.525 } },
  { row: 'SONS/dot-spacing', millimetres: { min: 2.4, max: 2.6 } },
  { row: 'SONS/cell-spacing', millimetres: { min: 5.4, max: 6.6 } },
  { row: 'SONS/line-spacing', millimetres: { min: 9.191, max: 11.009 } },
]
