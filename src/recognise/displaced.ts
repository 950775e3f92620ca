import type { Point } from '../geometry/point.js'
import type { ReadDot } from './cells.js'
import { columnOf, expectedAt, lengthOf, rowOf, type Steps } from './steps.js'

/**
 * Dots and cells that stand off the fitted lattice of their line. A dot that has no neighbour in its cell still has a place in a
 * column and a row: where it stands clearly off the place that its cell's other dots and its line give it, it makes another
 * distance to the places beside it. A cell whose dots are all moved alike makes another distance to the cells beside it.
 */

/** Off by so many standard deviations of a difference, and so many millimetres, is no noise of places. Ours. */
const CLEARLY_OFF = 4
const CLEARLY_OFF_LEAST = 0.05

/** A distance that is made by one that is out of its place. */
export interface Made {
  value: number
  line: number
  cell: number
  /** The dot that is out of place, when it is not the whole cell. */
  number?: number
  /** The cell before, where it is the step from there that is another. */
  after?: number
}

/** How far a dot stands off: along the line and across it, millimetres. */
interface Off {
  along: number
  across: number
}

/**
 * @param lines the dots of each line in reading order
 * @returns distances within cells that single dots make, and distances between cells that whole cells make
 */
export function madeByDisplaced(lines: ReadDot[][], f: Steps): { dots: Made[]; cells: Made[] } {
  const clear = Math.max(CLEARLY_OFF * Math.SQRT2 * (f.fit?.sigma ?? 0), CLEARLY_OFF_LEAST)
  const made = { dots: [] as Made[], cells: [] as Made[] }
  lines.forEach((dots, line) => {
    let before: { at: Point; cell: number } | undefined
    for (const [cell, members] of cellsInOrder(dots)) {
      const offs = members.map((dot) => offOf(f, line, dot))
      const moved = { along: common(offs.map((o) => o.along)), across: common(offs.map((o) => o.across)) }
      // One dot alone does not show that its cell stands higher or lower: it is held against its line.
      if (members.length === 1) moved.across = 0
      members.forEach((dot, i) => {
        const own = { along: offs[i].along - moved.along, across: offs[i].across - moved.across }
        for (const value of distancesOf(dot.number, own, clear, f))
          made.dots.push({ value, line, cell, number: dot.number })
      })
      const at = movedBy(expectedAt(f, line, { cell, number: 1 }), moved.along, f)
      const off = before && f.cell ? jump(before, { at, cell }, f.cell) : 0
      if (f.cell && Math.abs(off) > clear)
        made.cells.push({ value: lengthOf(f.cell) + off, line, cell, after: before?.cell })
      before = { at, cell }
    }
  })
  return made
}

/** The distances to the places beside it that a dot makes by being off its own. */
function distancesOf(number: number, off: Off, clear: number, f: Steps): number[] {
  const [column, row] = [lengthOf(f.along), lengthOf(f.down)]
  const made: number[] = []
  if (Math.abs(off.along) > clear) made.push(columnOf(number) === 0 ? column - off.along : column + off.along)
  if (Math.abs(off.across) > clear) {
    if (rowOf(number) < 2) made.push(row - off.across)
    if (rowOf(number) > 0) made.push(row + off.across)
  }
  return made
}

/** How far a dot is off its place, in the directions of the lattice. */
function offOf(f: Steps, line: number, dot: ReadDot): Off {
  const at = expectedAt(f, line, dot)
  const [x, y] = [dot.dot.x - at.x, dot.dot.y - at.y]
  const determinant = f.along.x * f.down.y - f.along.y * f.down.x
  return {
    along: ((x * f.down.y - y * f.down.x) / determinant) * lengthOf(f.along),
    across: ((f.along.x * y - f.along.y * x) / determinant) * lengthOf(f.down),
  }
}

/** What most values of a cell have in common: a middle one; of two equally good ones the smaller. */
function common(values: readonly number[]): number {
  if (values.length === 1) return values[0]
  const sorted = [...values].sort((a, b) => a - b)
  const [low, high] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]]
  return Math.abs(low) <= Math.abs(high) ? low : high
}

const movedBy = (p: Point, along: number, f: Steps): Point => {
  const share = along / lengthOf(f.along)
  return { x: p.x + share * f.along.x, y: p.y + share * f.along.y }
}

/** What is left of the way between two cells, along the line, when the usual steps are taken off: it lies in one step. */
function jump(a: { at: Point; cell: number }, b: { at: Point; cell: number }, step: Point): number {
  const cells = b.cell - a.cell
  const [x, y] = [b.at.x - a.at.x - cells * step.x, b.at.y - a.at.y - cells * step.y]
  return (x * step.x + y * step.y) / lengthOf(step)
}

function cellsInOrder(dots: readonly ReadDot[]): [number, ReadDot[]][] {
  const cells = new Map<number, ReadDot[]>()
  for (const dot of dots) {
    const known = cells.get(dot.cell)
    if (known) known.push(dot)
    else cells.set(dot.cell, [dot])
  }
  return [...cells].sort((a, b) => a[0] - b[0])
}
