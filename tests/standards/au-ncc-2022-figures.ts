import type { Figure } from './figure.js'

/**
 * National Construction Code 2022, specification 15, as pages report it: https://www.disabilityaccessconsultants.com.au/raised-tactile-and-braille-signage/
 * (characters, braille), https://easybuildingcodes.com/kb/au/accessibility/luminance-contrast-requirements-for-accessibility (contrast), and pages of firms
 * of the trade that reproduce the text (heights, distance from the architrave). In millimetres.
 */
export const FIGURES: Figure[] = [
  { row: 'S15C2.a/lowest-tactile', millimetres: { min: 1200 } },
  { row: 'S15C2.a/highest-tactile', millimetres: { max: 1600 } },
  { row: 'S15C2.b/tactile-line', millimetres: { min: 1250, max: 1350 } },
  { row: 'S15C2.c.i/architrave-distance', millimetres: { min: 50, max: 300 } },
  { row: 'S15C3/relief', millimetres: { min: 1, max: 1.5 } },
  { row: 'S15C3/character-height', millimetres: { min: 15, max: 55 } },
  { row: 'S15C3/stroke-width', millimetres: { min: 2, max: 7 } },
  { row: 'S15C3/character-spacing-min', millimetres: { min: 2 } },
  { row: 'S15C3/word-spacing', millimetres: { min: 10 } },
  // S15C4: 30 percent; a border that has the contrast at least 5 mm wide
  { row: 'S15C4.a/contrast', share: { min: 30 / 100 } },
  { row: 'S15C4.a/border-width', millimetres: { min: 5 } },
  { row: 'S15C4.b/contrast', share: { min: 30 / 100 } },
  { row: 'S15C4.b/contrast-pictogram', share: { min: 30 / 100 } },
  // braille 8 mm below the bottom line of text, without a tolerance
  { row: 'S15C6/text-gap', nominal: 8 },
]
