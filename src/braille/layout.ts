import { cellWords, BLANK, lineWidth, type Spacing } from './cells.js'

/** Braille broken into lines. Words are never divided: a hyphenated sign reads badly by touch (common practice, no source). */
export interface BrokenLines {
  lines: string[]
  /** Words of cells that are wider than a line by themselves; each stands alone on a line of its own. */
  tooWide: string[]
}

const WIDTH_NOISE = 1e-9

/**
 * Breaks cells at their blanks so that each line is at most `width` wide.
 * @param width millimetres from the left column of dots of the first cell to the right one of the last; undefined: one line.
 */
export function breakLines(cells: string, width: number | undefined, spacing: Spacing): BrokenLines {
  const words = cellWords(cells)
  if (width === undefined) return { lines: words.length ? [words.join(BLANK)] : [], tooWide: [] }
  const fits = (line: string): boolean => lineWidth(Array.from(line).length, spacing) <= width + WIDTH_NOISE
  const lines: string[] = []
  for (const word of words) {
    const last = lines.at(-1)
    const longer = last === undefined ? undefined : last + BLANK + word
    if (longer !== undefined && fits(longer)) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return { lines, tooWide: words.filter((word) => !fits(word)) }
}
