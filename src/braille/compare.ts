import { BRAILLE_CODES, type BrailleCode } from '../sign/sign.js'
import { casingsOf, lowerCaseButNames, sameLetters } from './casings.js'
import { tidyCells } from './cells.js'
import { numbersApart, wordsOf, type PassageWord } from './passages.js'
import { plainQuotes, preparePrint, typings } from './print.js'
import { remember } from './remember.js'
import { TranslationError, type CellsVerdict, type Translator } from './translator.js'

/** The verdict on cells held against a print text, with the cells that were expected in each code. */
export interface Comparison extends CellsVerdict {
  expected: Record<BrailleCode, string>
}

/**
 * Whether cells say a print text. Method: the print text is translated forward, word by word and in every casing that
 * lettering leaves open (a sign in capitals does not tell where its braille has capital signs), and the cells are compared
 * exactly; no dot is ever stripped, so ⠰⠃ and ⠠⠃ stay different things.
 * @param cells six-dot cells; several lines joined with a blank.
 * @param print the lettering, in any case, with any white space.
 * @throws {TranslationError} when the print text cannot be translated.
 * @returns the same object for the same question: it is not to be changed.
 */
export function compareCells(cells: string, print: string, translator: Translator): Comparison {
  return comparerFor(translator)(cells + PARTING + print)
}

/** Parts cells and print in the key of a comparison; no cell is one. */
const PARTING = '\n'

const comparers = new WeakMap<Translator, (key: string) => Comparison>()

/** Comparisons by what is compared, kept for each translator. */
function comparerFor(translator: Translator): (key: string) => Comparison {
  const before = comparers.get(translator)
  if (before) return before
  const comparer = remember((key) => {
    const end = key.indexOf(PARTING)
    return compareAnew(key.slice(0, end), key.slice(end + PARTING.length), translator)
  })
  comparers.set(translator, comparer)
  return comparer
}

function compareAnew(cells: string, print: string, translator: Translator): Comparison {
  const found = wordsOf(numbersApart(cells))
  const text = preparePrint(print)
  const options = typings(text)
  const matches = BRAILLE_CODES.map((code) => ({ code, casing: firstMatch(found, options, code, translator) }))
  const grades = matches.filter(({ casing }) => casing !== undefined).map(({ code }) => code)
  const casing = matches.find((match) => match.casing !== undefined)?.casing ?? expectedCasing(text)
  const expected = (code: BrailleCode): string => translator.toCells(casing, code)
  return {
    saysTheSame: text !== '' && grades.length > 0,
    grades: text === '' ? [] : grades,
    expected: { 'ueb-contracted': expected('ueb-contracted'), 'ueb-uncontracted': expected('ueb-uncontracted') },
  }
}

/** Braille of lettering in capitals is in small letters, single letters apart; mixed lettering keeps its capitals. */
const expectedCasing = (text: string): string => (text === text.toUpperCase() ? lowerCaseButNames(text, []) : text)

function firstMatch(
  found: PassageWord[],
  options: string[],
  code: BrailleCode,
  translator: Translator,
): string | undefined {
  for (const option of options) {
    const words = option.split(' ')
    if (words.length !== found.length) continue
    const casings: string[] = []
    for (const [index, word] of found.entries()) {
      const casing = matchWord(word, words[index] ?? '', code, translator)
      if (casing === undefined) break
      casings.push(casing)
    }
    if (casings.length === found.length) return casings.join(' ')
  }
  return undefined
}

/** Cells of a casing; undefined when this casing cannot be translated (another one may). */
function cellsOf(text: string, code: BrailleCode, translator: Translator): string | undefined {
  try {
    return translator.toCells(text, code)
  } catch (error) {
    if (error instanceof TranslationError) return undefined
    throw error
  }
}

/**
 * The casing of a print word in which it gives these cells; undefined when it does in none. Within a passage it is written as in
 * lower case; a capital sign of its own there is one too many, which changes no word.
 */
function matchWord(found: PassageWord, word: string, code: BrailleCode, translator: Translator): string | undefined {
  const match = casingsOf(word).find((casing) => cellsOf(casing, code, translator) === found.cells)
  const written = match ?? readAs(word, found.cells, code, translator)
  return written !== undefined && found.inPassage ? word.toUpperCase() : written
}

/** What the cells read as, when that is the print word but for its casing and the form of its quotes. */
function readAs(word: string, cells: string, code: BrailleCode, translator: Translator): string | undefined {
  const read = translator.toText(cells, code)
  return read !== undefined && sameLetters(plainQuotes(read), plainQuotes(word)) ? read : undefined
}

/** A mark that no English word has between two of its letters: where a reading shows one, it is a misread contraction. */
const MARK_IN_WORD = /\p{L}[,;:!?"()\u201c\u201d]+\p{L}/u

/**
 * The codes in which cells read when nobody says what they should say; undefined when they read in none. A reading with
 * a comma, colon or the like inside a word counts only when there is no better one.
 */
export function gradesOf(cells: string, translator: Translator): BrailleCode[] | undefined {
  const readings = BRAILLE_CODES.map((code) => ({ code, text: readingOf(cells, code, translator) }))
  const read = readings.filter(({ text }) => text !== undefined)
  const plausible = read.filter(({ text }) => !MARK_IN_WORD.test(text ?? ''))
  const best = plausible.length > 0 ? plausible : read
  return best.length > 0 ? best.map(({ code }) => code) : undefined
}

/**
 * The print text of cells, word by word: unlike the translator's own reading it also reads words whose capital signs
 * are each right but are not gathered as the Rules gather them (three capitalised words without a passage sign).
 */
export function readingOf(cells: string, code: BrailleCode, translator: Translator): string | undefined {
  const whole = translator.toText(cells, code)
  if (whole !== undefined) return whole
  if (tidyCells(cells) === '') return undefined
  const words = wordsOf(numbersApart(cells)).map((word) => {
    const text = translator.toText(word.cells, code)
    return word.inPassage ? text?.toUpperCase() : text
  })
  return words.includes(undefined) ? undefined : words.join(' ')
}
