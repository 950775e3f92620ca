import { coordinate as n, escaped } from './markup.js'
import { FAIL_INK, legendLabel, OPEN_INK, pillMarkup } from './svg-marks.js'

/** The list under the drawing: what each number stands for. */

export interface LegendEntry {
  number: number
  undecided: boolean
  head: string
  /** More than the head, wrapped; empty for none. */
  text: string
}

/** Mean width of a character as a share of the text size, on the wide side, so that lines stay within the sheet. */
const CHARACTER = 0.51
const LINE = 1.4
const INDENT = 4.6
const COLUMN_GAP = 2

/** Lines of at most `most` characters, broken at blanks; a word that is longer is broken anywhere. */
export function wrapped(text: string, most: number): string[] {
  const lines: string[] = []
  let line = ''
  for (let word of text.split(/\s+/).filter((w) => w !== '')) {
    while (word.length > most) {
      if (line !== '') lines.push(line)
      line = ''
      lines.push(word.slice(0, most))
      word = word.slice(most)
    }
    if (line !== '' && line.length + 1 + word.length > most) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  if (line !== '') lines.push(line)
  return lines
}

/**
 * The legend as markup: failures over the whole width, what is undecided in two columns.
 * @returns the markup and its lower edge, in millimetres
 */
export function legendMarkup(
  entries: LegendEntry[],
  x: number,
  y: number,
  width: number,
  size: number,
): { markup: string; bottom: number } {
  const parts: string[] = []
  let at = y
  const failing = entries.filter((entry) => !entry.undecided)
  const open = entries.filter((entry) => entry.undecided)
  const heading = (text: string, ink: string) => {
    parts.push(
      `<text x="${n(x)}" y="${n(at + size)}" font-size="${n(1.1 * size)}" font-weight="bold" fill="${ink}">${escaped(text)}</text>`,
    )
    at += 2.4 * size
  }
  if (failing.length > 0) {
    heading('✗ Fails', FAIL_INK)
    for (const entry of failing) {
      const drawn = entryMarkup(entry, x, at, width, size)
      parts.push(drawn.markup)
      at = drawn.bottom
    }
    at += 0.8 * size
  }
  if (open.length > 0) {
    heading('? Undecided', OPEN_INK)
    const column = (width - COLUMN_GAP * size) / 2
    const half = Math.ceil(open.length / 2)
    const ends = [open.slice(0, half), open.slice(half)].map((list, i) => {
      let bottom = at
      for (const entry of list) {
        const drawn = entryMarkup(entry, x + i * (column + COLUMN_GAP * size), bottom, column, size)
        parts.push(drawn.markup)
        bottom = drawn.bottom
      }
      return bottom
    })
    at = Math.max(...ends)
  }
  return { markup: parts.join('\n'), bottom: at }
}

function entryMarkup(
  entry: LegendEntry,
  x: number,
  y: number,
  width: number,
  size: number,
): { markup: string; bottom: number } {
  const label = legendLabel(entry.number, entry.undecided, size)
  const left = x + Math.max(INDENT * size, label.width + 0.8 * size)
  const most = Math.max(12, Math.floor((x + width - left) / (CHARACTER * size)))
  const head = wrapped(entry.head, most)
  const rest = wrapped(entry.text, most)
  const line = (text: string, i: number, attributes: string) =>
    `<text x="${n(left)}" y="${n(y + size * (1.2 + i * LINE))}" font-size="${n(size)}"${attributes}>${escaped(text)}</text>`
  const markup = [
    pillMarkup(label, x, y, size),
    ...head.map((text, i) => line(text, i, entry.undecided ? '' : ' font-weight="bold"')),
    ...rest.map((text, i) => line(text, head.length + i, '')),
  ]
  const height = Math.max(2.2, (head.length + rest.length) * LINE + 0.7)
  return { markup: markup.join('\n'), bottom: y + height * size }
}
