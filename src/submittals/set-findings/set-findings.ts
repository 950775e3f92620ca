import type { SetFinding } from '../../report/set/evidence.js'
import type { ListedDoor } from '../upload.js'
import { brailleSpacingDiffers } from './braille-spacing-differs.js'
import type { ComparedSign } from './compared-sign.js'
import { doorWithoutSign } from './door-without-sign.js'
import { sameMark } from './same-mark.js'
import { typefacesDiffer } from './typefaces-differ.js'
import { wordingDiffers } from './wording-differs.js'

type Rule = (signs: readonly ComparedSign[], doors: readonly ListedDoor[]) => SetFinding[]

/** One rule for each kind of finding; no standard asks for any of them (common practice, no source). */
export const RULES: Record<SetFinding['kind'], Rule> = {
  'same-mark': sameMark,
  'wording-differs': wordingDiffers,
  'typefaces-differ': typefacesDiffer,
  'braille-spacing-differs': brailleSpacingDiffers,
  'door-without-sign': doorWithoutSign,
}

/** What the signs of a set show beside each other. Pure; the same set gives the same findings in the same order. */
export const setFindings = (signs: readonly ComparedSign[], doors: readonly ListedDoor[]): SetFinding[] =>
  Object.values(RULES).flatMap((rule) => rule(signs, doors))
