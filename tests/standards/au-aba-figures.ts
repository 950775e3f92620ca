import type { Figure } from './figure.js'

/** Australian Braille Authority, specifications for braille on signage, https://brailleaustralia.org/?p=60; in millimetres. */
export const FIGURES: Figure[] = [
  { row: 'dots/dot-base-diameter', millimetres: { min: 1.5, max: 1.6 } },
  { row: 'dots/dot-height', millimetres: { min: 0.6, max: 0.9 } },
  { row: 'dots/dome-radius', millimetres: { min: 0.76, max: 0.81 } },
  { row: 'distances/dot-spacing', millimetres: { min: 2.3, max: 2.5 } },
  { row: 'distances/cell-spacing', millimetres: { min: 6, max: 7 } },
  { row: 'distances/line-spacing', millimetres: { min: 10, max: 11 } },
  // one blank cell between words
  { row: 'distances/word-gap', number: { min: 1, max: 1 } },
  // "must not vary by more than 1 percent" on one sign
  { row: 'introduction/variation', share: { max: 1 / 100 } },
]
