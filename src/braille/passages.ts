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

/** A number with numeric spaces in it (section 6.6): the sign before the first digit of each group but the first. */
const NUMBER_RUN = /⠼[⠁⠃⠉⠙⠑⠋⠛⠓⠊⠚⠂⠲⠐]*⠐[⠁⠃⠉⠙⠑⠋⠛⠓⠊⠚]/gu
const NUMERIC_SPACE = /⠐(?=[⠁⠃⠉⠙⠑⠋⠛⠓⠊⠚])/gu

/** The same cells with each numeric space as a blank and a new number sign: groups of digits as numbers of their own. */
export const numbersApart = (cells: string): string =>
  cells.replace(NUMBER_RUN, (run) => run.replace(NUMERIC_SPACE, `${BLANK}⠼`))

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

const LEAST_WORDS_IN_PASSAGE = 3

/**
 * A text cut so that no piece holds a passage of fewer than three words with letters: the engine also counts numbers and signs
 * (ROOM 204 B), the Rules do not (8.4.2, SWIFT & CO.). One piece when there is no such passage; words of the others stay whole.
 */
export function withoutShortPassages(text: string, cells: string): string[] {
  const prints = text.split(' ')
  const words = cells.split(BLANK)
  if (words.length !== prints.length) return [text]
  const pieces: string[][] = []
  let short = false
  let passage: string[] | undefined
  for (const [index, print] of prints.entries()) {
    const word = words[index] ?? ''
    if (passage === undefined && word.includes(PASSAGE)) passage = []
    if (passage === undefined) {
      pieces.push([print])
      continue
    }
    passage.push(print)
    if (!word.includes(TERMINATOR) && index < prints.length - 1) continue
    const enough = passage.filter((one) => /\p{L}/u.test(one)).length >= LEAST_WORDS_IN_PASSAGE
    short ||= !enough
    pieces.push(...(enough ? [passage] : passage.map((one) => [one])))
    passage = undefined
  }
  return short ? pieces.map((piece) => piece.join(' ')) : [text]
}

/** A word of capitals only: what stands before its first letter, and that it has two capitals or more. */
const ALL_CAPITALS = /^[^\p{L}]*\p{Lu}(?=.*\p{Lu})[^\p{Ll}]*$/u

/**
 * Puts right what the engine gets wrong in words of capitals, from the translation of the same text in lower case, where it
 * is right. The two differ by capital signs alone (section 8.1: capitals do not change the contractions). Two
 * defects are known: inside a passage the grade 1 sign that keeps the B of 204B from reading as a digit is left out (section
 * 6.5), and some capitalised words are contracted otherwise than in lower case (CONSULTATION).
 * @param text the print text, words parted by single blanks; `cells` and `lowerCells` are its translations, words parted alike.
 * @returns undefined when that cannot be done, so that nothing doubtful is handed on.
 */
export function settleCapitals(text: string, cells: string, lowerCells: string): string | undefined {
  const prints = text.split(' ')
  const words = cells.split(BLANK)
  const lowerWords = lowerCells.split(BLANK)
  if (words.length !== prints.length || lowerWords.length !== prints.length) return undefined
  let inPassage = false
  const settled = words.map((word, index) => {
    const print = prints[index] ?? ''
    const lower = lowerWords[index] ?? ''
    const within = inPassage || word.includes(PASSAGE)
    inPassage = within && !word.includes(TERMINATOR)
    if (!within && !ALL_CAPITALS.test(print)) return word
    return overlay(word, lower, within) ?? rebuilt(word, lower)
  })
  return settled.includes(undefined) ? undefined : settled.join(BLANK)
}

/**
 * `lower` with the capital signs of `word` at their places; undefined when the words differ in anything else. Outside a
 * passage a capital sign itself does what the grade 1 sign does after a number, so there the latter goes.
 */
function overlay(word: string, lower: string, inPassage: boolean): string | undefined {
  let out = ''
  let at = 0
  for (let i = 0; i < word.length;) {
    const sign = [PASSAGE, TERMINATOR, CAPITAL + CAPITAL, CAPITAL].find((signs) => word.startsWith(signs, i))
    if (word[i] === lower[at] && sign !== PASSAGE) {
      out += word[i]
      i += 1
      at += 1
    } else if (sign !== undefined) {
      out += sign
      i += sign.length
      if (!inPassage && lower[at] === GRADE_1 && word[i] !== GRADE_1) at += 1
    } else if (inPassage && lower[at] === GRADE_1) {
      out += GRADE_1
      at += 1
    } else return undefined
  }
  return at === lower.length ? out : undefined
}

/** Capital signs, but not the dash, which begins with the same dot. */
const SIGNS_AHEAD = /^⠠(?:⠠{1,2}|⠄)?(?!⠤)/u

/**
 * A word that the engine contracts otherwise in capitals, from its lower-case cells: the one stretch in which the two differ
 * is taken from the latter, which can be done as long as no capital sign stands inside that stretch.
 */
function rebuilt(word: string, lower: string): string | undefined {
  const parts: { signs: string; cell: string }[] = []
  let signs = ''
  for (let i = 0; i < word.length;) {
    const ahead = SIGNS_AHEAD.exec(word.slice(i))?.[0] ?? ''
    signs += ahead
    i += ahead.length
    if (ahead !== '') continue
    parts.push({ signs, cell: word.charAt(i) })
    signs = ''
    i += 1
  }
  const shorter = Math.min(parts.length, lower.length)
  let same = 0
  while (same < shorter && parts[same]?.cell === lower[same]) same += 1
  let sameAtEnd = 0
  while (sameAtEnd < shorter - same && parts.at(-1 - sameAtEnd)?.cell === lower.at(-1 - sameAtEnd)) sameAtEnd += 1
  const differing = parts.slice(same, parts.length - sameAtEnd)
  if (differing.length === 0 || differing.slice(1).some((part) => part.signs !== '')) return undefined
  const written = (some: typeof parts): string => some.map((part) => part.signs + part.cell).join('')
  const start = written(parts.slice(0, same)) + (differing[0]?.signs ?? '')
  const end = written(parts.slice(parts.length - sameAtEnd)) + signs
  return start + lower.slice(same, lower.length - sameAtEnd) + end
}
