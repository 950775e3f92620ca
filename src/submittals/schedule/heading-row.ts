import { sureColumns } from './bare-headings.js'
import { isDoorHeading, readHeading, standsAlone, type Heading } from './heading.js'
import { aboutFile, isBlank, MOST_COLUMNS, quoted, shown, type Cell, type Complaint, type Line } from './grid.js'

/** Where in a table the headings are, and which column of the table is which: below a title, in one line or in two. */

export interface PlacedHeading extends Heading {
  /** Place in the row, from 0. */
  at: number
  /** As the file has it. */
  label: string
}

export interface Headings {
  columns: PlacedHeading[]
  /** Index of the first line after the headings. */
  next: number
  /** The lines above them: title, project, units. */
  preamble: Line[]
  /** Of the one or two lines: how they repeat at the head of a page. */
  labels: string[][]
  ofDoors: boolean
  complaints: Complaint[]
}

/** Lines that are searched. */
const SEARCHED_LINES = 50
/** Columns that make a line a heading; a single one may be a word of a title. */
const LEAST_COLUMNS = 2

interface Candidate {
  /** For each place of the row, what it says, and what it may mean. */
  labels: { label: string; readings: string[] }[]
  lines: number
}

/** The line with the most known headings, the first of several; a title block above it may hold some words that are headings too. */
export function findHeadings(lines: readonly Line[]): Headings | null {
  let found: { index: number; candidate: Candidate; known: number } | null = null
  let lower = -1
  for (const [index, line] of lines.slice(0, SEARCHED_LINES).entries()) {
    // The lower of two lines says less by itself, whatever it seems to say.
    if (index === lower) continue
    const one = oneLine(line.cells)
    const two = twoLines(line.cells, lines[index + 1]?.cells)
    const candidate = two && count(two) >= count(one) ? two : one
    const known = count(candidate)
    if (candidate === two && known >= LEAST_COLUMNS) lower = index + 1
    if (known >= LEAST_COLUMNS && known > (found?.known ?? 0)) found = { index, candidate, known }
  }
  return found && placed(lines, found.index, found.candidate)
}

const texts = (cells: readonly Cell[]): string[] =>
  cells.slice(0, MOST_COLUMNS).map((cell) => (typeof cell === 'string' ? shown(cell) : ''))

const oneLine = (cells: readonly Cell[]): Candidate => ({
  labels: texts(cells).map((label) => ({ label, readings: [label] })),
  lines: 1,
})

/**
 * The second line has units, or parts of what stands above them; a cell above reaches over the empty ones to its right. A title
 * above the headings is no such line: at least one of its cells must give a heading together with what is below it.
 */
function twoLines(upper: readonly Cell[], lower: readonly Cell[] | undefined): Candidate | null {
  if (!lower) return null
  const [above, below] = [texts(upper), texts(lower)]
  let group = ''
  let joined = 0
  let known = 0
  const labels = Array.from({ length: Math.max(above.length, below.length) }, (_, at) => {
    const label = below[at] ?? ''
    const own = above[at] ?? ''
    if (own !== '') group = own
    if (label === '') return { label: own, readings: [own] }
    const both = `${group} ${label}`.trim()
    const readings = group === '' || standsAlone(label) ? [both, label] : [both]
    if (group !== '' && readHeading(both)) joined++
    if (headingOf(readings)) known++
    return { label: both, readings }
  })
  const filled = below.filter((label) => label !== '').length
  return joined > 0 && known * 2 > filled ? { labels, lines: 2 } : null
}

const headingOf = (readings: readonly string[]): Heading | null =>
  readings.reduce<Heading | null>((found, text) => found ?? readHeading(text), null)

/** A unit below a heading counts a little: it makes two lines better than the first alone. */
function count({ labels, lines }: Candidate): number {
  const headings = labels
    .flatMap(({ readings }) => headingOf(readings) ?? [])
    .filter(({ column }) => column.kind !== 'unused')
  const units = headings.filter(({ unit }) => unit !== null).length
  return new Set(headings.map(({ column }) => column.key)).size + (lines > 1 ? units * UNIT_COUNTS : 0)
}
const UNIT_COUNTS = 0.01

function placed(lines: readonly Line[], index: number, { labels, lines: height }: Candidate): Headings {
  const all = labels.flatMap(({ label, readings }, at) => {
    const heading = headingOf(readings)
    return heading ? [{ ...heading, at, label }] : []
  })
  const once = all.filter((heading) => surest(all, heading.column.key) === heading)
  const { columns, complaints } = sureColumns(once)
  const unknown = labels.filter(({ label, readings }) => label !== '' && !headingOf(readings) && !isDoorHeading(label))
  return {
    columns,
    next: index + height,
    preamble: lines.slice(0, index),
    labels: lines.slice(index, index + height).map(({ cells }) => texts(cells)),
    ofDoors: labels.some(({ label }) => isDoorHeading(label)),
    complaints: [
      ...complaints,
      ...twice(all, columns),
      ...unknowns(unknown.map(({ label }) => label)),
      ...tooMany(lines[index]),
    ],
  }
}

const surest = (all: readonly PlacedHeading[], key: string): PlacedHeading | undefined =>
  all.filter(({ column }) => column.key === key).sort((a, b) => a.rank - b.rank || a.at - b.at)[0]

function twice(all: readonly PlacedHeading[], columns: readonly PlacedHeading[]): Complaint[] {
  return columns.flatMap((used) => {
    const others = all.filter(({ column, at }) => column === used.column && at !== used.at && column.kind !== 'unused')
    if (others.length === 0) return []
    const names = others.map(({ label, at }) => `${quoted(label)} (column ${at + 1})`).join(', ')
    return [
      aboutFile(
        `Several columns mean “${used.column.heading}”. ${quoted(used.label)} (column ${used.at + 1}) was used; not used: ${names}.`,
      ),
    ]
  })
}

const unknowns = (labels: readonly string[]): Complaint[] =>
  labels.length === 0
    ? []
    : [aboutFile(`Columns that are not known and were not used: ${[...new Set(labels.map(quoted))].join(', ')}.`)]

const tooMany = (line: Line | undefined): Complaint[] =>
  line && line.cells.slice(MOST_COLUMNS).some((cell) => !isBlank(cell))
    ? [aboutFile(`The table has more than ${MOST_COLUMNS} columns; those to the right were not looked at.`)]
    : []
