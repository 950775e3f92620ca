import { backgroundContrast } from './background.js'
import { bowmanSapolinskiContrast } from './bowman-sapolinski.js'
import { reflectanceDifference } from './difference.js'
import { reflectanceContrast } from './lighter.js'
import { michelsonContrast } from './michelson.js'

/**
 * A contrast of two reflectances from 0 to 1, that of the thing first and of what is behind it second. Undefined where the formula
 * has no value.
 */
export type Formula = (thing: number, behind: number) => number | undefined

/** The formulas that a code may name beside the contrast ratio, under the names that quantities end in. */
export const FORMULAS: Record<string, { formula: Formula; method: string }> = {
  Michelson: { formula: michelsonContrast, method: 'Difference of the two reflectances over their sum (Michelson).' },
  BowmanSapolinski: {
    formula: bowmanSapolinskiContrast,
    method: 'Difference of the two reflectances times 1.25, over their sum plus 0.25 (Bowman and Sapolinski).',
  },
  Background: {
    formula: backgroundContrast,
    method: 'Difference of the two reflectances over that of the background (Weber).',
  },
  Lighter: { formula: reflectanceContrast, method: 'Difference of the two reflectances over the lighter.' },
  Difference: { formula: reflectanceDifference, method: 'Difference of the two reflectances.' },
}
