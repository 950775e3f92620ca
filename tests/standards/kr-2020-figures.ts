import type { Figure } from './figure.js'

/**
 * Korean Braille Regulations, general rule 7, as reported on 10 September 2020: https://newspim.com/news/view/20200910000150 and
 * https://newsis.com/view/NISX20200910_0001161017; in millimetres.
 */
export const FIGURES: Figure[] = [
  { row: '7/dot-height', millimetres: { min: 0.6, max: 0.9 } },
  { row: '7/dot-base-diameter', millimetres: { min: 1.5, max: 1.6 } },
  { row: '7/dot-spacing', millimetres: { min: 2.3, max: 2.5 } },
  // paper and stickers
  { row: '7/cell-spacing', millimetres: { min: 5.5, max: 6.9 } },
  // PVC
  { row: '7/cell-spacing-pvc', millimetres: { min: 5.5, max: 7.3 } },
  { row: '7/line-spacing', millimetres: { min: 10 } },
]
