import type { IntakeProblem } from '../../report/set/evidence.js'
import type { ListedDoor, Schedule, ScheduleRow, UploadedFile } from '../upload.js'
import { decimalMark } from './amount.js'
import { readCsv } from './csv.js'
import { describeRow } from './describe-row.js'
import { doorsIn } from '../same-name.js'
import { aboutFile, isBlank, MOST_ROWS, quoted, shown, UnreadableSchedule, type Complaint, type Grid } from './grid.js'
import { findHeadings, type Headings } from './heading-row.js'
import { decimalsIn } from './length-cell.js'
import { rowKind } from './row-kind.js'
import { readRow, type ReadRow, type Reading } from './row.js'
import { remarks } from './remarks.js'
import { unitSaid } from './unit-said.js'
import { readWorkbook } from './workbook.js'

/** Problems that are listed for one file; the rest is counted. */
export const MOST_PROBLEMS = 1_000

const ZIP = [0x50, 0x4b]
/** Compound files: workbooks of before 2007, and newer ones with a password ([MS-CFB], 2.2). */
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0]

/**
 * Reads a sign or door schedule, CSV or XLSX as its content says, whatever its name. It throws for no file: what cannot be read is a
 * problem with its row, counted as a spreadsheet counts it, and all the rest is read.
 */
export async function readSchedule(file: UploadedFile): Promise<Schedule> {
  try {
    const grid = await readGrid(file.bytes)
    const { rows, doors, complaints } = interpret(grid, file.name)
    return { rows, doors, problems: listed([...grid.complaints, ...complaints], file.name) }
  } catch (error) {
    if (!(error instanceof UnreadableSchedule)) throw error
    return { rows: [], doors: [], problems: listed([aboutFile(error.message)], file.name) }
  }
}

async function readGrid(bytes: Uint8Array): Promise<Grid> {
  const begins = (mark: readonly number[]) => mark.every((byte, place) => bytes[place] === byte)
  if (begins(ZIP)) return readWorkbook(bytes)
  if (begins(COMPOUND))
    throw new UnreadableSchedule(
      'The file is a workbook of an old form, or has a password. Save it as XLSX without one.',
    )
  return readCsv(bytes)
}

function interpret(grid: Grid, file: string): { rows: ScheduleRow[]; doors: ListedDoor[]; complaints: Complaint[] } {
  const headings = findHeadings(grid.lines)
  if (!headings) return { rows: [], doors: [], complaints: [aboutFile(NO_HEADINGS)] }
  const reading = readingOf(grid, headings)
  const complaints = [...headings.complaints]
  const rows: ScheduleRow[] = []
  const doors: ListedDoor[] = []
  const used: ReadRow[] = []
  const lines = grid.lines.slice(headings.next)
  if (lines.length > MOST_ROWS)
    complaints.push(aboutFile(`The schedule has more than ${MOST_ROWS} rows; the first ${MOST_ROWS} were read.`))
  for (const line of lines.slice(0, MOST_ROWS)) {
    const read = readRow(line, reading)
    const kind = rowKind(line, read, headings)
    if (kind === 'skipped') continue
    if (typeof kind === 'object') {
      complaints.push(kind)
      continue
    }
    complaints.push(...read.complaints)
    const door = read.names.get('door') ?? (kind === 'door' ? read.names.get('mark') : undefined) ?? null
    const location = locationOf(read)
    for (const name of doorsIn(door)) doors.push({ door: name, location, file, row: line.row })
    if (kind === 'door') continue
    const described = describeRow(read)
    complaints.push(...described.complaints)
    used.push(read)
    rows.push({
      row: line.row,
      mark: read.names.get('mark') ?? null,
      location,
      door,
      drawing: read.names.get('drawing') ?? null,
      sign: described.sign,
      ...(described.useAssumed ? { useAssumed: true } : {}),
    })
  }
  if (rows.length + doors.length + complaints.length === 0) complaints.push(aboutFile(NOTHING_BELOW))
  return { rows, doors, complaints: [...remarks(headings, used, rows), ...complaints] }
}

const NO_HEADINGS =
  'No headings of a sign or door schedule were found in the first rows: at least two of them must be known, such as Mark, Room number, Door number and Text.'

const NOTHING_BELOW = 'There is no sign and no door below the headings.'

function readingOf(grid: Grid, headings: Headings): Reading {
  const lengths = headings.columns.filter(({ column }) => column.kind === 'length' || column.kind === 'size')
  const numbers = grid.lines
    .slice(headings.next)
    .flatMap(({ cells }) => lengths.flatMap(({ at }) => decimalsIn(cells[at] ?? null)))
  const mark = decimalMark(numbers, grid.delimiter)
  return {
    headings: headings.columns,
    writing: { mark, delimiter: grid.delimiter },
    unit: unitSaid(headings.preamble.flatMap(({ cells }) => cells.filter((cell) => !isBlank(cell)).map(shown))),
  }
}

/** Building, level and room as one name; a room’s number tells it better than what it is called. */
function locationOf({ names }: ReadRow): string | null {
  const place = names.get('roomNumber') ?? names.get('location') ?? names.get('roomName')
  const whole = [names.get('building'), names.get('level'), place].filter((part) => part !== undefined)
  return place === undefined || whole.length === 0 ? null : whole.join(', ')
}

function listed(complaints: readonly Complaint[], file: string): IntakeProblem[] {
  const problems = complaints
    .slice(0, MOST_PROBLEMS)
    .map((complaint) => ({ file, ...complaint, column: named(complaint.column) }))
  const left = complaints.length - problems.length
  return left === 0 ? problems : [...problems, { file, ...aboutFile(`The schedule has ${left} more problems.`) }]
}

/** A heading as the message names it: without line breaks, and not endless. */
const named = (column: string | null): string | null => (column === null ? null : quoted(column).slice(1, -1))
