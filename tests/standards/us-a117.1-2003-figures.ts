import { PER_FOOT, TABLE_703_5_5 } from './ada-figures.js'
import type { ExceptionFigure, Figure } from './figure.js'

/**
 * ICC/ANSI A117.1-2003 as the Access Board's comparison prints it: 407 and 703 in the column of the International Building Code
 * (https://github.com/atbcb/usab-uswds, _ada-ibc-comparison, chapters 4 and 7).
 */
export const FIGURES: Figure[] = [
  // 407.2.3.1, 407.2.3.2: "2 inches (51 mm) minimum in height"
  { row: '407.2.3.1/character-height', inches: { min: 2 }, millimetres: { min: 51 } },
  { row: '407.2.3.2/character-height', inches: { min: 2 }, millimetres: { min: 51 } },
  // 703.3: tactile characters
  { row: '703.3.2/relief', inches: { min: 1 / 32 }, millimetres: { min: 0.8 } },
  { row: '703.3.5/character-height', inches: { min: 5 / 8, max: 2 }, millimetres: { min: 16, max: 51 } },
  { row: '703.3.6/proportion', share: { min: 55 / 100, max: 110 / 100 } },
  { row: '703.3.7.1/stroke-thickness', share: { max: 15 / 100 } },
  { row: '703.3.7.1/stroke-at-base', share: { max: 30 / 100 } },
  { row: '703.3.7.2/stroke-thickness-min', share: { min: 10 / 100 } },
  { row: '703.3.8/character-spacing-min', inches: { min: 1 / 8 }, millimetres: { min: 3.2 } },
  { row: '703.3.8/character-spacing-base-min', inches: { min: 1 / 16 }, millimetres: { min: 1.6 } },
  { row: '703.3.8/character-spacing-max', share: { max: 4 } },
  { row: '703.3.8/border-clearance', inches: { min: 3 / 8 }, millimetres: { min: 9.5 } },
  { row: '703.3.9/line-spacing', share: { min: 135 / 100, max: 170 / 100 } },
  { row: '703.3.10/raised-lowest-baseline', inches: { min: 48 }, millimetres: { min: 1220 } },
  { row: '703.3.10/highest-baseline', inches: { max: 60 }, millimetres: { max: 1525 } },
  { row: '703.3.11/floor-space', inches: { min: 18 }, millimetres: { min: 455 } },
  // 703.3.12 prints no figure. Reading of this project: WCAG 2.2, 1.4.3, 3:1
  { row: '703.3.12/contrast', share: { min: 3 } },
  // table 703.4.3
  { row: '703.4.3/dot-base-diameter', inches: { min: 0.059, max: 0.063 }, millimetres: { min: 1.5, max: 1.6 } },
  { row: '703.4.3/dot-spacing', inches: { min: 0.09, max: 0.1 }, millimetres: { min: 2.3, max: 2.5 } },
  { row: '703.4.3/cell-spacing', inches: { min: 0.241, max: 0.3 }, millimetres: { min: 6.1, max: 7.6 } },
  { row: '703.4.3/dot-height', inches: { min: 0.025, max: 0.037 }, millimetres: { min: 0.6, max: 0.9 } },
  { row: '703.4.3/line-spacing', inches: { min: 0.395, max: 0.4 }, millimetres: { min: 10, max: 10.2 } },
  { row: '703.4.4/character-clearance', inches: { min: 3 / 8 }, millimetres: { min: 9.5 } },
  { row: '703.4.4/border-clearance', inches: { min: 3 / 8 }, millimetres: { min: 9.5 } },
  { row: '703.4.5/braille-lowest-baseline', inches: { min: 48 }, millimetres: { min: 1220 } },
  { row: '703.4.5/braille-highest-baseline', inches: { max: 60 }, millimetres: { max: 1525 } },
  // table 703.2.4: the inches of table 703.5.5 of the 2010 ADA Standards, with 6, 15 and 21 feet
  {
    row: '703.2.4/character-height',
    bands: TABLE_703_5_5.map(({ upTo, height, distance }) => [upTo, height, distance]),
    perFoot: PER_FOOT,
  },
  { row: '703.2.5/proportion', share: { min: 55 / 100, max: 110 / 100 } },
  { row: '703.2.6/stroke-thickness', share: { min: 10 / 100, max: 30 / 100 } },
  { row: '703.2.7/character-spacing', share: { min: 10 / 100, max: 35 / 100 } },
  { row: '703.2.8/line-spacing', share: { min: 135 / 100, max: 170 / 100 } },
  { row: '703.2.9/height-above-floor', inches: { min: 40 }, millimetres: { min: 1015 } },
  // 703.2.10, 703.5.3 and 703.6.2 print no figure. Reading of this project: WCAG 2.2, 1.4.3 and 1.4.11, 3:1
  { row: '703.2.10/contrast', share: { min: 3 } },
  { row: '703.5.2/field-height', inches: { min: 6 }, millimetres: { min: 150 } },
  { row: '703.5.3/contrast', share: { min: 3 } },
  { row: '703.6.2/contrast', share: { min: 3 } },
]

export const EXCEPTIONS: ExceptionFigure[] = [
  // 703.3.5 Exception: "1/2 inch (13 mm) minimum"
  {
    row: '703.3.5/character-height',
    when: 'separate-visual-set',
    inches: { min: 1 / 2, max: 2 },
    millimetres: { min: 13, max: 51 },
  },
  // 703.4.4: on car controls "3/16 inch (4.8 mm) minimum"
  {
    row: '703.4.4/character-clearance',
    when: 'elevator-car-control',
    inches: { min: 3 / 16 },
    millimetres: { min: 4.8 },
  },
  { row: '703.4.4/border-clearance', when: 'elevator-car-control', inches: { min: 3 / 16 }, millimetres: { min: 4.8 } },
]
