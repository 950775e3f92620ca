import type { Judgement } from '../judge/finding.js'

/** What is so where a plain yes was asked for and is not there: a sentence for each such quantity. */
const NOT_MET: Record<string, string> = {
  'braille.repeatsRaisedText': 'The raised characters are not repeated in braille.',
  'braille.wording': 'The braille does not say the raised text.',
  'braille.contracted': 'The braille is not contracted (grade 2).',
  'braille.capitals':
    'A capital sign stands elsewhere than before the first word of a sentence, a proper noun or name, a single letter, initials or an acronym.',
  'braille.controlWords': 'The braille is not what the table of the standard gives for this control.',
  'raised.case': 'The raised letters are not all capitals.',
  'sign.tactileCharacters': 'Raised characters are asked for.',
  'pictogram.fieldClear': 'Characters or braille stand in the field of the pictogram.',
  'pictogram.descriptor':
    'No descriptor in raised characters and braille stands directly below the field of the pictogram.',
}

const LIES_OTHERWISE = 'The braille says the raised text, but does not lie as the raised text does.'

/** The sentence for a failed row; undefined for a quantity that has none of its own. */
export function notMet({ requirement, decisive }: Judgement): string | undefined {
  const lying = decisive.some(({ context }) => context?.['lying'] !== undefined)
  return lying ? LIES_OTHERWISE : NOT_MET[requirement.quantity]
}
