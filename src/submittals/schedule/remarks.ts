import type { ScheduleRow } from '../upload.js'
import { aboutFile, quoted, type Complaint } from './grid.js'
import type { Headings } from './heading-row.js'
import type { ReadRow } from './row.js'

/** What is said once of a whole file, where saying it of each row would bury the rest. */
export function remarks(headings: Headings, read: readonly ReadRow[], rows: readonly ScheduleRow[]): Complaint[] {
  return [...unusedColumns(headings), ...assumedUses(read, rows), ...assumedOrders(read)]
}

const unusedColumns = ({ columns }: Headings): Complaint[] =>
  columns.flatMap(({ column, label }) =>
    column.because === undefined ? [] : [{ row: null, column: label, detail: column.because }],
  )

function assumedUses(read: readonly ReadRow[], rows: readonly ScheduleRow[]): Complaint[] {
  const assumed = rows.filter(({ useAssumed }) => useAssumed).map(({ row }) => row)
  if (assumed.length === 0) return []
  const rowsAssumed = new Set(assumed)
  const types = read.flatMap(({ row, unknownType }) =>
    unknownType !== null && rowsAssumed.has(row) ? [unknownType] : [],
  )
  const named = firstFew([...new Set(types)].map(quoted))
  const why = types.length > 0 ? ` These kinds of sign are no use that is known: ${named}.` : ''
  return [
    aboutFile(
      `What the sign is for is not said in ${rowsNamed(assumed)}: each was taken as the sign of a permanent room. A column “Use” can say it.${why}`,
    ),
  ]
}

function assumedOrders(read: readonly ReadRow[]): Complaint[] {
  const assumed = read.filter(({ orderAssumed }) => orderAssumed).map(({ row }) => row)
  return assumed.length === 0
    ? []
    : [
        aboutFile(
          `Which of two sizes is the width is not said in ${rowsNamed(assumed)}: the first was taken. Head the column “Panel size (W x H)” if that is so.`,
        ),
      ]
}

/** Names that a message lists before it counts. */
const MOST_LISTED = 8

const rowsNamed = (rows: readonly number[]): string =>
  `${rows.length === 1 ? 'row' : 'rows'} ${firstFew(rows.map(String))}`

const firstFew = (names: readonly string[]): string =>
  names.length <= MOST_LISTED
    ? names.join(', ')
    : `${names.slice(0, MOST_LISTED).join(', ')} and ${names.length - MOST_LISTED} more`
