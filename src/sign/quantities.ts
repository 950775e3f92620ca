/**
 * What can be measured on a sign with an instrument, and whether the figure is a length or a ratio. The names are those of
 * the standards' tables; a test holds the two together.
 */
export const MEASURABLE = {
  'braille.dotBaseDiameter': 'length',
  'braille.dotHeight': 'length',
  'braille.dotSpacing': 'length',
  'braille.cellSpacing': 'length',
  'braille.lineSpacing': 'length',
  'braille.characterClearance': 'length',
  'braille.borderClearance': 'length',
  'raised.relief': 'length',
  'raised.proportion': 'ratio',
  'raised.characterHeight': 'length',
  'raised.strokeThickness': 'ratio',
  'raised.characterSpacing': 'length',
  'raised.lineSpacing': 'ratio',
  'raised.borderClearance': 'length',
  'visual.characterHeight': 'length',
  'contrast.characters': 'ratio',
  'installation.lowestBaseline': 'length',
  'installation.highestBaseline': 'length',
  'pictogram.fieldHeight': 'length',
} as const satisfies Record<string, 'length' | 'ratio'>

export type MeasurableQuantity = keyof typeof MEASURABLE
export const MEASURABLE_QUANTITIES = Object.keys(MEASURABLE) as MeasurableQuantity[]
