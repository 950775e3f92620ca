import { BLANK, cellWords } from './cells.js'
import { casingsOf } from './casings.js'
import { wordsOf } from './passages.js'
import { expand } from './groupsigns.js'
import { plainQuotes } from './print.js'
import { spell } from './spelling.js'

/**
 * Cells to print. The engine's back-translation is no more than a source of candidates (its release reads 204A as 2041);
 * a candidate counts only when it translates forward to exactly the same cells.
 */
export interface Directions {
  /** Print to cells; undefined for a text that cannot be translated. */
  forward: (text: string) => string | undefined
  /** The engine's guess at the print. */
  back: (cells: string) => string | undefined
}

const MAX_CANDIDATES = 48
/** Hyphen, slash and dash: a word is also tried part by part round them. */
const SEPARATORS: readonly (readonly [cells: string, print: string])[] = [
  ['⠸⠌', '/'],
  ['⠠⠤', '\u2013'],
  ['⠤', '-'],
]

/** Text as signs have it; a rarer character (a prime where gg was meant) is looked at word by word first. */
const isPlain = (text: string): boolean =>
  /^[\p{L}\p{N} .,'\u2019\u2013/&()!?#+-]+$/u.test(text) && !/\p{L}[,!?()]\p{L}/u.test(text)

/** The print text of tidy cells (single blanks, none at the ends); undefined when none is found. */
export function readCells(cells: string, directions: Directions): string | undefined {
  const whole = directions.back(cells)
  const direct = whole !== undefined && isPlain(whole) ? confirmed([whole], cells, directions) : undefined
  if (direct !== undefined) return direct
  const words = wordsOf(cells).map((word) => {
    const text = readWord(word.cells, directions)
    return word.inPassage ? text?.toUpperCase() : text
  })
  if (words.includes(undefined)) return undefined
  return confirmed([words.join(' ')], cells, directions)
}

/** The print text of one word of cells; undefined when none is found. */
export function readWord(cells: string, directions: Directions): string | undefined {
  return confirmed(candidatesOf(cells, directions), cells, directions)
}

/** The first candidate that gives exactly these cells, with plain quotes when those give them too. */
function confirmed(candidates: string[], cells: string, { forward }: Directions): string | undefined {
  for (const candidate of candidates) {
    const plain = plainQuotes(candidate)
    if (forward(plain) === cells) return plain
    if (plain !== candidate && forward(candidate) === cells) return candidate
  }
  return undefined
}

function candidatesOf(word: string, directions: Directions): string[] {
  const found = [
    expand(word),
    directions.back(word),
    spell(word),
    ...partwise(word, directions),
    ...beforeNumber(word, directions),
  ]
  const texts = found.filter((text) => text !== undefined && cellWords(text).length === 1 && !text.includes(BLANK))
  return [...new Set(texts.flatMap((text) => [text ?? '', ...casingsOf(text ?? '')]))].slice(0, MAX_CANDIDATES)
}

/** Candidates from the parts of a word round its first hyphen, slash or dash. */
function partwise(word: string, directions: Directions): string[] {
  for (const [cells, print] of SEPARATORS) {
    const at = word.indexOf(cells)
    if (at <= 0 || at + cells.length >= word.length) continue
    const first = readWord(word.slice(0, at), directions)
    const rest = readWord(word.slice(at + cells.length), directions)
    if (first !== undefined && rest !== undefined) return [first + print + rest]
  }
  return []
}

/** Candidates for letters (spelled or contracted) with a number after them. */
function beforeNumber(word: string, directions: Directions): string[] {
  const at = word.indexOf('⠼')
  if (at <= 0) return []
  const number = spell(word.slice(at))
  if (number === undefined) return []
  const letters = [spell(word.slice(0, at)), directions.back(word.slice(0, at))]
  return letters.filter((text) => text !== undefined).map((text) => text + number)
}
