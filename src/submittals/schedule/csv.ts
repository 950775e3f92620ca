import { CsvError, parse } from 'csv-parse/sync'
import { decodeText } from './decode.js'
import { findHeadings } from './heading-row.js'
import { LONGEST_CELL, MOST_COLUMNS, MOST_ROWS, type Complaint, type Grid, type Line } from './grid.js'

/**
 * CSV as spreadsheets write it: RFC 4180, and besides it semicolons and tabs, any line ends, and quotation marks for inches in
 * the middle of a cell. The delimiter is the one under which most headings are recognised.
 */

const DELIMITERS = [',', ';', '\t'] as const

/** Characters of one record: it bounds what an unclosed quotation mark swallows. */
const LONGEST_RECORD = MOST_COLUMNS * LONGEST_CELL

/** The first line of some files says what divides the cells; spreadsheets do not show or count it (common practice, no source). */
const SEPARATOR_LINE = /^sep=(.)\n/

/** @throws {UnreadableSchedule} when the bytes are no text. */
export function readCsv(bytes: Uint8Array): Grid {
  const decoded = decodeText(bytes)
  const text = decoded.text.replace(/\r\n?/g, '\n')
  const said = SEPARATOR_LINE.exec(text)
  if (said?.[1]) return gridOf(text.slice(said[0].length), said[1], decoded.complaints)
  const [best] = DELIMITERS.map((delimiter) => ({ delimiter, found: recognised(text, delimiter) })).sort(
    (a, b) => b.found - a.found,
  )
  return gridOf(text, best?.delimiter ?? ',', decoded.complaints)
}

/** Rows that are looked at when a delimiter is tried: headings stand above the signs. */
const TRIED_ROWS = 60

function recognised(text: string, delimiter: string): number {
  return findHeadings(records(text, delimiter, TRIED_ROWS).lines)?.columns.length ?? 0
}

function gridOf(text: string, delimiter: string, complaints: Complaint[]): Grid {
  const { lines, complaint } = records(text, delimiter, MOST_ROWS + TRIED_ROWS)
  return { lines, delimiter, complaints: complaint ? [...complaints, complaint] : complaints }
}

function records(text: string, delimiter: string, most: number): { lines: Line[]; complaint: Complaint | null } {
  const lines: Line[] = []
  try {
    parse(text, {
      delimiter,
      record_delimiter: '\n',
      relax_quotes: true,
      relax_column_count: true,
      skip_empty_lines: false,
      max_record_size: LONGEST_RECORD,
      to: most + 1,
      on_record: (cells: string[]) => {
        lines.push({ row: lines.length + 1, cells: cells.slice(0, MOST_COLUMNS + 1).map(asTyped) })
        return null
      },
    })
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    return { lines, complaint: { row: lines.length + 1, column: null, detail: wordsFor(error) } }
  }
  return { lines, complaint: null }
}

/** `="0101"` keeps a spreadsheet from taking 0101 for a number (common practice, no source); nothing else is worked out. */
const asTyped = (cell: string): string => /^="([^"]*)"$/.exec(cell)?.[1] ?? cell

function wordsFor({ code }: CsvError): string {
  if (code === 'CSV_MAX_RECORD_SIZE')
    return 'This row is too long, or a quotation mark in it is not closed. It and the rest of the file were not read.'
  if (code === 'CSV_QUOTE_NOT_CLOSED')
    return 'A quotation mark that opens in this row is not closed. It and the rest of the file were not read.'
  return 'The quotation marks of this row do not match. It and the rest of the file were not read.'
}
