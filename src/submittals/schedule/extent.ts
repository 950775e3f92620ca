import { MOST_COLUMNS, UnreadableSchedule } from './grid.js'

/**
 * How far a sheet reaches, read off the addresses in its markup before a library makes a table of that size: a file of a few
 * bytes can name a cell in the last row of the last column. Addresses: ECMA-376, part 1, 18.18.7 (ST_CellRef).
 */

/** Rows and columns of a sheet in the programs that write them; what is written beyond is no sheet. */
const LAST_ROW = 1_048_576
/** Cells of the table that is made: rows times columns, the empty ones between included. */
export const MOST_CELLS = 4_000_000

/** An attribute `r`, whatever the prefix; after it the rest of the tag, so far as it is well formed, and the slash of an empty one. */
const ADDRESS =
  /(?<!xmlns)[\s:]r\s*=\s*(?:"([^"]*)"|'([^']*)')((?:\s+[^\s=<>"']+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)/g
const CELL = /^([A-Z]{1,3})(\d{1,7})$/
const ROW = /^\d{1,7}$/

/** @throws {UnreadableSchedule} for an address that is none and for a table that is too large. */
export function checkExtent(markup: string): void {
  let rows = 0
  let columns = 0
  for (const [, double, single, , empty] of markup.matchAll(ADDRESS)) {
    const address = double ?? single ?? ''
    const cell = CELL.exec(address)
    if (!cell && !ROW.test(address))
      throw new UnreadableSchedule('A sheet of the workbook has a cell with no proper address.')
    const row = Number(cell?.[2] ?? address)
    if (row > LAST_ROW) throw new UnreadableSchedule(`A sheet of the workbook has more than ${LAST_ROW} rows.`)
    if (!cell || empty) continue
    rows = Math.max(rows, row)
    columns = Math.max(columns, columnNumber(cell[1] ?? ''))
  }
  if (rows * columns > MOST_CELLS)
    throw new UnreadableSchedule(
      `A sheet of the workbook reaches to row ${rows} and column ${columns}. Delete what stands far from the table; ${MOST_COLUMNS} columns are looked at.`,
    )
}

const LETTERS = 26
const BEFORE_A = 64

/** A is 1, Z is 26, AA is 27. */
function columnNumber(letters: string): number {
  let number = 0
  for (const letter of letters) number = number * LETTERS + letter.charCodeAt(0) - BEFORE_A
  return number
}
