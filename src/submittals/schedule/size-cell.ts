import type { Length } from '../../sign/length.js'
import { shown, type Cell } from './grid.js'
import type { HeadingUnit } from './heading.js'
import { ownUnit, plain, readLengthCell, type Read, type Writing } from './length-cell.js'

/** Two lengths in one cell: “8 x 6 in”, “200 × 150 mm”, “8"W x 6"H”. */

export interface Size {
  width: Length
  height: Length
  /** Nobody said which of the two is which; width stands first by habit of the trade (common practice, no source). */
  orderAssumed: boolean
}

const PART = /^(w|h|width|height)?\s*[:=]?\s*(.+?)\s*(w|h|wide|high|width|height)?\.?$/

/** The order may be said by the cell or by its heading, “Size (H x W)”. One unit behind both holds for both. */
export function readSizeCell(cell: Cell, heading: string, unit: HeadingUnit, writing: Writing): Read<Size> {
  const parts = plain(shown(cell)).split(/\s*[x×*]\s*|\s+by\s+/u)
  if (parts.length !== 2) return { fault: 'is not a width and a height, such as “8 x 6 in”' }
  const [first, second] = parts.map((part) => {
    const [, before, length = '', after] = PART.exec(part) ?? []
    return { axis: axisOf(before ?? after), length }
  })
  if (!first || !second || (first.axis !== null && first.axis === second.axis))
    return { fault: 'is not a width and a height, such as “8 x 6 in”' }
  const shared = ownUnit(second.length) ?? unit
  const one = readLengthCell(first.length, ownUnit(first.length) ?? shared, writing)
  const other = readLengthCell(second.length, shared, writing)
  if ('fault' in one) return one
  if ('fault' in other) return other
  const said = first.axis ?? (second.axis && opposite(second.axis)) ?? firstOf(heading)
  const [width, height] = said === 'height' ? [other.value, one.value] : [one.value, other.value]
  return { value: { width, height, orderAssumed: said === null } }
}

type Axis = 'width' | 'height'

const axisOf = (word: string | undefined): Axis | null =>
  word === undefined ? null : word.startsWith('w') ? 'width' : 'height'
const opposite = (axis: Axis): Axis => (axis === 'width' ? 'height' : 'width')

function firstOf(heading: string): Axis | null {
  const [first, second] = heading.toLowerCase().match(/\b(?:w|h|width|height)\b/g) ?? []
  return first && second && first[0] !== second[0] ? axisOf(first) : null
}
