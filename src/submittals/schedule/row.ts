import { isBlank, LONGEST_CELL, LONGEST_VALUE, quoted, shown, type Cell, type Complaint, type Line } from './grid.js'
import type { PlacedHeading } from './heading-row.js'
import type { HeadingUnit } from './heading.js'
import { IS_DATE, readLengthCell, type Writing } from './length-cell.js'
import { readSizeCell } from './size-cell.js'
import { isNoBraille, meaningOf, saysNothing, wordsOf } from './vocabulary.js'

/** One row of a schedule: what its cells say, each on its own, so that one bad cell never loses the row. */

/** Something that a cell says of its sign: where in the description it goes. */
export interface Said {
  heading: PlacedHeading
  section: 'sign' | 'panel' | 'lettering' | 'braille' | 'installation'
  property: string
  value: unknown
}

export interface ReadRow {
  row: number
  /** Of the columns that tell a sign, a place or a door: mark, roomNumber, door and so on. */
  names: Map<string, string>
  said: Said[]
  complaints: Complaint[]
  /** A kind of sign that is no use that we know, and whether a size had its order assumed. */
  unknownType: string | null
  orderAssumed: boolean
  /** Cells that hold anything, in whichever column. */
  filled: number
}

export interface Reading {
  headings: readonly PlacedHeading[]
  writing: Writing
  /** The unit that the lines above the table say, for lengths with no other. */
  unit: HeadingUnit
}

export function readRow(line: Line, reading: Reading): ReadRow {
  const read: ReadRow = {
    row: line.row,
    names: new Map(),
    said: [],
    complaints: [],
    unknownType: null,
    orderAssumed: false,
    filled: line.cells.filter((cell) => !isBlank(cell)).length,
  }
  for (const heading of reading.headings) {
    const cell = line.cells[heading.at]
    if (cell === undefined || isBlank(cell)) continue
    const fault = unusable(cell, heading) ?? readCell(cell, heading, reading, read)
    if (fault !== null) read.complaints.push(complaintAbout(line.row, heading, cell, fault))
  }
  return read
}

export function complaintAbout(row: number, heading: PlacedHeading, cell: Cell, fault: string): Complaint {
  const words = shown(cell)
  return { row, column: heading.label, detail: `${words === '' ? 'The cell' : quoted(words)} ${fault}.` }
}

const HOLDS_WORDS = new Set<PlacedHeading['column']['kind']>(['words', 'line', 'list'])

/** What is wrong with a cell whatever its column. */
function unusable(cell: Cell, { column }: PlacedHeading): string | null {
  if (column.kind === 'unused') return null
  if (cell instanceof Date) return IS_DATE
  if (typeof cell !== 'string') return null
  const longest = HOLDS_WORDS.has(column.kind) ? LONGEST_CELL : LONGEST_VALUE
  if (cell.length > longest) return `is longer than ${longest} characters and was not used`
  if (/^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!)$/.test(cell.trim()))
    return 'is an error of the spreadsheet and no value'
  return null
}

type CellReader = (cell: Cell, heading: PlacedHeading, reading: Reading, read: ReadRow) => string | null

/** What a cell adds to its row; the answer is what is wrong with it, if anything is. */
const readCell: CellReader = (cell, heading, reading, read) => {
  const text = shown(cell)
  if (saysNothing(text) || heading.column.because !== undefined) return null
  return READERS[heading.column.kind](cell, heading, reading, read)
}

const READERS: Record<PlacedHeading['column']['kind'], CellReader> = {
  name: (cell, heading, _, read) => {
    const { section, key } = heading.column
    const text = shown(cell)
    if (section !== 'row') return say(read, heading, key, text)
    if (/[\p{Cc}\p{Cs}]/u.test(text.replaceAll('\n', ' '))) return 'holds a control character and was not used'
    read.names.set(key, text.replace(/\s+/g, ' '))
    return null
  },
  words: (cell, heading, _, read) => {
    const text = shown(cell)
    if (heading.column.section === 'braille' && isNoBraille(text))
      return 'does not say what the braille says. Give its words, or its cells as Unicode braille'
    return say(read, heading, 'text', text)
  },
  line: (cell, heading, _, read) => say(read, heading, heading.column.key, shown(cell).replaceAll('\n', ' ')),
  length: (cell, heading, { writing, unit }, read) => {
    const length = readLengthCell(cell, heading.unit ?? unit, writing)
    return 'fault' in length ? length.fault : say(read, heading, heading.column.key, length.value)
  },
  size: (cell, heading, { writing, unit }, read) => {
    const size = readSizeCell(cell, heading.label, heading.unit ?? unit, writing)
    if ('fault' in size) return size.fault
    read.orderAssumed ||= size.value.orderAssumed
    return say(read, heading, 'width', size.value.width) ?? say(read, heading, 'height', size.value.height)
  },
  choice: (cell, heading, _, read) => {
    const text = shown(cell)
    const { key } = heading.column
    const word = meaningOf(key, text)
    if (word !== null) return say(read, heading, key, word)
    if (key !== 'type') return `is none of: ${wordsOf(key).join(', ')}`
    read.unknownType = text
    return null
  },
  colour: (cell, heading, _, read) => say(read, heading, 'colour', colourIn(shown(cell))),
  reflectance: (cell, heading, _, read) => {
    const lrv = reflectance(shown(cell))
    return lrv === null ? 'is no light reflectance value from 0 to 100' : say(read, heading, 'colour', { lrv })
  },
  colours: (cell, heading, _, read) => {
    const [characters, background, more] = shown(cell).split(/\s+on\s+/iu)
    if (!characters || !background || more !== undefined)
      return 'is not two colours, such as “white on navy”. The two may have columns of their own, as CSS colours or LRV'
    read.said.push({ heading, section: 'lettering', property: 'colour', value: colourIn(characters) })
    return say(read, heading, 'colour', colourIn(background))
  },
  list: (cell, heading, _, read) => {
    const items = shown(cell)
      .split(/[;,\n]/u)
      .map((item) => item.trim())
      .filter((item) => item !== '')
    return say(read, heading, heading.column.key, /^none$/iu.test(items.join()) ? [] : items)
  },
  unused: () => null,
}

function say(read: ReadRow, heading: PlacedHeading, property: string, value: unknown): null {
  const { section } = heading.column
  if (section !== 'row') read.said.push({ heading, section, property, value })
  return null
}

const LRV = /^(?:lrv\s*:?\s*)?(\d{1,3}(?:[.,]\d{1,2})?)\s*(?:%|lrv)?$/i

function reflectance(text: string): number | null {
  const written = LRV.exec(text)?.[1]
  return written === undefined ? null : Number(written.replace(',', '.'))
}

function colourIn(text: string): string | { lrv: number } {
  const lrv = /lrv/i.test(text) ? reflectance(text) : null
  return lrv === null ? text.toLowerCase() : { lrv }
}
