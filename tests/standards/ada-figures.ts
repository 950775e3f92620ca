import type { ExceptionFigure, Figure } from './figure.js'

/** Table 703.5.5 in inches: the upper end of the baseline height, the height under the first distance, that distance. */
export const TABLE_703_5_5 = [
  { upTo: 70, height: 5 / 8, distance: 72 },
  { upTo: 120, height: 2, distance: 180 },
  { upTo: Infinity, height: 3, distance: 21 * 12 },
]
/** Added for each foot beyond that distance, in inches. */
export const PER_FOOT = 1 / 8

/**
 * The figures of the 2010 ADA Standards as printed, typed anew and apart from the table. Source of every line unless it says otherwise: the Access
 * Board's published text, chapter 7 (703.2 to 703.6) and chapter 4 (407.2.3); https://www.access-board.gov/ada/
 */
export const FIGURES: Figure[] = [
  // 407.2.3.1 and 407.2.3.2: "2 inches (51 mm) high minimum"
  { row: '407.2.3.1/character-height', inches: { min: 2 }, millimetres: { min: 51 } },
  { row: '407.2.3.2/character-height', inches: { min: 2 }, millimetres: { min: 51 } },
  // 703.2.1: "1/32 inch (0.8 mm) minimum"
  { row: '703.2.1/relief', inches: { min: 1 / 32 }, millimetres: { min: 0.8 } },
  // 703.2.4: "55 percent minimum and 110 percent maximum"
  { row: '703.2.4/proportion', share: { min: 0.55, max: 1.1 } },
  // 703.2.5: "5/8 inch (16 mm) minimum and 2 inches (51 mm) maximum"
  { row: '703.2.5/character-height', inches: { min: 5 / 8, max: 2 }, millimetres: { min: 16, max: 51 } },
  // 703.2.6: "15 percent maximum"
  { row: '703.2.6/stroke-thickness', share: { max: 0.15 } },
  // Access Board, guide to chapter 7: at least 10 percent recommended where the same characters are read by sight
  { row: '703.2.6/stroke-thickness-min', share: { min: 0.1 } },
  // 703.2.7: "1/8 inch (3.2 mm) minimum and 4 times the raised character stroke width maximum"; base "1/16 inch (1.6 mm)"
  { row: '703.2.7/character-spacing-min', inches: { min: 1 / 8 }, millimetres: { min: 3.2 } },
  { row: '703.2.7/character-spacing-max', share: { max: 4 } },
  { row: '703.2.7/character-spacing-base-min', inches: { min: 1 / 16 }, millimetres: { min: 1.6 } },
  // 703.2.7: "3/8 inch (9.5 mm) minimum" from raised borders and decorative elements
  { row: '703.2.7/border-clearance', inches: { min: 3 / 8 }, millimetres: { min: 9.5 } },
  // 703.2.8: "135 percent minimum and 170 percent maximum"
  { row: '703.2.8/line-spacing', share: { min: 1.35, max: 1.7 } },
  // Table 703.3.1
  { row: '703.3.1/dot-base-diameter', inches: { min: 0.059, max: 0.063 }, millimetres: { min: 1.5, max: 1.6 } },
  { row: '703.3.1/dot-spacing', inches: { min: 0.09, max: 0.1 }, millimetres: { min: 2.3, max: 2.5 } },
  { row: '703.3.1/cell-spacing', inches: { min: 0.241, max: 0.3 }, millimetres: { min: 6.1, max: 7.6 } },
  { row: '703.3.1/dot-height', inches: { min: 0.025, max: 0.037 }, millimetres: { min: 0.6, max: 0.9 } },
  { row: '703.3.1/line-spacing', inches: { min: 0.395, max: 0.4 }, millimetres: { min: 10, max: 10.2 } },
  // 703.3.2: "3/8 inch (9.5 mm) minimum"
  { row: '703.3.2/character-clearance', inches: { min: 3 / 8 }, millimetres: { min: 9.5 } },
  { row: '703.3.2/border-clearance', inches: { min: 3 / 8 }, millimetres: { min: 9.5 } },
  // 703.4.1: "48 inches (1220 mm) minimum" and "60 inches (1525 mm) maximum"
  { row: '703.4.1/lowest-baseline', inches: { min: 48 }, millimetres: { min: 1220 } },
  { row: '703.4.1/highest-baseline', inches: { max: 60 }, millimetres: { max: 1525 } },
  // 703.4.2: "18 inches (455 mm) minimum by 18 inches (455 mm) minimum"
  { row: '703.4.2/floor-space', inches: { min: 18 }, millimetres: { min: 455 } },
  // 703.5.1 prints no figure. Reading of this project: WCAG 2.2, 1.4.3, large text, 3:1
  { row: '703.5.1/contrast', share: { min: 3 } },
  // ADAAG 1991 as amended to 2002, A4.30.5: 70 percent
  { row: '703.5.1/reflectance-contrast', share: { min: 0.7 } },
  // 703.5.4, 703.5.7, 703.5.8, 703.5.9
  { row: '703.5.4/proportion', share: { min: 0.55, max: 1.1 } },
  { row: '703.5.7/stroke-thickness', share: { min: 0.1, max: 0.3 } },
  { row: '703.5.8/character-spacing', share: { min: 0.1, max: 0.35 } },
  { row: '703.5.9/line-spacing', share: { min: 1.35, max: 1.7 } },
  {
    row: '703.5.5/character-height',
    bands: TABLE_703_5_5.map(({ upTo, height, distance }) => [upTo, height, distance]),
    perFoot: PER_FOOT,
  },
  // 703.5.6: "40 inches (1015 mm) minimum"
  { row: '703.5.6/height-above-floor', inches: { min: 40 }, millimetres: { min: 1015 } },
  // 703.6.1: "6 inches (150 mm) minimum"
  { row: '703.6.1/field-height', inches: { min: 6 }, millimetres: { min: 150 } },
  // 703.6.2 and 703.7.1 print no figure. Reading of this project: WCAG 2.2, 1.4.11, graphical objects, 3:1
  { row: '703.6.2/contrast', share: { min: 3 } },
  { row: '703.7.1/contrast', share: { min: 3 } },
  // Access Board, guide to chapter 7, on 307: 12 inches from the post; 80 inches of headroom (inches only)
  { row: '307.3/post-overhang', inches: { max: 12 }, millimetres: {} },
  { row: '307.4/headroom', inches: { min: 80 }, millimetres: {} },
]

/** Exceptions that print limits of their own: 703.2.5 Exception, 703.3.2 Exception, 810.6.2. */
export const EXCEPTIONS: ExceptionFigure[] = [
  {
    row: '703.2.5/character-height',
    when: 'separate-visual-set',
    inches: { min: 1 / 2, max: 2 },
    millimetres: { min: 13, max: 51 },
  },
  {
    row: '703.3.2/character-clearance',
    when: 'elevator-car-control',
    inches: { min: 3 / 16 },
    millimetres: { min: 4.8 },
  },
  { row: '703.3.2/border-clearance', when: 'elevator-car-control', inches: { min: 3 / 16 }, millimetres: { min: 4.8 } },
  { row: '703.5.5/character-height', when: 'platform-space-limited', inches: { min: 3 }, millimetres: { min: 75 } },
]
