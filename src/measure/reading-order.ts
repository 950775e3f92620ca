import type { Point } from '../geometry/point.js'
import { isKnown, type BrailleLine, type LetteringLine } from '../sign/sign.js'
import type { Frame } from './frame.js'

/**
 * In which order a reader meets texts that stand apart: row by row from the top, in a row from the left. Baselines that are less than a
 * character height apart are one row: a large number and the words beside it seldom stand on the same line exactly.
 */

interface Ordered {
  lines: LetteringLine[] | BrailleLine[]
}

interface Placed<T> {
  thing: T
  at: Point
  height: number
}

/**
 * The orders that may be meant, the likeliest first: in a row from the left, and in a row as listed. As listed throughout where a place is
 * not known.
 * @param heightOf height of the characters or cells; 0 where it is not known
 */
export function readingOrders<T extends Ordered>(things: T[], frame: Frame, heightOf: (thing: T) => number): T[][] {
  const placed = things.flatMap((thing): Placed<T>[] => {
    const baseline = thing.lines[0]?.baseline
    return isKnown(baseline) ? [{ thing, at: frame.of(baseline.value), height: heightOf(thing) }] : []
  })
  if (placed.length < things.length) return [things]
  const rows = rowsOf(placed)
  const fromLeft = rows.flatMap((row) => [...row].sort((a, b) => a.at.x - b.at.x || a.at.y - b.at.y))
  const asListed = rows.flatMap((row) => [...row].sort((a, b) => placed.indexOf(a) - placed.indexOf(b)))
  const orders = fromLeft.every((one, i) => one === asListed[i]) ? [fromLeft] : [fromLeft, asListed]
  return orders.map((order) => order.map(({ thing }) => thing))
}

/** Rows from the top. */
function rowsOf<T>(placed: Placed<T>[]): Placed<T>[][] {
  const rows: Placed<T>[][] = []
  for (const one of [...placed].sort((a, b) => a.at.y - b.at.y)) {
    const row = rows.at(-1)
    const last = row?.at(-1)
    const same = last && (one.at.y === last.at.y || one.at.y - last.at.y < Math.min(one.height, last.height))
    if (row && same) row.push(one)
    else rows.push([one])
  }
  return rows
}
