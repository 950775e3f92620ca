import { shown, isBlank, quoted, type Complaint, type Line } from './grid.js'
import type { Headings } from './heading-row.js'
import type { ReadRow } from './row.js'

/** What a row below the headings is: a sign, a door, a line that is neither, or one that names nothing (as what is wrong with it). */

type RowKind = 'sign' | 'door' | 'skipped' | Complaint

/** “Total”, “Grand total: 24” (common practice, no source). */
const TOTALS = /^(?:grand |sub[- ]?)?totals?(?: (?:signs|doors|quantity|qty))?\s*[:=]?\s*\d*$/i

/** Columns that only a sign has; a table with one of them is no mere list of doors. */
const OF_SIGNS = ['use', 'text', 'line1', 'brailleText', 'characterHeight', 'drawing', 'code']

/** A table as narrow as this may well hold rows of a mark and nothing else. */
const NARROW_TABLE = 2

export function rowKind(line: Line, read: ReadRow, headings: Headings): RowKind {
  if (read.filled === 0 || repeatsHeadings(line, headings) || isTotals(line)) return 'skipped'
  const wording = read.said.some(({ property }) => property === 'text' || property.startsWith('line1'))
  const [mark, door, drawing] = ['mark', 'door', 'drawing'].map((key) => read.names.get(key))
  if (listsDoors(headings)) return door !== undefined || mark !== undefined ? 'door' : namesNothing(line, 'door')
  if (mark !== undefined && read.filled === 1 && headings.columns.length > NARROW_TABLE)
    return sectionHeading(line, mark)
  if (mark !== undefined || wording || drawing !== undefined) return 'sign'
  return door !== undefined ? 'door' : namesNothing(line, 'sign')
}

/** A door and hardware schedule, by its headings or its title. */
function listsDoors({ ofDoors, columns, preamble }: Headings): boolean {
  if (columns.some(({ column }) => OF_SIGNS.includes(column.key))) return false
  const title = preamble.flatMap(({ cells }) => cells.map(shown)).join(' ')
  return ofDoors || /\bdoor schedule\b|\bschedule of doors\b/i.test(title)
}

/** Headings are printed anew at the head of each page. */
const repeatsHeadings = ({ cells }: Line, { labels }: Headings): boolean =>
  labels.some(
    (heading) =>
      heading.filter((label) => label !== '').length > 0 &&
      heading.every((label, at) => shown(cells[at]).toLowerCase() === label.toLowerCase()) &&
      cells.slice(heading.length).every(isBlank),
  )

function isTotals({ cells }: Line): boolean {
  const [first, ...others] = cells.filter((cell) => !isBlank(cell)).map(shown)
  return first !== undefined && TOTALS.test(first) && others.every((text) => /^(?:[\d.,\s]+|#\S+)$/.test(text))
}

const sectionHeading = ({ row }: Line, words: string): Complaint => ({
  row,
  column: null,
  detail: `Nothing but ${quoted(words)} stands in this row. It was taken for a heading between the rows; if it is a sign, give its text or its drawing.`,
})

const namesNothing = ({ row }: Line, what: 'sign' | 'door'): Complaint => ({
  row,
  column: null,
  detail:
    what === 'sign'
      ? 'This row names no sign: it has no mark, no text and no drawing. It was not used.'
      : 'This row names no door. It was not used.',
})
