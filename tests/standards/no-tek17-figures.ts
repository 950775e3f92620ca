import type { ExceptionFigure, Figure } from './figure.js'

/**
 * Figures of TEK17 § 12-18 (https://www.dibk.no/regelverk/byggteknisk-forskrift-tek17/12/iii/12-18) and of the Norwegian Association of
 * the Blind (https://www.blindeforbundet.no/universell-utforming/skilt).
 */
export const FIGURES: Figure[] = [
  // § 12-18 second paragraph: luminance contrast of at least 0.8
  { row: '12.18.2/contrast', share: { min: 0.8 } },
  // association: middle at 1500 mm
  { row: 'signs/centre-height', nominal: 1500 },
  // association: short raised texts at least 25 mm; door numbers at least 50 mm
  { row: 'signs/character-height', millimetres: { min: 25 } },
  { row: 'doornumbers/character-height', millimetres: { min: 50 } },
  // association: sign to wall at least 0.8
  { row: 'wall/contrast', share: { min: 0.8 } },
  // association: indoor signs at least 300 lx
  { row: 'signs/illuminance', number: { min: 300 } },
  // association: plate of 150 x 150 mm
  { row: 'plate/width', nominal: 150 },
  { row: 'plate/height', nominal: 150 },
  // as one page of a firm of the trade lists the association's requirements
  { row: 'signs/relief', millimetres: { min: 1 } },
  { row: 'signs/dot-height', millimetres: { min: 0.6 } },
]

export const EXCEPTIONS: ExceptionFigure[] = [
  // association: signs with longer text at least 15 mm
  { row: 'signs/character-height', when: 'longer-text', millimetres: { min: 15 } },
]
