import { strToU8, zipSync, type ZipOptions } from 'fflate'

/** Workbooks of the fewest parts that ECMA-376, part 1, asks for (12.3 and 18), written by hand so that any part can be wrong. */

const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'

export type Value = string | number | null

const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')

/** Address of a cell: the column in letters, then the row (18.18.7). */
export function address(column: number, row: number): string {
  const letters = column > 26 ? String.fromCharCode(64 + Math.floor((column - 1) / 26)) : ''
  return `${letters}${String.fromCharCode(65 + ((column - 1) % 26))}${row}`
}

/** Rows as a sheet; texts stand in their cells (18.3.1.53, inline strings). */
export function sheet(rows: Value[][]): string {
  const cell = (value: Value, at: number, row: number) =>
    value === null
      ? ''
      : typeof value === 'number'
        ? `<c r="${address(at + 1, row)}"><v>${value}</v></c>`
        : `<c r="${address(at + 1, row)}" t="inlineStr"><is><t>${escaped(value)}</t></is></c>`
  const lines = rows.map(
    (cells, at) => `<row r="${at + 1}">${cells.map((value, column) => cell(value, column, at + 1)).join('')}</row>`,
  )
  return sheetOf(lines.join(''))
}

export const sheetOf = (data: string): string => `<worksheet xmlns="${MAIN}"><sheetData>${data}</sheetData></worksheet>`

/** The parts of a workbook of these sheets, by their names in the zip. */
export function parts(...sheets: string[]): Record<string, Uint8Array> {
  const relation = (at: number) =>
    `<Relationship Id="rId${at + 1}" Type="${RELATIONS}/worksheet" Target="worksheets/sheet${at + 1}.xml"/>`
  const named = (at: number) => `<sheet name="Sheet${at + 1}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`
  return {
    '[Content_Types].xml': strToU8('<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>'),
    'xl/workbook.xml': strToU8(
      `<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheets>${sheets.map((_, at) => named(at)).join('')}</sheets></workbook>`,
    ),
    'xl/_rels/workbook.xml.rels': strToU8(
      `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${sheets.map((_, at) => relation(at)).join('')}</Relationships>`,
    ),
    ...Object.fromEntries(sheets.map((markup, at) => [`xl/worksheets/sheet${at + 1}.xml`, strToU8(markup)])),
  }
}

export const workbook = (...sheets: string[]): Uint8Array => zipSync(parts(...sheets))

export const zipped = (contents: Record<string, Uint8Array>, options?: ZipOptions): Uint8Array =>
  zipSync(contents, options)
