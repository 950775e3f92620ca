import type { MeasureUnit } from '../measure/measurement.js'
import { isNumberUnit } from '../sign/quantities.js'
import type { Notation } from './numbers.js'

/** The trade's words for quantities: `name` follows "the" in a sentence; `plural` names take "are". */
export interface QuantityWords {
  name: string
  plural?: boolean
  notation?: Notation
  /** What a percentage is a share of. */
  of?: string
}

const OF_HEIGHT = 'of the character height'

const CHARACTER_WORDS = {
  characterHeight: { name: 'character height' },
  strokeThickness: { name: 'stroke thickness', notation: 'percent', of: OF_HEIGHT },
  proportion: { name: 'width of the letter O', notation: 'percent', of: 'of the height of the letter I' },
  characterProportion: { name: 'width of the letter O', notation: 'percent', of: 'of the height of the letter I' },
  characterSpacing: { name: 'gap between characters' },
  characterSpacingAtBase: { name: 'gap between characters at their base' },
  characterSpacingInStrokes: { name: 'gap between characters', notation: 'times', of: 'the stroke width' },
  lineSpacing: { name: 'distance of the baselines', notation: 'percent', of: OF_HEIGHT },
  borderClearance: { name: 'clear distance from the characters to the raised border' },
  finish: { name: 'finish of the characters and of their background' },
  style: { name: 'style of the typeface' },
  case: { name: 'case of the letters' },
} as const satisfies Record<string, QuantityWords>

const PAIRS = {
  characters: 'of the characters with their background',
  pictogram: 'of the pictogram with its field',
  wall: 'of the sign with the wall',
}
const FORMULAS = {
  Michelson: 'Michelson contrast',
  BowmanSapolinski: 'Bowman–Sapolinski contrast',
  Background: 'contrast relative to the background',
  Lighter: 'contrast relative to the lighter area',
  Difference: 'difference in light reflectance',
}

/** The contrast of each pair by each formula. */
function contrastWords(): Record<string, QuantityWords> {
  const words: Record<string, QuantityWords> = {}
  for (const [pair, of] of Object.entries(PAIRS))
    for (const [formula, contrast] of Object.entries(FORMULAS))
      words[`contrast.${pair}By${formula}`] = { name: `${contrast} ${of}` }
  return words
}

