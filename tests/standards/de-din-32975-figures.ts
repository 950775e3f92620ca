import type { ExceptionFigure, Figure } from './figure.js'

/**
 * Figures of DIN 32975:2009-12 as reported by https://www.brillux.de/service/farbgestaltung/kontrastrechner/ and
 * https://www.bfb-barrierefrei-bauen.de/kontraste-geben-orientierung/. Where K follows from reflectances 0.1 is held in reserve, so that
 * 0.1 is added here.
 */
export const FIGURES: Figure[] = [
  // signs, pictograms, room numbers, information panels: K at least 0.7
  { row: 'signs/contrast', share: { min: 0.8 } },
  { row: 'pictograms/contrast', share: { min: 0.8 } },
  // writing in black and white: K at least 0.8
  { row: 'blackandwhite/contrast', share: { min: 0.9 } },
  // the lighter surface: reflectance at least 0.5
  { row: 'signs/lighter-reflectance', share: { min: 0.5 } },
]

export const EXCEPTIONS: ExceptionFigure[] = [
  { row: 'signs/contrast', when: 'character-contrast-measured', share: { min: 0.7 } },
  { row: 'pictograms/contrast', when: 'pictogram-contrast-measured', share: { min: 0.7 } },
  { row: 'blackandwhite/contrast', when: 'character-contrast-measured', share: { min: 0.8 } },
]
