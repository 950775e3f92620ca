import type { Figure } from './figure.js'

/** Figures of CNIB, Clearing Our Path, tactile panels and raised print (French page): https://clearingourpath.ca */
export const FIGURES: Figure[] = [
  // centreline at 1500 mm, printed without a tolerance
  { row: 'panels/centre-height', nominal: 1500 },
  // nearest edge 140 mm to 160 mm from the jamb, latch side
  { row: 'panels/jamb-distance', millimetres: { min: 140, max: 160 } },
  // free wall of 75 mm all round
  { row: 'panels/clear-wall', millimetres: { min: 75 } },
  // raised print 0.8 mm to 1.5 mm
  { row: 'print/relief', millimetres: { min: 0.8, max: 1.5 } },
]
