import type { Figure } from './figure.js'

/** Figures of the Dubai Universal Design Code, 14.3, item 11: https://accreditation.trakhees.ae/regulations/White/files/basic-html/page237.html */
export const FIGURES: Figure[] = [
  // braille at the bottom left: 1 to 3 cm from the left side and from the bottom
  { row: '14.3.11/left-offset', millimetres: { min: 10, max: 30 } },
  { row: '14.3.11/bottom-offset', millimetres: { min: 10, max: 30 } },
]
