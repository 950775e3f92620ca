import { Refusal } from '../../refusal.js'

/** A program of ISO 6983-1 as words: a letter and a number each. Comments, line numbers and the tape marks are left out. */

export interface Block {
  /** Line of the file, from 1. */
  line: number
  words: Word[]
}

export interface Word {
  letter: string
  value: number
  column: number
}

export const PROGRAM_LIMITS = {
  bytes: 5 * 1024 * 1024,
  lines: 500_000,
  lineLength: 1000,
}

/** A number of ISO 6983-1, without an exponent. */
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)/u
const BLANK = /\s/u

/**
 * @throws {Refusal} `malformed-program` with the line and column of what is no word, `too-large` or `too-complex`
 */
export function blocksOf(bytes: Uint8Array): Block[] {
  if (bytes.length > PROGRAM_LIMITS.bytes)
    throw tooMuch('too-large', 'The program is larger than is read here.', PROGRAM_LIMITS.bytes, bytes.length)
  const lines = decoded(bytes).split(/\r\n|\n|\r/u)
  if (lines.length > PROGRAM_LIMITS.lines)
    throw tooMuch('too-complex', 'The program has more lines than are read here.', PROGRAM_LIMITS.lines, lines.length)
  const blocks: Block[] = []
  for (const [i, text] of lines.entries()) {
    if (text.length > PROGRAM_LIMITS.lineLength) throw malformed('The line is longer than is read here.', i + 1, 1)
    const words = wordsOf(text, i + 1)
    if (words.length > 0) blocks.push({ line: i + 1, words })
  }
  return blocks
}

function decoded(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return new TextDecoder('latin1').decode(bytes)
  }
}

function wordsOf(text: string, line: number): Word[] {
  const words: Word[] = []
  let at = 0
  while (at < text.length) {
    const sign = text[at]
    if (BLANK.test(sign) || sign === '%') at++
    else if (sign === ';') break
    else if (sign === '(') {
      const end = text.indexOf(')', at)
      if (end < 0) throw malformed('The comment that begins here does not end on its line.', line, at + 1)
      at = end + 1
    } else {
      const { word, end } = wordAt(text, at, line)
      if (!NOT_READ.has(word.letter)) words.push(word)
      at = end
    }
  }
  return words
}

/** Numbers of lines and of programs say nothing of the moves. */
const NOT_READ: ReadonlySet<string> = new Set(['N', 'O'])

function wordAt(text: string, at: number, line: number): { word: Word; end: number } {
  const letter = text[at].toUpperCase()
  if (letter === '/')
    throw malformed('A block that may be skipped is not read: whether it is run depends on a switch.', line, at + 1)
  if (!/^[A-Z]$/u.test(letter)) throw malformed(`“${printable(text[at])}” begins no word.`, line, at + 1)
  let from = at + 1
  while (from < text.length && BLANK.test(text[from])) from++
  const [number] = NUMBER.exec(text.slice(from, from + LONGEST_NUMBER)) ?? []
  if (number === undefined)
    throw malformed(`No number follows “${letter}”; variables and expressions are not worked out here.`, line, at + 1)
  return { word: { letter, value: Number(number), column: at + 1 }, end: from + number.length }
}

const LONGEST_NUMBER = 40

const printable = (sign: string): string => sign.replace(/[^\x20-\x7e]/u, '?')

export const malformed = (detail: string, line: number, column: number): Refusal =>
  new Refusal('malformed-program', 'The program cannot be read as drilling moves.', [{ detail, line, column }])

const tooMuch = (type: 'too-large' | 'too-complex', detail: string, limit: number, actual: number): Refusal =>
  new Refusal(type, detail, [], { limit, actual })
