import { BLANK, cellWords } from './cells.js'

/**
 * Capitals passages: three capital signs before three or more capitalised symbols-sequences, ended by a terminator.
 * Source: The Rules of Unified English Braille, 2nd edition 2013, sections 8.5 (passage) and 8.6 (terminator).
 */
export const CAPITAL = '⠠'
export const PASSAGE = '⠠⠠⠠'
export const TERMINATOR = '⠠⠄'
export const GRADE_1 = '⠰'

export interface PassageWord {
  /** The word's cells; within a passage without the passage's own signs, that is, as if in lower case. */
  cells: string
  inPassage: boolean
}

/** The words of a run of cells, each known to stand inside a capitals passage or not. */
export function wordsOf(cells: string): PassageWord[] {
  let inPassage = false
  return cellWords(cells).map((word) => {
    if (!inPassage && !word.includes(PASSAGE)) return { cells: word, inPassage: false }
    const bare = word.replace(PASSAGE, '').replace(TERMINATOR, '')
    inPassage = !word.includes(TERMINATOR)
    return { cells: bare, inPassage: true }
  })
}

/**
 * Puts back the grade 1 signs that the engine leaves out inside a capitals passage (204B there loses the sign that keeps
 * B from reading as a digit; section 6.5 of the Rules asks for it). The lower-case translation of the same text
 * has them, and within a passage the two differ by the capital signs alone.
 * @returns undefined when the two translations cannot be laid upon each other.
 */
export function repairPassages(cells: string, lowerCells: string): string | undefined {
  const words = cells.split(BLANK)
  const lowerWords = lowerCells.split(BLANK)
  if (words.length !== lowerWords.length) return undefined
  let inPassage = false
  const repaired: string[] = []
  for (const [index, word] of words.entries()) {
    if (!inPassage && !word.includes(PASSAGE)) {
      repaired.push(word)
      continue
    }
    const whole = overlay(word, lowerWords[index] ?? '')
    if (whole === undefined) return undefined
    repaired.push(whole)
    inPassage = !word.includes(TERMINATOR)
  }
  return repaired.join(BLANK)
}

/** `lower` with the passage signs of `word` at their places; undefined when the words differ in anything else. */
function overlay(word: string, lower: string): string | undefined {
  let out = ''
  let at = 0
  for (let i = 0; i < word.length;) {
    if (word.startsWith(PASSAGE, i)) {
      out += PASSAGE
      i += PASSAGE.length
    } else if (word[i] === lower[at]) {
      out += word[i]
      i += 1
      at += 1
    } else if (word.startsWith(TERMINATOR, i)) {
      out += TERMINATOR
      i += TERMINATOR.length
    } else if (lower[at] === GRADE_1) {
      out += GRADE_1
      at += 1
    } else return undefined
  }
  return at === lower.length ? out : undefined
}
