import type { Figure } from './figure.js'

/**
 * California Building Code, chapter 11B. Reprints in a code guide (https://corada.com, editions 2010, 2013 and 2019), and where it says so
 * beside the figure a page of a city.
 */
export const FIGURES: Figure[] = [
  // City of Palo Alto on the supplement of August 2012: 60 to 110 percent
  { row: '11B.703.2.4/proportion', share: { min: 60 / 100, max: 110 / 100 } },
  // 2013: identical to the federal 703.2.6, 15 percent maximum
  { row: '11B.703.2.6/stroke-thickness', share: { max: 15 / 100 } },
  // 2019, 11B-703.2.7: "1/8 inch (3.2 mm) minimum", "1/16 inch (1.6 mm)", "4 times", "3/8 inch (9.5 mm) minimum"
  { row: '11B.703.2.7/character-spacing-min', inches: { min: 1 / 8 }, millimetres: { min: 3.2 } },
  { row: '11B.703.2.7/character-spacing-max', share: { max: 4 } },
  { row: '11B.703.2.7/character-spacing-base-min', inches: { min: 1 / 16 }, millimetres: { min: 1.6 } },
  { row: '11B.703.2.7/border-clearance', inches: { min: 3 / 8 }, millimetres: { min: 9.5 } },
  // 2013, 11B-703.2.8
  { row: '11B.703.2.8/line-spacing', share: { min: 135 / 100, max: 170 / 100 } },
  // 2019, table 11B-703.3.1; the second and the third without a range, at the ends of the federal table
  { row: '11B.703.3.1/dot-base-diameter', inches: { min: 0.059, max: 0.063 }, millimetres: { min: 1.5, max: 1.6 } },
  { row: '11B.703.3.1/dot-spacing', nominalInches: 0.1, nominal: 2.5, isCapped: true },
  { row: '11B.703.3.1/cell-spacing', nominalInches: 0.3, nominal: 7.6, isCapped: true },
  { row: '11B.703.3.1/dot-height', inches: { min: 0.025, max: 0.037 }, millimetres: { min: 0.6, max: 0.9 } },
  { row: '11B.703.3.1/line-spacing', inches: { min: 0.395, max: 0.4 }, millimetres: { min: 10, max: 10.2 } },
  // 2010, 1117B.5.5 item 4: "a minimum of 3/8 inch (9.5 mm) and a maximum of 1/2 inch (12.7 mm)"
  { row: '11B.703.3.2/character-clearance', inches: { min: 3 / 8, max: 1 / 2 }, millimetres: { min: 9.5, max: 12.7 } },
  // 2013, 11B-703.5 Exception leaves the clause on strokes in force: 10 percent minimum
  { row: '11B.703.5.Exception/stroke-thickness-min', share: { min: 10 / 100 } },
  // 11B-703.5.1 prints no figure. Reading of this project: WCAG 2.2, 1.4.3, 3:1
  { row: '11B.703.5.1/contrast', share: { min: 3 } },
  // City of Palo Alto
  { row: '11B.703.5.4/proportion', share: { min: 60 / 100, max: 110 / 100 } },
  // San Francisco Fire Department: "10 percent minimum and 20 percent maximum"
  { row: '11B.703.5.7/stroke-thickness', share: { min: 10 / 100, max: 20 / 100 } },
  // 2013, 11B-703.6.1: "6 inches (152 mm)"
  { row: '11B.703.6.1/field-height', inches: { min: 6 }, millimetres: { min: 152 } },
  // Los Angeles, plan review sheet on 1115B.6 of 2007: edges 12 inches, circle 12 inches, 1/4 inch thick
  { row: '11B.703.7.2.6.1/triangle-edge', nominalInches: 12 },
  { row: '11B.703.7.2.6.2/circle-diameter', nominalInches: 12 },
  { row: '11B.703.7.2.6/thickness', nominalInches: 1 / 4 },
  // section page on 11B-407.2.3.2: "2 inches (51 mm) high"
  { row: '11B.407.2.3.2/character-height', nominalInches: 2, nominal: 51 },
]
