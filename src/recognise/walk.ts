/**
 * The columns of one line of braille as cells and columns of cells. Positions are along the line, in dot spacings. The walk
 * follows slow changes of the pitch; where from some column on all stand moved, it starts anew from there, when that is the
 * only way in which the rest stands on places.
 */

/** Columns of dots that stand one above the other: their middle, and how many dots there are. */
export interface Heap {
  a: number
  count: number
}

export interface Walk {
  cost: number
  nearest(a: number): Stop
}

interface Stop {
  at: number
  cell: number
  column: number
}

/** Farther than this from its place a dot belongs to no place. */
export const FARTHEST = 0.36
/** So many columns are tried as the one from which a line's cells are counted. */
const MOST_ANCHORS = 4
/** How fast the running origin of a line follows its columns. */
const FOLLOW = 0.4
/** A line is broken at most so often, and by less than so much: more may be a blank cell or half of one. */
const MOST_BREAKS = 3
const WIDEST_BREAK = 0.8
/** A column this far off its place may be the first after a break. */
const SUSPICIOUS = 0.2
/** Columns after a break that are looked at, and what a break counts against a walk, as squares of misfits. */
const LOOKED_AHEAD = 12
const COST_OF_BREAK = 0.05
/** Columns nearer to each other than this are those of one cell. */
const OF_ONE_CELL = 1.3
/** After a break so many columns must stand on their places, the mean square of their misfits below this. */
const FEWEST_AFTER = 3
const CLOSE_AFTER = 0.01
/** The rest must stand this much worse on its places in any other way: in mean squares of misfits. */
const WORSE = 0.02

/**
 * Columns of one line as cells and columns of cells, counted both ways from one of the first columns, taken as a left or as a
 * right one: whichever fits most dots.
 * @param pitch of the cells, in dot spacings; undefined when no two cells show it
 */
export function bestWalk(columns: readonly Heap[], pitch: number | undefined): Walk {
  let best: Walk | undefined
  for (let anchor = 0; anchor < Math.min(columns.length, MOST_ANCHORS); anchor++)
    for (const column of [0, 1]) {
      const walk = walkFrom(columns, pitch, anchor, column)
      if (!best || walk.cost < best.cost) best = walk
    }
  return best ?? { cost: 0, nearest: () => ({ at: Infinity, cell: 0, column: 0 }) }
}

function walkFrom(columns: readonly Heap[], pitch: number | undefined, anchor: number, column: number): Walk {
  const stops: Stop[] = []
  let cost = 0
  let breaks = 0
  const step = (i: number, origin: number): number => {
    const place = placeFor(columns[i].a - origin, pitch)
    const off = columns[i].a - origin - place.at
    cost += columns[i].count * capped(off)
    stops[i] = { at: origin + place.at, cell: place.cell, column: place.column }
    return followed(origin, off)
  }
  const start = columns[anchor].a - column
  for (let i = anchor, origin = start; i < columns.length; i++) {
    const anew = breaks < MOST_BREAKS && i > anchor ? originAfterBreak(columns, pitch, i, origin) : undefined
    if (anew !== undefined) {
      breaks++
      cost += COST_OF_BREAK
    }
    origin = step(i, anew ?? origin)
  }
  for (let i = anchor - 1, origin = start; i >= 0; i--) origin = step(i, origin)
  const positions = columns.map((heap) => heap.a)
  return { cost, nearest: (a) => stops[nearestIndex(positions, a)] }
}

const capped = (off: number): number => Math.min(off * off, FARTHEST * FARTHEST)

const followed = (origin: number, off: number): number => (Math.abs(off) <= FARTHEST ? origin + FOLLOW * off : origin)

/**
 * From where cells are counted from this column on, when the line is broken before it: the rest stands on its places in just
 * one way, and not as the line went on so far.
 */
function originAfterBreak(
  columns: readonly Heap[],
  pitch: number | undefined,
  i: number,
  origin: number,
): number | undefined {
  const { a } = columns[i]
  if (pitch === undefined || a - columns[i - 1].a < OF_ONE_CELL || columns.length - i < FEWEST_AFTER) return undefined
  if (Math.abs(a - origin - placeFor(a - origin, pitch).at) < SUSPICIOUS) return undefined
  const ways = [0, 1].map((column) => {
    const anew = a - column - pitch * Math.round((a - column - origin) / pitch)
    return { anew, misfit: misfitOfRest(columns, pitch, i, anew) }
  })
  ways.sort((p, q) => p.misfit - q.misfit)
  const [best, other] = ways
  const onlyWay = Math.min(other.misfit, misfitOfRest(columns, pitch, i, origin)) > best.misfit + WORSE
  return onlyWay && best.misfit < CLOSE_AFTER && Math.abs(best.anew - origin) < WIDEST_BREAK ? best.anew : undefined
}

/** Mean square misfit of the next columns when cells are counted from that origin. */
function misfitOfRest(columns: readonly Heap[], pitch: number, from: number, start: number): number {
  const rest = columns.slice(from, from + LOOKED_AHEAD)
  let origin = start
  let sum = 0
  for (const { a } of rest) {
    const off = a - origin - placeFor(a - origin, pitch).at
    sum += capped(off)
    origin = followed(origin, off)
  }
  return sum / rest.length
}

function placeFor(a: number, pitch: number | undefined): Stop {
  const left = pitch === undefined ? 0 : Math.round(a / pitch)
  const right = pitch === undefined ? 0 : Math.round((a - 1) / pitch)
  const [atLeft, atRight] = [left * (pitch ?? 0), right * (pitch ?? 0) + 1]
  return Math.abs(atLeft - a) <= Math.abs(atRight - a)
    ? { at: atLeft, cell: left, column: 0 }
    : { at: atRight, cell: right, column: 1 }
}

function nearestIndex(sorted: number[], value: number): number {
  let low = 0
  let high = sorted.length - 1
  while (low < high) {
    const middle = (low + high) >> 1
    if (sorted[middle] < value) low = middle + 1
    else high = middle
  }
  return low > 0 && value - sorted[low - 1] < sorted[low] - value ? low - 1 : low
}
