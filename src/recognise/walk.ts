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
  let best: Walked = { cost: Infinity, stops: [] }
  for (let anchor = 0; anchor < Math.min(columns.length, MOST_ANCHORS); anchor++)
    for (const column of [0, 1]) best = walkFrom(columns, pitch, anchor, column, best.cost) ?? best
  const positions = columns.map((heap) => heap.a)
  const { cost, stops } = best
  return { cost, nearest: (a) => stops.at(nearestIndex(positions, a)) ?? NOWHERE }
}

const NOWHERE: Stop = { at: Infinity, cell: 0, column: 0 }

interface Walked {
  cost: number
  /** Where each column stands. */
  stops: Stop[]
}

/** Undefined as soon as it costs no less than another. */
function walkFrom(
  columns: readonly Heap[],
  pitch: number | undefined,
  anchor: number,
  column: number,
  other: number,
): Walked | undefined {
  const stops = new Array<Stop>(columns.length)
  const start = columns[anchor].a - column
  let cost = 0
  let breaks = 0
  for (let i = anchor, origin = start; i < columns.length && cost < other; i++) {
    let stop = stopAt(columns[i].a, origin, pitch)
    if (breaks < MOST_BREAKS && i > anchor && Math.abs(columns[i].a - stop.at) >= SUSPICIOUS) {
      const anew = originAfterBreak(columns, pitch, i, origin)
      if (anew !== undefined) {
        breaks++
        cost += COST_OF_BREAK
        origin = anew
        stop = stopAt(columns[i].a, origin, pitch)
      }
    }
    const off = columns[i].a - stop.at
    cost += columns[i].count * capped(off)
    stops[i] = stop
    origin = followed(origin, off)
  }
  for (let i = anchor - 1, origin = start; i >= 0 && cost < other; i--) {
    const stop = stopAt(columns[i].a, origin, pitch)
    const off = columns[i].a - stop.at
    cost += columns[i].count * capped(off)
    stops[i] = stop
    origin = followed(origin, off)
  }
  return cost < other ? { cost, stops } : undefined
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
  const wayFrom = (column: number) => {
    const anew = a - column - pitch * Math.round((a - column - origin) / pitch)
    return { anew, misfit: misfitOfRest(columns, pitch, i, anew) }
  }
  const [left, right] = [wayFrom(0), wayFrom(1)]
  const [best, other] = left.misfit <= right.misfit ? [left, right] : [right, left]
  const onlyWay = Math.min(other.misfit, misfitOfRest(columns, pitch, i, origin)) > best.misfit + WORSE
  return onlyWay && best.misfit < CLOSE_AFTER && Math.abs(best.anew - origin) < WIDEST_BREAK ? best.anew : undefined
}

/** Mean square misfit of the next columns when cells are counted from that origin. */
function misfitOfRest(columns: readonly Heap[], pitch: number, from: number, start: number): number {
  const to = Math.min(from + LOOKED_AHEAD, columns.length)
  let origin = start
  let sum = 0
  for (let i = from; i < to; i++) {
    const off = offPlace(columns[i].a - origin, pitch)
    sum += capped(off)
    origin = followed(origin, off)
  }
  return sum / (to - from)
}

/** How far a column stands off the place nearest to it; both from where cells are counted. */
function offPlace(a: number, pitch: number): number {
  const left = a - Math.round(a / pitch) * pitch
  const right = a - (Math.round((a - 1) / pitch) * pitch + 1)
  return Math.abs(left) <= Math.abs(right) ? left : right
}

/** The place nearest to a column when cells are counted from that origin. */
function stopAt(position: number, origin: number, pitch: number | undefined): Stop {
  const a = position - origin
  const step = pitch ?? 0
  const left = step > 0 ? Math.round(a / step) : 0
  const right = step > 0 ? Math.round((a - 1) / step) : 0
  const atLeft = left * step
  const atRight = right * step + 1
  return Math.abs(atLeft - a) <= Math.abs(atRight - a)
    ? { at: origin + atLeft, cell: left, column: 0 }
    : { at: origin + atRight, cell: right, column: 1 }
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
