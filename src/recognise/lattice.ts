import { medianOf } from '../geometry/fit.js'
import { lengthOf, type Point } from '../geometry/point.js'
import type { Dot } from './dots.js'
import { pitchesOf } from './pitch.js'
import { bestWalk, FARTHEST, type Heap } from './walk.js'

/**
 * Dots as places of a braille lattice: cells of two columns and three rows, one dot spacing apart, cells one pitch apart
 * along a line, lines well apart. Here in the coordinates of one basis, in dot spacings: `along` the lines, `across` them.
 */
export interface Lattice {
  /** One dot spacing along the line and across it, millimetres; `across` is clockwise from `along` as seen. */
  along: Point
  across: Point
  /** Cell pitch in dot spacings; undefined when no two cells show it. */
  pitch?: number
  lines: LatticeLine[]
  /** Dots that fit no place; `line` is the line among whose cells one stands, undefined for one that stands apart. */
  outliers: { dot: Dot; line?: number }[]
  /** Root mean square distance of the dots from their places, in dot spacings. */
  misfit: number
}

export interface LatticeLine {
  places: LatticePlace[]
  /** How far all rows may be moved down, or columns right, without leaving the cell: what geometry does not decide. */
  rowSlack: number
  columnSlack: number
  /** Where the topmost occupied row stands, in dot spacings across. */
  top: number
}

/** Row 0 to 2, column 0 or 1, cell counted along the line; the least of each in a line is 0. */
export interface LatticePlace {
  dot: Dot
  cell: number
  column: number
  row: number
}

/** Positions nearer than this along an axis are one row or one column (dot spacings). */
const SAME_ROW = 0.4
/** With a larger share of the dots off their rows the basis is wrong. */
const MOST_OFF_ROW = 0.2
/** A dot that fits no place but lies no farther than this beyond the ends of a line (dot spacings) stands among its cells. */
const AMONG_CELLS = 2.2

/** The lattices on which the dots stand: one for each cell pitch that they leave open, none when this is no basis of their lines. */
export function latticesAlong(dots: readonly Dot[], along: Point, across: Point): Lattice[] {
  const determinant = along.x * across.y - along.y * across.x
  const origin = dots[0]
  const places = dots.map((dot) => {
    const x = dot.x - origin.x
    const y = dot.y - origin.y
    return { dot, a: (x * across.y - y * across.x) / determinant, b: (along.x * y - along.y * x) / determinant }
  })
  const rows = rowsOf(places)
  const offRow = rows.reduce((n, line) => n + line.members.filter((m) => Math.abs(m.off) > FARTHEST).length, 0)
  if (offRow > MOST_OFF_ROW * dots.length) return []
  const columns = rows.map((line) =>
    heapsAlong(line.members.filter((m) => Math.abs(m.off) <= FARTHEST).map((m) => m.a)),
  )
  const pitches = pitchesOf(columns.map((heaps) => heaps.map((heap) => heap.a)))
  return (pitches.length > 0 ? pitches : [undefined]).flatMap((pitch) => {
    const walked = walkedLines(rows, columns, pitch)
    return walked ? { along, across, pitch, ...walked } : []
  })
}

function walkedLines(
  rows: readonly Row[],
  columns: readonly Heap[][],
  pitch: number | undefined,
): Pick<Lattice, 'lines' | 'outliers' | 'misfit'> | undefined {
  const outliers: Lattice['outliers'] = []
  const misfits: number[] = []
  const lines: LatticeLine[] = []
  for (const [i, line] of rows.entries()) {
    const walk = bestWalk(columns[i], pitch)
    const placed: LatticePlace[] = []
    const taken: number[] = []
    const apart: { dot: Dot; a: number }[] = []
    for (const { dot, a, row, off } of line.members) {
      const place = walk.nearest(a)
      const misfit = lengthOf(a - place.at, off)
      if (misfit > FARTHEST) apart.push({ dot, a })
      else {
        placed.push({ dot, cell: place.cell, column: place.column, row })
        taken.push(a)
        misfits.push(misfit)
      }
    }
    const left = taken.reduce((least, a) => Math.min(least, a), Infinity) - AMONG_CELLS
    const right = taken.reduce((most, a) => Math.max(most, a), -Infinity) + AMONG_CELLS
    for (const { dot, a } of apart) outliers.push(a > left && a < right ? { dot, line: lines.length } : { dot })
    if (placed.length > 0) lines.push(finished(placed, line.top))
  }
  if (lines.length === 0) return undefined
  const misfit = Math.sqrt(misfits.reduce((sum, m) => sum + m * m, 0) / misfits.length)
  return { lines, outliers, misfit }
}

function finished(places: LatticePlace[], top: number): LatticeLine {
  const least = (values: number[]) => values.reduce((a, b) => Math.min(a, b), Infinity)
  const row = least(places.map((p) => p.row))
  const column = least(places.map((p) => p.column))
  const cell = least(places.map((p) => p.cell))
  const moved = places.map((p) => ({ dot: p.dot, row: p.row - row, column: p.column - column, cell: p.cell - cell }))
  const lowest = moved.reduce((most, p) => Math.max(most, p.row), 0)
  const right = moved.reduce((most, p) => Math.max(most, p.column), 0)
  return { places: moved, rowSlack: 2 - lowest, columnSlack: 1 - right, top: top + row }
}

interface Row {
  members: { dot: Dot; a: number; row: number; off: number }[]
  top: number
}

/**
 * Lines from the top: a line's first row is that of the next positions down that explains most dots as its three rows, so
 * that one displaced dot does not shift the line; the line takes all dots down to its third row.
 */
function rowsOf(places: { dot: Dot; a: number; b: number }[]): Row[] {
  const sorted = [...places].sort((p, q) => p.b - q.b)
  const lines: Row[] = []
  let start = 0
  while (start < sorted.length) {
    const first = bestFirstRow(sorted, start)
    let end = start
    while (end < sorted.length && sorted[end].b < first + 2 + SAME_ROW) end++
    const group = sorted.slice(start, end)
    const top = medianOf(group.map((p) => p.b - Math.round(p.b - first)))
    lines.push({
      top,
      members: group.map(({ dot, a, b }) => {
        const row = Math.min(Math.max(Math.round(b - top), 0), 2)
        return { dot, a, row, off: b - top - row }
      }),
    })
    start = end
  }
  return lines
}

function bestFirstRow(sorted: { b: number }[], start: number): number {
  const from = sorted[start].b
  const near: number[] = []
  for (let i = start; i < sorted.length && sorted[i].b < from + 3 + SAME_ROW; i++) near.push(sorted[i].b)
  const starts = heapsAlong(near).filter((heap) => heap.a < from + 1 - SAME_ROW / 2)
  let best = from
  let most = 0
  for (const { a: first } of starts) {
    const explained = near.filter(
      (b) =>
        b < first + 2 + SAME_ROW && Math.abs(b - first - Math.round(b - first)) < SAME_ROW / 2 && b > first - SAME_ROW,
    )
    if (explained.length > most) {
      most = explained.length
      best = first
    }
  }
  return best
}

/** Middles of the heaps of positions along one axis, in order. */
function heapsAlong(positions: number[]): Heap[] {
  const sorted = [...positions].sort((a, b) => a - b)
  const heaps: Heap[] = []
  let from = 0
  for (let i = 1; i <= sorted.length; i++) {
    if (i < sorted.length && sorted[i] - sorted[i - 1] < SAME_ROW) continue
    if (i > from) heaps.push({ a: medianOf(sorted.slice(from, i)), count: i - from })
    from = i
  }
  return heaps
}
