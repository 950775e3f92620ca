import type { Figure } from './figure.js'

/**
 * ADA Accessibility Guidelines of 1991. 4.10 and 4.30 as the Access Board's comparison prints them
 * (https://github.com/atbcb/usab-uswds, _ada-ibc-comparison, chapters 4 and 7); A4.30 from the appendix (_ada/adaag-1991-2002.html).
 */
export const FIGURES: Figure[] = [
  // 4.30.4: "raised 1/32 in (0.8 mm) minimum"; "at least 5/8 in (16 mm) high, but no higher than 2 in (50 mm)"; pictogram "6 in (152 mm) minimum in height"
  { row: '4.30.4/relief', inches: { min: 1 / 32 }, millimetres: { min: 0.8 } },
  { row: '4.30.4/character-height', inches: { min: 5 / 8, max: 2 }, millimetres: { min: 16, max: 50 } },
  { row: '4.30.4/field-height', inches: { min: 6 }, millimetres: { min: 152 } },
  // 4.30.5 prints no figure. Reading of this project: WCAG 2.2, 1.4.3 and 1.4.11, 3:1
  { row: '4.30.5/contrast', share: { min: 3 } },
  { row: '4.30.5/contrast-pictogram', share: { min: 3 } },
  { row: '4.30.5/contrast-symbol', share: { min: 3 } },
  // 4.30.6: "60 in (1525 mm) above the finish floor to the centerline of the sign"; "within 3 in (76 mm)"
  { row: '4.30.6/centre-height', nominalInches: 60, nominal: 1525 },
  { row: '4.30.6/reach', inches: { max: 3 }, millimetres: { max: 76 } },
  // 4.30.2: width to height "between 3:5 and 1:1", stroke to height "between 1:5 and 1:10"
  { row: '4.30.2/proportion', share: { min: 3 / 5, max: 1 } },
  { row: '4.30.2/stroke-thickness', share: { min: 1 / 10, max: 1 / 5 } },
  // 4.10.12(2): "shall comply with 4.30"
  { row: '4.10.12.2/proportion', share: { min: 3 / 5, max: 1 } },
  { row: '4.10.12.2/stroke-thickness', share: { min: 1 / 10, max: 1 / 5 } },
  // table 4.30.3: overhead "3 in (75 mm) minimum"
  { row: '4.30.3/character-height', inches: { min: 3 }, millimetres: { min: 75 } },
  // 4.10.5: "2 in (50 mm) high"
  { row: '4.10.5/character-height', nominalInches: 2, nominal: 50 },
  // A4.30.4: dot diameter .059, inter-dot .090, cells .241 across and .395 down; inches only
  { row: 'A4.30.4/dot-base-diameter', nominalInches: 0.059 },
  { row: 'A4.30.4/dot-spacing', nominalInches: 0.09 },
  { row: 'A4.30.4/cell-spacing', nominalInches: 0.241 },
  { row: 'A4.30.4/line-spacing', nominalInches: 0.395 },
  // A4.30.5: 11 to 19 degree gloss; contrast at least 70 percent
  { row: 'A4.30.5/gloss', number: { min: 11, max: 19 } },
  { row: 'A4.30.5/reflectance-contrast', share: { min: 70 / 100 } },
  // A4.30.8: 100 to 300 lux
  { row: 'A4.30.8/illuminance', number: { min: 100, max: 300 } },
]
