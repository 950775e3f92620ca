import type { Figure } from './figure.js'

/** Figures of CSA B651-04 as a community sheet reproduces it: http://www.theincommunity.ca/english/Signage.html */
export const FIGURES: Figure[] = [
  // tactile signs: raised 0.8 mm to 1.5 mm; 16 mm to 50 mm high
  { row: 'tactile/relief', millimetres: { min: 0.8, max: 1.5 } },
  { row: 'tactile/character-height', millimetres: { min: 16, max: 50 } },
  // characters: width to height between 3:5 and 1:1; stroke to height between 1:5 and 1:10
  { row: 'characters/proportion', share: { min: 3 / 5, max: 1 } },
  { row: 'characters/stroke-thickness', share: { min: 1 / 10, max: 1 / 5 } },
  { row: 'characters.visual/proportion', share: { min: 3 / 5, max: 1 } },
  { row: 'characters.visual/stroke-thickness', share: { min: 1 / 10, max: 1 / 5 } },
  // characters: 70 percent; the formula is not printed
  { row: 'characters/reflectance-contrast', share: { min: 0.7 } },
  // table 1, without its last line, which is a misprint
  {
    row: 'table1/character-height',
    steps: [
      [750, 25],
      [1500, 50],
      [2250, 75],
      [3000, 100],
      [4500, 150],
      [6000, 200],
      [7500, 250],
    ],
  },
]