const WORDS: Record<string, QuantityWords> = {
  'braille.dotBaseDiameter': { name: 'dot base diameter' },
  'braille.dotHeight': { name: 'dot height' },
  'braille.dotShape': { name: 'shape of the dots' },
  'braille.dotSpacing': { name: 'dot spacing' },
  'braille.cellSpacing': { name: 'cell spacing' },
  'braille.lineSpacing': { name: 'braille line spacing' },
  'braille.domeRadius': { name: 'dome radius' },
  'braille.position': { name: 'position of the braille' },
  'braille.characterClearance': { name: 'clear distance from the braille to the raised characters' },
  'braille.borderClearance': { name: 'clear distance from the braille to the raised border' },
  'braille.variation': { name: 'variation of the braille’s sizes' },
  'braille.wordGap': { name: 'number of blank cells between words' },
  'braille.uncontracted': { name: 'grade of the braille' },
  'braille.capitalsKept': { name: 'capital signs of the braille', plural: true },
  'braille.nationalCode': { name: 'code of the braille' },
  'braille.textGap': { name: 'distance of the braille below the baseline of the text' },
  'braille.alignment': { name: 'alignment of the braille under the text' },
  'braille.leftOffset': { name: 'distance of the braille from the left edge of the panel' },
  'braille.bottomOffset': { name: 'distance of the braille from the lower edge of the panel' },
  'raised.alignment': { name: 'alignment of the raised text' },
  'raised.strokeWidth': { name: 'width of the stroke' },
  'raised.strokeAtBase': { name: 'stroke thickness at the base', notation: 'percent', of: OF_HEIGHT },
  'raised.wordSpacing': { name: 'gap between words' },
  'raised.horizontal': { name: 'direction of the raised text and the braille' },
  'sign.roundedEdges': { name: 'edge of the panel' },
  'sign.gloss': { name: 'gloss of the surface' },
  'sign.illuminance': { name: 'illuminance of the sign' },
  'sign.width': { name: 'width of the panel' },
  'sign.height': { name: 'height of the panel' },
  'border.width': { name: 'width of the border' },
  'raised.relief': { name: 'relief of the raised characters' },
  'contrast.characters': { name: 'contrast of the characters with their background', notation: 'to-one' },
  'contrast.pictogram': { name: 'contrast of the pictogram with its field', notation: 'to-one' },
  'contrast.symbol': { name: 'contrast of the symbol with its background', notation: 'to-one' },
  'contrast.reflectance': { name: 'difference in light reflectance', of: 'of that of the lighter area' },
  'contrast.lighterReflectance': { name: 'reflectance of the lighter of characters and background' },
  ...contrastWords(),
  'installation.lowestBaseline': { name: 'height of the lowest tactile baseline above the floor' },
  'installation.highestBaseline': { name: 'height of the highest tactile baseline above the floor' },
  'installation.raisedLowestBaseline': { name: 'height of the lowest raised baseline above the floor' },
  'installation.brailleBaselineLowest': { name: 'height of the lowest braille baseline above the floor' },
  'installation.brailleBaselineHighest': { name: 'height of the highest braille baseline above the floor' },
  'installation.lowestTactile': { name: 'height of the lowest raised or braille edge above the floor' },
  'installation.highestTactile': { name: 'height of the highest raised or braille edge above the floor' },
  'installation.tactileLine': { name: 'height of the line of raised characters above the floor' },
  'installation.centreHeight': { name: 'height of the middle of the sign above the floor' },
  'installation.topHeight': { name: 'height of the top line of the sign above the floor' },
  'installation.brailleHighest': { name: 'height of the highest braille dots above the floor' },
  'installation.architraveDistance': { name: 'distance of the sign from the architrave of the door' },
  'installation.jambDistance': { name: 'distance of the sign from the jamb of the door' },
  'installation.clearWall': { name: 'clear wall round the sign' },
  'installation.aboveHandle': { name: 'height of the braille above the handle of the door' },
  'installation.reach': { name: 'nearest distance that a reader can come to' },
  'installation.side': { name: 'place of the sign at the door' },
  'installation.floorSpace': { name: 'side of the clear floor space' },
  'installation.headroom': { name: 'height of the lower edge of the sign above the floor' },
  'visual.heightAboveFloor': { name: 'height of the characters above the floor' },
  'pictogram.fieldHeight': { name: 'height of the pictogram field' },
  'pictogram.fieldWidth': { name: 'width of the pictogram field' },
  'pictogram.figureHeight': { name: 'height of the pictogram’s figure' },
  'pictogram.count': { name: 'number of pictograms' },
  'symbol.triangleEdge': { name: 'edge of the triangle' },
  'symbol.circleDiameter': { name: 'diameter of the circle' },
  'symbol.thickness': { name: 'thickness of the symbol' },
  'symbol.centreHeight': { name: 'height of the symbol’s centre above the floor' },
  'symbol.doorCentreOffset': { name: 'distance of the symbol from the centreline of the door' },
  'symbol.triangleInCircle': { name: 'size of the triangle in its circle' },
  'pictogram.fieldClear': { name: 'place of the pictogram field' },
  'pictogram.descriptor': { name: 'place of the text below the pictogram field' },
  'pictogram.finish': { name: 'finish of the pictogram and its field' },
  'symbol.finish': { name: 'finish of the symbol and its background' },
}

const inWords = (name: string): string => name.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`)

const found = new Map<string, QuantityWords>()

/** The words for a quantity of a table; one that is not listed is named after itself. */
export function wordsFor(quantity: string): QuantityWords {
  const before = found.get(quantity)
  if (before) return before
  const words = findWords(quantity)
  found.set(quantity, words)
  return words
}

function findWords(quantity: string): QuantityWords {
  const own = WORDS[quantity]
  if (own) return own
  const [family = '', name = quantity] = quantity.split('.')
  const shared: QuantityWords | undefined = (CHARACTER_WORDS as Record<string, QuantityWords>)[name]
  if (!shared) return { name: inWords(name) }
  return family === 'raised' || family === 'visual' ? shared : { ...shared, name: `${family} ${shared.name}` }
}

/** How numbers of a quantity are written, given the unit it is measured in. */
export const notationFor = (quantity: string, unit: MeasureUnit): Notation =>
  unit === 'mm' ? 'length' : isNumberUnit(unit) ? unit : (wordsFor(quantity).notation ?? 'percent')

const KINDS: Record<string, string> = {
  latch: 'on the latch side of the door',
  hinge: 'on the hinge side of the door',
  'inactive-leaf': 'on the inactive leaf',
  'right-of-double-doors': 'to the right of double doors',
  'nearest-adjacent-wall': 'on the nearest adjacent wall',
  'on-door-push-side': 'on the push side of the door',
}

/** The words for a kind of an enumeration; most are words already. */
export const kindWords = (kind: string): string => KINDS[kind] ?? kind
