import { isKnown } from '../sign/sign.js'
import { gapOf, nothing, pointerOf } from './facts.js'
import { eachLettering } from './lettering.js'
import type { Quantities } from './quantity.js'

/** Capitals and small letters (2010 ADA Standards 703.2.2, 703.5.2). */

const LOWER_CASE = /[\p{Ll}\p{Lt}]/u
const UPPER_CASE = /\p{Lu}/u

function caseOf(text: string): 'upper' | 'lower' | 'mixed' | undefined {
  const [lower, upper] = [LOWER_CASE.test(text), UPPER_CASE.test(text)]
  return lower && upper ? 'mixed' : lower ? 'lower' : upper ? 'upper' : undefined
}

/** The case of the letters, as `read` wants it. */
const letterCase = (read: (found: 'upper' | 'lower' | 'mixed') => string | boolean) =>
  eachLettering((lettering, n) => {
    const { text, place } = lettering
    if (!isKnown(text)) {
      return {
        observations: [],
        gaps: [
          gapOf(text, place, { pointer: pointerOf(place, 'lettering', n, 'text'), ask: 'What do the characters say?' }),
        ],
      }
    }
    const found = caseOf(text.value)
    if (found === undefined) return nothing('The text has no letters, only figures and signs.')
    const remark = `The characters read “${text.value}”.`
    return { observations: [{ value: read(found), basis: text.basis, places: [place], remark }], gaps: [] }
  })

export const LETTER_CASE: Quantities = {
  'raised.case': {
    unit: 'truth',
    method: 'Every letter is looked at.',
    couldBe: ['lettering'],
    doubt: 'more',
    take: letterCase((found) => found === 'upper'),
  },
  'visual.case': {
    unit: 'kind',
    method: 'Every letter is looked at.',
    couldBe: ['lettering'],
    doubt: 'more',
    take: letterCase((found) => found),
  },
}
