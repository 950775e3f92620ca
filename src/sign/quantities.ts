/** Units of figures that are neither a length nor a share: whole things, illuminance, gloss. */
export const NUMBER_UNITS = ['count', 'lx', 'gloss-units'] as const
export type NumberUnit = (typeof NUMBER_UNITS)[number]

/**
 * What can be measured on a sign with an instrument, and whether the figure is a length, a ratio or in a unit of its own. The names are those of
 * the standards' tables; a test holds the two together.
 */
export const MEASURABLE = {
  'braille.borderClearance': 'length',
  'braille.cellSpacing': 'length',
  'braille.characterClearance': 'length',
  'braille.dotBaseDiameter': 'length',
  'braille.dotHeight': 'length',
  'braille.dotSpacing': 'length',
  'braille.lineSpacing': 'length',
  'contrast.characters': 'ratio',
  'contrast.pictogram': 'ratio',
  'contrast.reflectance': 'ratio',
  'contrast.symbol': 'ratio',
  'installation.floorSpace': 'length',
  'installation.headroom': 'length',
  'installation.highestBaseline': 'length',
  'installation.lowestBaseline': 'length',
  'installation.overhang': 'length',
  'pictogram.fieldHeight': 'length',
  'raised.borderClearance': 'length',
  'raised.characterHeight': 'length',
  'raised.characterSpacing': 'length',
  'raised.characterSpacingAtBase': 'length',
  'raised.characterSpacingInStrokes': 'ratio',
  'raised.lineSpacing': 'ratio',
  'raised.proportion': 'ratio',
  'raised.relief': 'length',
  'raised.strokeThickness': 'ratio',
  'visual.characterHeight': 'length',
  'visual.characterSpacing': 'ratio',
  'visual.heightAboveFloor': 'length',
  'visual.lineSpacing': 'ratio',
  'visual.proportion': 'ratio',
  'visual.strokeThickness': 'ratio',
} as const satisfies Record<string, 'length' | 'ratio' | NumberUnit>

export type MeasurableQuantity = keyof typeof MEASURABLE
export const MEASURABLE_QUANTITIES = Object.keys(MEASURABLE) as MeasurableQuantity[]
