import { zipSync } from 'fflate'
import { readSheet } from 'read-excel-file/universal'
import { checkExtent } from './extent.js'
import { findHeadings } from './heading-row.js'
import { aboutFile, UnreadableSchedule, type Cell, type Complaint, type Grid, type Line } from './grid.js'
import { unpackWorkbook } from './unpack.js'

/**
 * XLSX (ECMA-376): the first sheet that has headings. Values are those that the file holds; no formula is worked out. The
 * library gets a zip of our own making with the parts that were measured, and nothing else.
 */

/** Sheets that are searched for headings. */
const MOST_SHEETS = 20
/** Bytes of markup that the search may read, the whole workbook once for each sheet; the first is always read. */
const MOST_SEARCHED = 96 * 1024 * 1024

/** @throws {UnreadableSchedule} when the file is no workbook, is damaged or goes beyond a limit. */
export async function readWorkbook(bytes: Uint8Array): Promise<Grid> {
  const parts = await unpackWorkbook(bytes)
  if (!parts.has('xl/workbook.xml'))
    throw new UnreadableSchedule('The file is a zip and no XLSX workbook. Save the schedule as XLSX, or as CSV.')
  const complaints: Complaint[] = []
  let size = 0
  for (const [name, part] of parts) {
    const readable = readableMarkup(new TextDecoder().decode(part))
    if (readable.unworked > 0 && name.startsWith('xl/worksheets/')) complaints.push(unworked(readable.unworked))
    parts.set(name, new TextEncoder().encode(readable.markup))
    size += readable.markup.length
  }
  const packed = zipSync(Object.fromEntries(parts), { level: 0 })
  const first = await sheetLines(packed, 1)
  if (!first) throw new UnreadableSchedule('The workbook has no sheet.')
  if (findHeadings(first)) return { lines: first, delimiter: null, complaints }
  for (let sheet = 2; sheet <= MOST_SHEETS && sheet * size <= MOST_SEARCHED; sheet++) {
    const lines = await sheetLines(packed, sheet)
    if (!lines) break
    if (findHeadings(lines)) return { lines, delimiter: null, complaints }
  }
  return { lines: first, delimiter: null, complaints }
}

/** A cell with a formula and no result. */
const UNWORKED = /(<\/(?:\w+:)?f>|<(?:\w+:)?f(?:\s[^<>]*)?\/>)\s*(<\/(?:\w+:)?c>)/g
/** Cells that hold an error: read as its text, so that it is one cell’s problem. */
const ERROR_TYPE = /\st=(?:"e"|'e')/g

function readableMarkup(markup: string): { markup: string; unworked: number } {
  checkExtent(markup)
  let unworkedCells = 0
  const filled = markup.replace(UNWORKED, (_, formula: string, end: string) => {
    unworkedCells++
    return `${formula}<v></v>${end}`
  })
  return { markup: filled.replace(ERROR_TYPE, ' t="str"'), unworked: unworkedCells }
}

const unworked = (count: number): Complaint =>
  aboutFile(
    `A sheet of the workbook has formulas without a result (${count}). Their cells were read as empty: open the workbook in a spreadsheet program and save it.`,
  )

const toCell = (value: unknown): Cell =>
  typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' || value instanceof Date
    ? value
    : null

async function sheetLines(packed: Uint8Array, sheet: number): Promise<Line[] | null> {
  try {
    const rows = await readSheet(new Blob([packed.slice()]), sheet)
    return rows.map((values: unknown[], index) => ({ row: index + 1, cells: values.map(toCell) }))
  } catch (error) {
    if (error instanceof Error && error.name === 'SheetNotFoundError') return null
    throw new UnreadableSchedule(
      'The workbook cannot be read: its sheets do not follow ECMA-376. Save it again as XLSX, or as CSV.',
    )
  }
}
