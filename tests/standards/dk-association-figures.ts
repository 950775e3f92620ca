import type { Figure } from './figure.js'

/** Figures of Dansk Blindesamfund, TIBS, 4.3.1 and 4.3.6: https://tibs.blind.dk/dokumentation/4-3-1-udformningen-og-placering-af-skilte */
export const FIGURES: Figure[] = [
  // 4.3.1: relief at least 0.8 mm; 16 mm to 50 mm high; pictogram 152 x 152 mm; gloss at most 40; axis at about 1500 mm
  { row: '4.3.1/relief', millimetres: { min: 0.8 } },
  { row: '4.3.1/character-height', millimetres: { min: 16, max: 50 } },
  { row: '4.3.1/field-height', nominal: 152 },
  { row: '4.3.1/field-width', nominal: 152 },
  { row: '4.3.1/gloss', number: { max: 40 } },
  { row: '4.3.1/centre-height', nominal: 1500 },
  // 4.3.6: "1.60 cm", evidently 1.60 m
  { row: '4.3.6/braille-highest', millimetres: { max: 1600 } },
]
