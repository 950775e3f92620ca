import type { Figure } from './figure.js'

/**
 * Figures of Orden TMA/851/2021 (BOE-A-2021-13488), technical document, typed from the text of the BOE:
 * https://www.boe.es/buscar/act.php?id=BOE-A-2021-13488
 */
export const FIGURES: Figure[] = [
  // art. 41.1.d prints no figure. Our line for information: WCAG 2.2, 1.4.3, large text, 3:1
  { row: '41.1.d/contrast', share: { min: 3 } },
  // art. 41.2.b, table: 0,5 m 0,7 cm; 1,0 m 1,4 cm; 2,0 m 2,8 cm; 3,0 m 4,2 cm; 4,0 m 5,6 cm; >= 5,0 m 7,0 cm
  { row: '41.2.b/character-height', perDistance: { share: 7 / 500, upTo: 5000 } },
  // art. 44.1.a: "a una distancia mínima de 1 cm y máxima de 3 cm del margen izquierdo e inferior del rótulo"
  { row: '44.1.a/left-offset', millimetres: { min: 10, max: 30 } },
  { row: '44.1.a/bottom-offset', millimetres: { min: 10, max: 30 } },
]

/** The table of article 41.2.b as printed: distance and least height in millimetres; the last line is "5 m or more". */
export const TABLE_41_2_B: [number, number][] = [
  [500, 7],
  [1000, 14],
  [2000, 28],
  [3000, 42],
  [4000, 56],
  [5000, 70],
]
