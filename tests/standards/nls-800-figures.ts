import type { Figure } from './figure.js'

/** NLS Specification 800 (February 2008), section 3.2, as the Braille Authority of North America quotes it: https://brailleauthority.org/node/63 */
export const FIGURES: Figure[] = [
  { row: '3.2/dot-height', nominalInches: 0.019, nominal: 0.48 },
  { row: '3.2/dot-base-diameter', nominalInches: 0.057, nominal: 1.44 },
  { row: '3.2/dot-spacing', nominalInches: 0.092, nominal: 2.34 },
  { row: '3.2/cell-spacing', nominalInches: 0.245, nominal: 6.2 },
  { row: '3.2/line-spacing', nominalInches: 0.4, nominal: 10 },
]
