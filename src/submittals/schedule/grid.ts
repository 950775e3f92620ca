import type { IntakeProblem } from '../../report/set/evidence.js'
import { LONGEST_NAME } from '../../sign/text.js'

/** A schedule before anybody knows what its columns mean: cells in rows, numbered as a spreadsheet numbers them. */

export type Cell = string | number | boolean | Date | null

export interface Line {
  row: number
  cells: Cell[]
}

/** What is wrong with a file, a row or a cell; the name of the file is put in at the end. */
export type Complaint = Omit<IntakeProblem, 'file'>

export interface Grid {
  lines: Line[]
  /** What divides the cells of a line; null for a workbook. */
  delimiter: string | null
  complaints: Complaint[]
}

/** A file cannot be read as a schedule at all. The message is one for people. */
export class UnreadableSchedule extends Error {}

/** Rows of one schedule that are read; later ones are named in a problem. Ours: above any building that we know of. */
export const MOST_ROWS = 20_000
/** Columns of a row that are looked at. */
export const MOST_COLUMNS = 200
/** Characters of a cell with words; a longer one is left out. Longer than the longest text of a sign. */
export const LONGEST_CELL = 2_000
/** Characters of a cell with a name, a length, a colour or a kind. */
export const LONGEST_VALUE = LONGEST_NAME

export const aboutFile = (detail: string): Complaint => ({ row: null, column: null, detail })

export const isBlank = (cell: Cell | undefined): boolean =>
  cell === null || cell === undefined || (typeof cell === 'string' && cell.trim() === '')

/** The cell as a spreadsheet would show it in a wide column. A date has no such text: who typed it meant something else. */
export function shown(cell: Cell | undefined): string {
  if (cell === null || cell === undefined || cell instanceof Date) return ''
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE'
  return typeof cell === 'number' ? String(cell) : cell.replace(/[\u00a0\u202f]/gu, ' ').trim()
}

/** Words of a file inside a message: one line, cut where it grows long. */
export function quoted(words: string): string {
  const line = words.replace(/[\p{Cc}\p{Cs}\s]+/gu, ' ').trim()
  return `“${line.length > LONGEST_QUOTE ? `${[...line].slice(0, LONGEST_QUOTE).join('')}…` : line}”`
}
const LONGEST_QUOTE = 60
