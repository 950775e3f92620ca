import type { SetSign } from './evidence.js'
import { markOf } from './words.js'
import type { InspectionItem, InspectionPlace } from './inspection.js'

/** The words and blanks that both forms of the inspection sheet share. */

export const SHEET_NAME = 'Inspection sheet'

export const NO_PLACE = 'Place not given'

/** A sign at its place: its mark and the door beside it. */
export const nameAt = (sign: SetSign): string =>
  sign.door === null ? markOf(sign) : `${markOf(sign)}, door ${sign.door}`

/** What is filled in once for the whole walk. */
export const BLANKS = {
  heads: ['Inspection', 'To be filled in'],
  shares: [0.25, 0.75],
  rows: ['Inspector', 'Organisation', 'Date', 'Signature'],
}

/** A reading counts for as much as the instrument behind it: a letter in the row names it. */
export const INSTRUMENTS = {
  caption: 'Instruments, each by its letter',
  heads: ['Letter', 'Instrument', 'Serial number', 'Calibrated until', 'Expanded uncertainty (k = 2)'],
  shares: [0.1, 0.32, 0.2, 0.18, 0.2],
  letters: ['A', 'B', 'C'],
}

export const JUDGED_HEAD = 'Keeps it?'
/** Keeps a blank and its unit, or a box and its word, on one line. */
const UNBROKEN = '\u00a0'
const BOXES = `☐${UNBROKEN}yes${UNBROKEN}${UNBROKEN}☐${UNBROKEN}no`

/** Before each limit, and the boxes that belong to it, where there are several. */
const letter = (item: InspectionItem, index: number): string =>
  item.limits.length === 1 ? '' : `(${String.fromCharCode('a'.charCodeAt(0) + index)})${UNBROKEN}`

/** Boxes to tick, for each limit its own, as one clause may be kept and another not. */
export const judgedBoxes = (item: InspectionItem): string[] => item.limits.map((_, i) => `${letter(item, i)}${BOXES}`)

/** A limit as printed, with its clause. */
export const limitWords = (item: InspectionItem, index: number): string =>
  `${letter(item, index)}${item.limits[index]?.clause ?? ''}: ${item.limits[index]?.printed ?? ''}`

export const ADVICE_IS_ELSEWHERE =
  'This sheet lists only what gauge, tape or eye must decide of what is required or recommended. Advice, and what the drawing decides, is in the reports. A waived row is marked and still to be found out.'

const BLANK = '______'

/** Blanks for the readings, each with the unit that the code prints first; one longer blank where there is only a judgement. */
export const readingBlanks = ({ reading }: InspectionItem): string[] =>
  reading === null
    ? [BLANK.repeat(3)]
    : Array.from({ length: reading.count }, () => (reading.unit === '' ? BLANK : `${BLANK}${UNBROKEN}${reading.unit}`))

/** How each thing on the sheet is measured, once. */
export function howList(places: readonly InspectionPlace[]): { title: string; how: string }[] {
  const told = new Map<string, { title: string; how: string }>()
  for (const { signs } of places)
    for (const { items } of signs) for (const { title, how } of items) told.set(`${title}\n${how}`, { title, how })
  return [...told.values()]
}
