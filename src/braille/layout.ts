import { cellWords, BLANK, lineWidth, type Spacing } from './cells.js'

/**
 * Braille broken into lines, between words. Only a word that is wider than a line is divided, and only at a hyphen that it has: it then
 * keeps its form, but where nothing but lower signs would stand on a side of the division (Rules of Unified English Braille 2013, 10.13).
 * Words are not divided between syllables: the Rules leave these to a dictionary, and a divided word reads badly on a sign (common
 * practice, no source).
 */
export interface BrokenLines {
  lines: string[]
  /** Words of cells that are wider than a line, also when divided; each begins on a line of its own. */
  tooWide: string[]
}

const WIDTH_NOISE = 1e-9

/**
 * Breaks cells so that each line is at most `width` wide.
 * @param width millimetres from the left column of dots of the first cell to the right one of the last; undefined: one line.
 */
export function breakLines(cells: string, width: number | undefined, spacing: Spacing): BrokenLines {
  const words = cellWords(cells)
  if (width === undefined) return { lines: words.length ? [words.join(BLANK)] : [], tooWide: [] }
  const fits = (line: string): boolean => lineWidth(Array.from(line).length, spacing) <= width + WIDTH_NOISE
  const lines: string[] = []
  const put = (piece: string, parting: string) => {
    const last = lines.at(-1)
    const longer = last === undefined ? undefined : last + parting + piece
    if (longer !== undefined && fits(longer)) lines[lines.length - 1] = longer
    else lines.push(piece)
  }
  const tooWide: string[] = []
  for (const word of words) {
    if (fits(word)) put(word, BLANK)
    else {
      const [first = word, ...others] = piecesAtHyphens(word)
      lines.push(first)
      for (const piece of others) put(piece, '')
      if (![first, ...others].every(fits)) tooWide.push(word)
    }
  }
  return { lines, tooWide }
}

/** A hyphen; after one of the cells of a dash, a minus sign or an underscore the same cell is something else (Rules, section 3 and 7.2). */
const HYPHEN = /(?<=[\u2800-\u283f])(?<![⠠⠐⠸⠰⠨⠘])⠤(?!⠤)(?=[\u2800-\u283f])/gu
/** Cells with a dot in the upper row. */
const UPPER = /[^\u2800⠂⠄⠆⠐⠒⠔⠖⠠⠢⠤⠦⠰⠲⠴⠶]/u

/** A word in the pieces between which it may be divided, each but the last with its hyphen. */
function piecesAtHyphens(word: string): string[] {
  const pieces: string[] = []
  let from = 0
  for (const { index } of word.matchAll(HYPHEN)) {
    const [piece, rest] = [word.slice(from, index + 1), word.slice(index + 1)]
    if (!UPPER.test(piece) || !UPPER.test(rest)) continue
    pieces.push(piece)
    from = index + 1
  }
  return [...pieces, word.slice(from)]
}

/** Lines of cells as running text where a word may have been divided at its hyphen: after one no blank is put. */
export const joinDivided = (lines: readonly string[]): string =>
  lines.reduce((text, line) => (text === '' ? line : text + (ENDS_IN_HYPHEN.test(text) ? '' : BLANK) + line), '')

const ENDS_IN_HYPHEN = /(?<![⠠⠐⠸⠰⠨⠘⠤\u2800])⠤$/u
