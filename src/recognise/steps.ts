import { robustFit, type Fit } from '../geometry/fit.js'
import type { Point } from '../geometry/point.js'
import type { ReadDot } from './cells.js'

/**
 * The lattice of a block as one robust linear regression (geometry/fit): each dot is its line's origin, plus its cell times
 * the cell step, plus its column and row times a dot step. The steps are free vectors, so that a turned, squashed or sheared
 * drawing is measured as it is.
 */

/** Position errors below this are arithmetic and rounding of coordinates, millimetres. */
const NOISE_FLOOR = 0.002

/** The steps of a lattice as fitted to all dots of a block. Millimetres. */
export interface Steps {
  fit?: Fit
  origins: Point[]
  cell?: Point
  column?: Point
  row?: Point
  /** Dot steps, guessed where not fitted. */
  along: Point
  down: Point
  index: { cell: number; column: number; row: number }
}

export const columnOf = (number: number): number => (number > 3 ? 1 : 0)
export const rowOf = (number: number): number => (number - 1) % 3

/** Fits what the dots determine: all steps, or without the column or row step when a guess of it has to do. */
export function fitSteps(lines: ReadDot[][], guess: { along: Point; down: Point }): Steps {
  const all = lines.flatMap((dots, line) => dots.map((dot) => ({ line, dot })))
  const varies = (value: (dot: ReadDot) => number) => new Set(all.map(({ dot }) => value(dot))).size > 1
  const cells = varies((d) => d.cell)
  const columns = varies((d) => columnOf(d.number))
  const rows = varies((d) => rowOf(d.number))
  for (const [useColumn, useRow, useCell] of [
    [columns, rows, cells],
    [false, rows, cells],
    [false, false, cells],
    [false, false, false],
  ] as const) {
    const design = all.map(({ line, dot }) => [
      ...lines.map((_, l) => (l === line ? 1 : 0)),
      ...(useCell ? [dot.cell] : []),
      ...(useColumn ? [columnOf(dot.number)] : []),
      ...(useRow ? [rowOf(dot.number)] : []),
    ])
    const observed = all.map(({ dot }) => {
      const column = useColumn ? 0 : columnOf(dot.number)
      const row = useRow ? 0 : rowOf(dot.number)
      return [
        dot.dot.x - column * guess.along.x - row * guess.down.x,
        dot.dot.y - column * guess.along.y - row * guess.down.y,
      ]
    })
    const fit = robustFit(design, observed, NOISE_FLOOR)
    if (!fit) continue
    const [cell, column, row] = [
      lines.length,
      lines.length + Number(useCell),
      lines.length + Number(useCell) + Number(useColumn),
    ]
    const vector = (i: number): Point => ({ x: fit.parameters[i][0], y: fit.parameters[i][1] })
    return {
      fit,
      origins: lines.map((_, l) => vector(l)),
      cell: useCell ? vector(cell) : undefined,
      column: useColumn ? vector(column) : undefined,
      row: useRow ? vector(row) : undefined,
      along: useColumn ? vector(column) : guess.along,
      down: useRow ? vector(row) : guess.down,
      index: { cell, column, row },
    }
  }
  return {
    origins: lines.map((dots) => ({ x: dots[0].dot.x, y: dots[0].dot.y })),
    ...guess,
    index: { cell: 0, column: 0, row: 0 },
  }
}

export const expectedAt = (f: Steps, line: number, { cell, number }: ReadDot): Point => ({
  x: f.origins[line].x + cell * (f.cell?.x ?? 0) + columnOf(number) * f.along.x + rowOf(number) * f.down.x,
  y: f.origins[line].y + cell * (f.cell?.y ?? 0) + columnOf(number) * f.along.y + rowOf(number) * f.down.y,
})

export const lengthOf = (p: Point): number => Math.hypot(p.x, p.y)
export const deviation = (f: Steps, parameter: number): number =>
  f.fit ? f.fit.sigma * Math.sqrt(f.fit.covariance[parameter][parameter]) : 0
