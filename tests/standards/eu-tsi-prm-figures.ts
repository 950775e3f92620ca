import type { Figure } from './figure.js'

/** Figures of Regulation (EU) 1300/2014, annex (TSI PRM), consolidated: https://eur-lex.europa.eu/legal-content/EN/TXT/?uri=CELEX:32014R1300 */
export const FIGURES: Figure[] = [
  // 4.2.1.2.3: information on walls between 1450 mm and 1650 mm
  { row: '4.2.1.2.3/lowest-tactile', millimetres: { min: 1450 } },
  { row: '4.2.1.2.3/highest-tactile', millimetres: { max: 1650 } },
  // 4.2.1.10 prints no figure for contrast. Our line for information: WCAG 2.2, 1.4.3, large text, 3:1
  { row: '4.2.1.10/contrast', share: { min: 3 } },
  // 4.2.1.10, point 12: no more than five pictograms
  { row: '4.2.1.10/count', number: { max: 5 } },
  // appendix N.2: reading distance divided by 250, times 1.25
  { row: 'N.2/frame-height', perDistance: { share: 1.25 / 250 } },
]
