import { TranslationError } from './translator.js'

/**
 * Print text made ready for translation. What differs only in the way it is stored becomes the same: composed letters,
 * one kind of blank, no blanks at the ends. Nothing that a reader would see as another text is changed.
 */

/** No sign is longer; the engine's time and memory grow with the text. */
export const MAX_TEXT_CHARACTERS = 2000

/** The engine looks along a run of marks by calling itself, so that a long run exhausts the stack. */
const MARKS_IN_A_ROW = /[^\p{L}\p{N}]{30}/u

const LIGATURES = /[\ufb00-\ufb06]/gu
const BLANKS = /[\s\u0085\u200b]+/gu
const SOFT_HYPHENS = /\u00ad/gu
/** Control and format characters, surrogates, private use, unassigned; and cells, which are not print. */
const NOT_PRINT = /[\p{C}\u2800-\u28ff]/u

/**
 * @throws {TranslationError} when the text is too long or holds a character that is not print.
 */
export function preparePrint(text: string): string {
  if (text.length > MAX_TEXT_CHARACTERS) {
    throw new TranslationError(`The text has ${text.length} characters; at most ${MAX_TEXT_CHARACTERS} are translated.`)
  }
  const prepared = text
    .normalize('NFC')
    .replace(LIGATURES, (ligature) => ligature.normalize('NFKC'))
    .replace(SOFT_HYPHENS, '')
    .replace(BLANKS, ' ')
    .trim()
  const alien = NOT_PRINT.exec(prepared)?.[0]
  if (alien !== undefined)
    throw new TranslationError(`The text holds ${nameOf(alien)}, which is not a print character.`)
  if (MARKS_IN_A_ROW.test(prepared))
    throw new TranslationError('The text has too many marks in a row without a letter or digit.')
  return prepared
}

/** A character for people: itself where it can be seen, and its code point. */
export function nameOf(character: string): string {
  const code = `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`
  return /[\p{C}\p{Z}]/u.test(character) ? code : `“${character}” (${code})`
}

const SINGLE_QUOTES = /[\u2018\u2019\u201b\u02bc\u0060\u00b4\u2032]/gu
const DOUBLE_QUOTES = /[\u201c\u201d\u201f\u2033]/gu
const HYPHENS = /[\u2010\u2011\u2212]/gu
const DASHES = /[\u2012\u2013\u2014\u2015]/gu

/** Typographic quotes and hyphens as their plain forms, so that two spellings of one text can be compared. */
export const plainQuotes = (text: string): string =>
  text.replace(SINGLE_QUOTES, "'").replace(DOUBLE_QUOTES, '"').replace(HYPHENS, '-')

/** The ways in which the same lettering may be typed: as written, with plain quotes, with hyphens for dashes. */
export function typings(text: string): string[] {
  const plain = plainQuotes(text)
  return [
    ...new Set([
      text,
      plain,
      plain.replace(DASHES, '-'),
      plain.replace(DASHES, '\u2013'),
      plain.replace(/ - /g, ' \u2013 '),
    ]),
  ]
}
