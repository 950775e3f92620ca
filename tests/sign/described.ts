import { SignDescription } from '../../src/sign/description.js'
import type { Translator } from '../../src/braille/translator.js'
import { TranslationError } from '../../src/braille/translator.js'

/** Stands in for the braille engine where its words do not matter: one cell for a letter, in the order of the alphabet. */
export const plainTranslator: Translator = {
  identity: {
    engine: 'plain',
    version: '1',
    tables: { 'ueb-contracted': 'plain', 'ueb-uncontracted': 'plain' },
    digest: 'sha256-plain',
  },
  toCells: (text) =>
    [...text]
      .map((character) => {
        if (character === '☃') throw new TranslationError('“☃” has no braille.')
        return character === ' ' ? '\u2800' : (LETTERS.get(character.toLowerCase()) ?? '\u283f')
      })
      .join(''),
  toText: () => undefined,
}

/** Cells of the letters (World Braille Usage, third edition: the same in all languages of Latin script). */
const LETTERS = new Map(
  [...'abcdefghijklmnopqrstuvwxyz'].map((letter, i) => [letter, [...'⠁⠃⠉⠙⠑⠋⠛⠓⠊⠚⠅⠇⠍⠝⠕⠏⠟⠗⠎⠞⠥⠧⠺⠭⠽⠵'][i] ?? '']),
)

/** A description from plain JSON, through the schema. */
export const described = (json: object): SignDescription => SignDescription.parse({ use: 'permanent-room', ...json })
