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

/** How many forward translations may be tried: so many, and so many more for each cell. */
const TRIES = 100
const TRIES_PER_CELL = 8
/** How many marks and parts of a word are taken off one after the other. */
const MAX_DEPTH = 6
/** Slash, long dash, dash and hyphen: a word is also tried part by part round them. */
const SEPARATORS: readonly (readonly [cells: string, print: string])[] = [
  ['⠸⠌', '/'],
  ['⠐⠠⠤', '\u2014'],
  ['⠠⠤', '\u2013'],
  ['⠤', '-'],
]

/** What may stand before and after a word, and is read apart from it, so that a wordsign between them is seen as one. */
const OPENINGS: readonly (readonly [cells: string, print: string])[] = [
  ['⠦', '\u201c'],
  ['⠐⠣', '('],
]
const CLOSINGS: readonly (readonly [cells: string, print: string])[] = [
  ['⠐⠜', ')'],
  ['⠄⠎', "'s"],
  ['⠴', '\u201d'],
  ['⠲', '.'],
  ['⠂', ','],
  ['⠒', ':'],
  ['⠆', ';'],
  ['⠖', '!'],
  ['⠦', '?'],
]
const NOTHING = ['', ''] as const

/** Text as signs have it; one with a rarer character (a prime where gg was meant) comes last. */
const isPlain = (text: string): boolean =>
  /^[\p{L}\p{N} .,'\u2019\u2013/&()!?#+-]+$/u.test(text) && !/\p{L}[,!?()]\p{L}/u.test(text)

/** The print text of tidy cells (single blanks, none at the ends); undefined when none is found. */
export function readCells(cells: string, unlimited: Directions): string | undefined {
  const directions = limited(unlimited, TRIES + cells.length * TRIES_PER_CELL)
  const texts: string[] = []
  for (const word of wordsOf(cells)) {
    const text = readWord(word.cells, directions)
    if (text === undefined) break
    texts.push(word.inPassage ? text.toUpperCase() : text)
  }
  return confirmed([texts.join(' ')], cells, unlimited) ?? confirmed([unlimited.back(cells)], cells, unlimited)
}

/** The same directions with an end: cells that read as nothing must not cost more than their length warrants. */
function limited({ forward, back }: Directions, tries: number): Directions {
  let left = tries
  return { back, forward: (text) => (left-- > 0 ? forward(text) : undefined) }
}

/** The print text of one word of cells; undefined when none is found. */
function readWord(cells: string, directions: Directions, depth = 0): string | undefined {
  for (const candidate of candidatesOf(cells, directions, depth)) {
    if (candidate === undefined || candidate === '' || /[\s\u2800]/u.test(candidate)) continue
    const found = confirmed([candidate, ...casingsOf(candidate)], cells, directions)
    if (found !== undefined) return found
  }
  return undefined
}

/** The first candidate that gives exactly these cells, with plain quotes when those give them too. */
function confirmed(candidates: (string | undefined)[], cells: string, { forward }: Directions): string | undefined {
  for (const candidate of new Set(candidates)) {
    if (candidate === undefined) continue
    const plain = plainQuotes(candidate)
    if (forward(plain) === cells) return plain
    if (plain !== candidate && forward(candidate) === cells) return candidate
  }
  return undefined
}

/** Guesses at a word, the likeliest first, each made only when those before it were wrong. */
function* candidatesOf(word: string, directions: Directions, depth: number): Generator<string | undefined> {
  const back = directions.back(word)
  if (depth < MAX_DEPTH) yield wrapped(word, directions, depth + 1)
  if (back !== undefined && isPlain(back)) yield back
  yield expand(word)
  if (depth < MAX_DEPTH) yield partwise(word, directions, depth + 1)
  yield* beforeNumber(word, directions)
  yield back
  yield spell(word)
}

/** A word from its parts round the first hyphen, slash or dash. */
function partwise(word: string, directions: Directions, depth: number): string | undefined {
  for (const [cells, print] of SEPARATORS) {
    const at = word.indexOf(cells)
    if (at <= 0 || at + cells.length >= word.length) continue
    const first = readWord(word.slice(0, at), directions, depth)
    const rest = readWord(word.slice(at + cells.length), directions, depth)
    if (first !== undefined && rest !== undefined) return first + print + rest
  }
  return undefined
}

/** A word with a mark before or after it, or with an apostrophe and s. */
function wrapped(word: string, directions: Directions, depth: number): string | undefined {
  const opening = OPENINGS.find(([cells]) => word.startsWith(cells)) ?? NOTHING
  const closing = CLOSINGS.find(([cells]) => word.endsWith(cells)) ?? NOTHING
  const inner = word.slice(opening[0].length, word.length - closing[0].length)
  if (inner === word || inner === '' || word.length < opening[0].length + closing[0].length) return undefined
  const text = readWord(inner, directions, depth)
  return text === undefined ? undefined : opening[1] + text + closing[1]
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
