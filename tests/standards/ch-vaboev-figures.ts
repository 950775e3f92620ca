import type { Figure } from './figure.js'

/**
 * Figures of VAböV (SR 151.342, https://fedlex.data.admin.ch/eli/cc/2016/234) and of SN 640 075 as reported by
 * https://architecturesansobstacles.ch/espace_public/ecriture-en-relief-et-en-braille/
 */
export const FIGURES: Figure[] = [
  // art. 5, para. 4: capitals at least 25 mm, pictograms at least 60 mm "pro Meter Lesedistanz"
  { row: '5.4/character-height', perDistance: { share: 25 / 1000 } },
  { row: '5.4/figure-height', perDistance: { share: 60 / 1000 } },
  // art. 5, para. 5: top line at most 160 cm; capitals at least 4 mm
  { row: '5.5/top-height', millimetres: { max: 1600 } },
  { row: '5.5/character-height', millimetres: { min: 4 } },
  // SN 640 075, annexes 13.1/13.3: relief at least 1 mm; 30 mm per metre; 13.5: Cm at least 0.7
  { row: 'SN640075.13.1/relief', millimetres: { min: 1 } },
  { row: 'SN640075.13.1/character-height', perDistance: { share: 30 / 1000 } },
  { row: 'SN640075.13.5/contrast', share: { min: 0.7 } },
]
