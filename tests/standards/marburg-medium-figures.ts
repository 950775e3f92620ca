import type { Figure } from './figure.js'

/**
 * Marburg Medium by the specification of a printer of cartons (https://br.doczz.net/doc/1264093/blindenschrift); the diameter by the
 * summary of the Hungarian federation (https://github.com/liblouis/braille-specs/pull/15). In millimetres.
 */
export const FIGURES: Figure[] = [
  { row: 'table/dot-base-diameter', nominal: 1.6 },
  { row: 'table/dot-spacing', nominal: 2.5 },
  { row: 'table/cell-spacing', nominal: 6 },
  // 12.0 mm from word to word is twice the distance of cells: one blank cell (our reading)
  { row: 'table/word-gap', number: { min: 12 / 6 - 1, max: 12 / 6 - 1 } },
  // 10.0, +0.0, -0.1
  { row: 'table/line-spacing', millimetres: { min: 9.9, max: 10 } },
]
