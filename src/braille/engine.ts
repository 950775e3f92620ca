import type { BrailleCode } from '../sign/sign.js'
import { BLANK, cellWords, isCells, tidyCells } from './cells.js'
import { loadLouis, type Louis } from './louis.js'
import { settleCapitals, withoutShortPassages } from './passages.js'
import { nameOf, preparePrint } from './print.js'
import { readCells } from './reading.js'
import { rememberByCode } from './remember.js'
import { TranslationError, type Translator } from './translator.js'

const TABLES: Record<BrailleCode, string> = {
  'ueb-contracted': 'en-ueb-g2.ctb',
  'ueb-uncontracted': 'en-ueb-g1.ctb',
}
/** Two capitals without a small letter between them: only there can capitals passages and words arise. */
const CAPITALS = /\p{Lu}[^\p{Ll}]*\p{Lu}/u
const BETWEEN_NUMBERS = /(?<=\p{N}) (?=\p{N})/u
const MAX_CELLS = 4000

/**
 * What the engine must get right before it is trusted. The strings are ours; the cells follow The Rules of Unified
 * English Braille, 2nd edition 2013: 10.4 (ea, ing), 6.1 (numbers), 8.3 and 8.5 (capital letter and passage),
 * 6.5 (grade 1 sign before a letter that would read as a digit) and 5.2 (a letter that stands alone).
 */
const SELF_TEST: readonly (readonly [text: string, code: BrailleCode, cells: string])[] = [
  ['reading room 204', 'ueb-contracted', '⠗⠂⠙⠬⠀⠗⠕⠕⠍⠀⠼⠃⠚⠙'],
  ['reading room 204', 'ueb-uncontracted', '⠗⠑⠁⠙⠊⠝⠛⠀⠗⠕⠕⠍⠀⠼⠃⠚⠙'],
  ['Theater B', 'ueb-contracted', '⠠⠮⠁⠞⠻⠀⠰⠠⠃'],
  ['CONSULTATION', 'ueb-contracted', '⠠⠠⠒⠎⠥⠇⠞⠁⠰⠝'],
  ['ROOM 204B WEST WING', 'ueb-contracted', '⠠⠠⠠⠗⠕⠕⠍⠀⠼⠃⠚⠙⠰⠃⠀⠺⠑⠌⠀⠺⠬⠠⠄'],
]

/**
 * The translator on liblouis. Loading takes a few tenths of a second; make one for each process or thread.
 * @throws {Error} when the engine cannot be loaded or does not pass its self-test.
 */
export function createTranslator(): Translator {
  const louis = loadLouis()
  const cellsOf = rememberByCode((text, code) => translate(louis, text, code))
  const textOf = rememberByCode((cells, code) => readBack(louis, cellsOf, cells, code))
  const translator: Translator = {
    identity: {
      engine: 'liblouis',
      version: louis.version,
      tables: { ...TABLES },
      digest: `sha256-${louis.digestOf(Object.values(TABLES))}`,
    },
    toCells: rememberByCode((text, code) => cellsOf(preparePrint(text), code)),
    toText: rememberByCode((cells, code) => textOf(tidyCells(cells), code)),
  }
  for (const [text, code, cells] of SELF_TEST) {
    const got = translator.toCells(text, code)
    if (got !== cells) throw new Error(`The braille engine writes “${text}” (${code}) as ${got}; right is ${cells}.`)
  }
  return translator
}

/**
 * Numbers parted by a blank are numbers of their own on a sign (rooms 204 206), so they are translated apart: together the engine
 * takes them for one number with a numeric space (section 6.6 of the Rules, which is about separators within one number).
 */
function translate(louis: Louis, text: string, code: BrailleCode): string {
  if (text === '') return ''
  const parts = text.split(BETWEEN_NUMBERS)
  return parts.map((part) => translatePart(louis, part, code)).join(BLANK)
}

function translatePart(louis: Louis, text: string, code: BrailleCode): string {
  const cells = rawCells(louis, text, code)
  if (!isCells(cells)) throw new TranslationError(refusal(louis, text, code))
  if (!CAPITALS.test(text)) return cells
  const pieces = withoutShortPassages(text, cells)
  if (pieces.length > 1) return pieces.map((piece) => translatePart(louis, piece, code)).join(BLANK)
  const settled = settleCapitals(text, cells, rawCells(louis, text.toLowerCase(), code))
  if (settled === undefined)
    throw new TranslationError(`The capitals of “${text}” cannot be put into braille with certainty.`)
  return settled
}

/** The engine's output with its blanks as blank cells; empty for a text that it refuses. */
function rawCells(louis: Louis, text: string, code: BrailleCode): string {
  const output = louis.translate(TABLES[code], text)
  if (output === undefined) throw new TranslationError(`The text “${text}” cannot be translated to braille.`)
  return output.replaceAll(' ', BLANK)
}

function refusal(louis: Louis, text: string, code: BrailleCode): string {
  const unknown = Array.from(text).find((character) => !isCells(rawCells(louis, character, code)))
  return unknown === undefined
    ? `The text “${text}” has no six-dot braille translation.`
    : `The character ${nameOf(unknown)} has no braille in the tables of this service.`
}

function readBack(
  louis: Louis,
  cellsOf: (text: string, code: BrailleCode) => string,
  cells: string,
  code: BrailleCode,
): string | undefined {
  if (cells === '' || cells.length > MAX_CELLS || !isCells(cells)) return undefined
  return readCells(cells, {
    forward: (text) => {
      try {
        return cellsOf(preparePrint(text), code)
      } catch (error) {
        if (error instanceof TranslationError) return undefined
        throw error
      }
    },
    back: (some) => louis.backTranslate(TABLES[code], cellWords(some).join(BLANK)),
  })
}
