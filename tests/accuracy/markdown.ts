/** Tables and numbers of the page. */

/** @param align one letter for each column: l(eft) or r(ight). */
export function table(align: string, head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`
  const rule = line(Array.from(align, (side) => (side === 'r' ? '---:' : '---')))
  return [line(head), rule, ...rows.map(line)].join('\n')
}

/**
 * Less than this is not told apart from nothing, micrometres: the last bits of a double are not the same everywhere.
 */
const LEAST_SHOWN = 0.01

/** Millimetres as micrometres: two digits behind the point where one would show nothing. */
export function micrometres(millimetres: number): string {
  const value = millimetres * 1000
  if (value === 0) return '0'
  return Math.abs(value) < LEAST_SHOWN ? `< ${LEAST_SHOWN}` : value.toFixed(Math.abs(value) < 1 ? 2 : 1)
}

export const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(2)} %`

export const rootMeanSquare = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length)

export const largest = (values: readonly number[]): number => values.reduce((most, v) => Math.max(most, Math.abs(v)), 0)

const WIDEST = 120
/** Words; what is quoted as code is never broken. */
const WORDS = /(?:`[^`]*`|[^\s`])+/g

/** Breaks paragraphs anew, so that lines are filled whatever numbers stand in them; tables, lists and headings stay. */
export const flowing = (text: string): string =>
  text
    .split('\n\n')
    .map((block) => (/^[|#-]/.test(block) ? block : filled(block.match(WORDS) ?? [])))
    .join('\n\n')

function filled(words: readonly string[]): string {
  const lines: string[] = []
  for (const word of words) {
    const last = lines.at(-1)
    if (last === undefined || last.length + 1 + word.length > WIDEST) lines.push(word)
    else lines[lines.length - 1] = `${last} ${word}`
  }
  return lines.join('\n')
}
