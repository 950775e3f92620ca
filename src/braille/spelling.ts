/**
 * Cells read letter by letter, as uncontracted braille with numbers: the part of Unified English Braille that room
 * numbers are written in. Source: The Rules of Unified English Braille, 2nd edition 2013, sections 4.1 (letters),
 * 5.6 and 6.1 (a number starts grade 1 mode, so no contraction follows it in the same symbols-sequence), 7.1 and 8.1.
 */
const LETTERS = '⠁⠃⠉⠙⠑⠋⠛⠓⠊⠚⠅⠇⠍⠝⠕⠏⠟⠗⠎⠞⠥⠧⠺⠭⠽⠵'
const DIGIT_CELLS = '⠚⠁⠃⠉⠙⠑⠋⠛⠓⠊'
const FIRST_LETTER = 'a'.charCodeAt(0)
const NUMBER = '⠼'
export const SIGNS: readonly (readonly [cells: string, print: string])[] = [
  ['⠐⠣', '('],
  ['⠐⠜', ')'],
  ['⠸⠌', '/'],
  ['⠈⠯', '&'],
  ['⠸⠹', '#'],
  ['⠐⠖', '+'],
  ['⠨⠴', '%'],
  ['⠈⠎', '$'],
  ['⠘⠚', '\u00b0'],
  ['⠐⠠⠤', '\u2014'],
  ['⠠⠤', '\u2013'],
  ['⠤', '-'],
  ['⠄', "'"],
  ['⠲', '.'],
  ['⠂', ','],
  ['⠒', ':'],
  ['⠖', '!'],
  ['⠦', '?'],
]
const NUMERIC_SIGNS = new Map([
  ['⠲', '.'],
  ['⠂', ','],
])

/** Modifiers before a letter (section 4.2) and the combining marks that they stand for. */
const ACCENTS = new Map([
  ['⠘⠌', '\u0301'],
  ['⠘⠡', '\u0300'],
  ['⠘⠩', '\u0302'],
  ['⠘⠒', '\u0308'],
  ['⠘⠻', '\u0303'],
  ['⠘⠯', '\u0327'],
  ['⠘⠫', '\u030a'],
])

/** The accented letter that the cells from `at` on begin with, and its cells. */
export function accented(word: string, at: number): [cells: string, print: string] | undefined {
  const mark = ACCENTS.get(word.slice(at, at + 2))
  const cell = word.charAt(at + 2)
  const letter = LETTERS.indexOf(cell)
  if (mark === undefined || cell === '' || letter < 0) return undefined
  return [word.slice(at, at + 2) + cell, (letterAt(letter) + mark).normalize('NFC')]
}

const letterAt = (index: number): string => String.fromCharCode(FIRST_LETTER + index)

const isDigit = (cell: string): boolean => cell !== '' && DIGIT_CELLS.includes(cell)

/** The literal reading of one word of cells; undefined when a cell is none of letters, digits and common signs. */
export function spell(word: string): string | undefined {
  let print = ''
  let mode: 'letters' | 'number' = 'letters'
  let capitals: 'none' | 'next' | 'run' = 'none'
  for (let at = 0; at < word.length;) {
    const cell = word.charAt(at)
    const digit = DIGIT_CELLS.indexOf(cell)
    const letter = LETTERS.indexOf(cell)
    const accent = accented(word, at)
    const sign = SIGNS.find(([cells]) => word.startsWith(cells, at))
    const point = mode === 'number' && isDigit(word.charAt(at + 1)) ? NUMERIC_SIGNS.get(cell) : undefined
    if (cell === NUMBER) {
      mode = 'number'
      at += 1
    } else if (mode === 'number' && digit >= 0) {
      print += digit
      at += 1
    } else if (point !== undefined) {
      print += point
      at += 1
    } else if (letter >= 0) {
      const small = letterAt(letter)
      print += capitals === 'none' ? small : small.toUpperCase()
      if (capitals === 'next') capitals = 'none'
      mode = 'letters'
      at += 1
    } else if (accent) {
      print += capitals === 'none' ? accent[1] : accent[1].toUpperCase()
      if (capitals === 'next') capitals = 'none'
      at += accent[0].length
    } else if (capitals === 'run' && word.startsWith('⠠⠄', at)) {
      capitals = 'none'
      at += 2
    } else if (word.startsWith('⠠⠠', at)) {
      capitals = 'run'
      mode = 'letters'
      at += 2
    } else if (sign) {
      print += sign[1]
      capitals = 'none'
      mode = 'letters'
      at += sign[0].length
    } else if (cell === '⠠') {
      capitals = 'next'
      mode = 'letters'
      at += 1
    } else if (cell === '⠰') {
      mode = 'letters'
      at += 1
    } else return undefined
  }
  return print
}
