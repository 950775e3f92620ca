import { plain } from './markup.js'

/**
 * Tables for spreadsheets (RFC 4180, UTF-8 with a byte order mark: without one, common spreadsheets take braille and letters with
 * accents for another encoding).
 */

const BYTE_ORDER_MARK = '\ufeff'
const LINE_END = '\r\n'

export type Cell = string | number | boolean | null

/** Rows of cells under a row of heads. @param heads words of ours, without commas or quotes */
export const csvTable = (heads: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  `${BYTE_ORDER_MARK}${[heads.join(','), ...rows.map((cells) => cells.map(written).join(',')), ''].join(LINE_END)}`

/** Numbers stay numbers, a minus included; every text is quoted. */
function written(cell: Cell): string {
  if (cell === null) return ''
  return typeof cell === 'string' ? `"${inert(cell).replaceAll('"', '""')}"` : String(cell)
}

/**
 * What a spreadsheet would take for the beginning of a formula: OWASP, CSV Injection, with the full-width forms. Also behind a
 * semicolon, at which spreadsheets of many countries divide a line whatever its quotes. Tabs and line ends are blanks by then.
 */
const FORMULA_START = /(^|;)(\s*)(?=[=+\-@＝＋－＠])/g

const inert = (text: string): string => plain(text).replace(FORMULA_START, "$1$2'")
