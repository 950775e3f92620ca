import { COLUMNS, type Column } from './columns.js'
import { DOOR_SCHEDULE } from './door-headings.js'

/** What one heading says: which column it is and in which unit its lengths are. */

export type HeadingUnit = 'mm' | 'cm' | 'in' | null

export interface Heading {
  column: Column
  unit: HeadingUnit
  /** Among several headings of one column the least is the surest. */
  rank: number
}

/** Words that stand for another one in a heading, so that each synonym of a column is listed once. */
const SAME_WORDS: Record<string, string> = {
  no: 'number',
  nos: 'number',
  nr: 'number',
  num: 'number',
  '#': 'number',
  nº: 'number',
  color: 'colour',
  colors: 'colour',
  colours: 'colour',
  ht: 'height',
  hgt: 'height',
  h: 'height',
  wd: 'width',
  w: 'width',
  dia: 'diameter',
  diam: 'diameter',
  char: 'character',
  chars: 'character',
  dims: 'dimension',
  dim: 'dimension',
  dwg: 'drawing',
  loc: 'location',
  mtg: 'mounting',
  lvl: 'level',
  reference: 'ref',
  references: 'ref',
}

/** Spellings of a unit, in headings and in cells. A quotation mark has become `in` before. */
export const UNIT_WORDS: Record<string, Exclude<HeadingUnit, null>> = {
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  mms: 'mm',
  cm: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  in: 'in',
  ins: 'in',
  inch: 'in',
  inches: 'in',
}

const unitOf = (word: string | undefined): HeadingUnit =>
  word !== undefined && Object.hasOwn(UNIT_WORDS, word) ? (UNIT_WORDS[word] ?? null) : null

const LONGEST_HEADING = 200

/** The preposition of “Height in mm”, which is no unit; that of “Height (in/mm)” is one. */
const PREPOSITION = /(^|[\s([])in\s+(?=(?:mm|cm|in|inch|inches|milli\w+|centi\w+)\b)/gi

function wordsIn(text: string): string[] {
  return text
    .slice(0, LONGEST_HEADING)
    .replace(PREPOSITION, '$1')
    .replace(/["”“″]|''/gu, ' in ')
    .normalize('NFKC')
    .toLowerCase()
    .split(/[^\p{L}\p{N}#º]+/u)
    .filter((word) => word !== '')
}

/** The same key for every spelling of a heading: words without plural, in one spelling. */
function keyOf(words: readonly string[]): string {
  return words
    .map((word) => (Object.hasOwn(SAME_WORDS, word) ? (SAME_WORDS[word] ?? word) : word))
    .map((word) => (word.length > SHORT_WORD && /[^s]s$/.test(word) ? word.slice(0, -1) : word))
    .join(' ')
}
const SHORT_WORD = 3

interface Name {
  column: Column
  /** Place among the names of its column: an earlier one is the surer. */
  rank: number
}

const BY_KEY = new Map<string, Name>()
for (const column of COLUMNS)
  for (const [rank, name] of [column.heading, ...column.also].entries())
    BY_KEY.set(keyOf(wordsIn(name)), { column, rank })
const OF_DOORS = new Set(DOOR_SCHEDULE.map((name) => keyOf(wordsIn(name))))

/** Which column a heading names, or null. “Height (mm)”, “Letter Height [in]”, “Width, in.” and “Size "” say a unit as well. */
export function readHeading(text: string): Heading | null {
  const whole = wordsIn(text)
  const bare = wordsIn(text.replace(/[([][^)\]]*[)\]]/gu, ' '))
  for (const words of [whole, withoutUnits(whole), bare, withoutUnits(bare)]) {
    const name = BY_KEY.get(keyOf(words))
    if (name) return { ...name, unit: theUnit(whole) }
  }
  return null
}

/** Whether a heading says what it is about by itself: “Letter height” does, “Height” below “Door” does not. */
export const standsAlone = (text: string): boolean => withoutUnits(wordsIn(text)).length > 1

export const isDoorHeading = (text: string): boolean => OF_DOORS.has(keyOf(withoutUnits(wordsIn(text))))

/** “Height (mm / in)” speaks of two units and says nothing about a bare number. */
function theUnit(words: readonly string[]): HeadingUnit {
  const units = new Set(words.flatMap((word) => unitOf(word) ?? []))
  const [unit] = units
  return units.size === 1 && unit ? unit : null
}

function withoutUnits(words: readonly string[]): string[] {
  const last = words.findLastIndex((word) => unitOf(word) === null)
  return words.slice(0, last + 1)
}
