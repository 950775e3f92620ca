import { robustFit, type Fit } from '../geometry/fit.js'
import { lengthOf as length, type Point } from '../geometry/point.js'
import type { ReadDot } from './cells.js'

/**
 * The lattice of a block as one robust linear regression (geometry/fit): each dot is its line's origin, plus its cell times
 * the cell step, plus its column and row times a dot step. The steps are free vectors, so that a turned, squashed or sheared
 * drawing is measured as it is. A line that is broken has an origin for each of its stretches.
 */

/** Position errors below this are arithmetic and rounding of coordinates, millimetres. */
const NOISE_FLOOR = 0.002

/** The cells at which a new stretch of a line begins, for each line, in order. */
export type Breaks = readonly (readonly number[])[]

/** The steps of a lattice as fitted to all dots of a block. Millimetres. */
export interface Steps {
  fit?: Fit
  /** Place of dot 1 of the first cell of each line. */
  origins: Point[]
  /** The same for each stretch of each line, as if the line were unbroken and lay as that stretch does. */
  stretches: Point[][]
  breaks: Breaks
  cell?: Point
  column?: Point
  row?: Point
  /** Dot steps, guessed where not fitted. */
  along: Point
  down: Point
  /** Where in the parameters of the fit each step and the first stretch of each line stand. */
  index: { cell: number; column: number; row: number; lines: number[] }
}

export const columnOf = (number: number): number => (number > 3 ? 1 : 0)
export const rowOf = (number: number): number => (number - 1) % 3

/** Which stretch of its line a cell belongs to. */
export const stretchOf = (breaks: Breaks, line: number, cell: number): number =>
  (breaks[line] ?? []).filter((from) => from <= cell).length

/** Fits what the dots determine: all steps, or without the column or row step when a guess of it has to do. */
export function fitSteps(lines: ReadDot[][], guess: { along: Point; down: Point }, breaks: Breaks = []): Steps {
  const all = lines.flatMap((dots, line) => dots.map((dot) => ({ line, dot })))
  const first: number[] = []
  let origins = 0
  lines.forEach((_, line) => {
    first.push(origins)
    origins += 1 + (breaks[line]?.length ?? 0)
  })
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
    const design = all.map(({ line, dot }) => {
      const own = first[line] + stretchOf(breaks, line, dot.cell)
      const row = new Array<number>(origins).fill(0)
      row[own] = 1
      if (useCell) row.push(dot.cell)
      if (useColumn) row.push(columnOf(dot.number))
      if (useRow) row.push(rowOf(dot.number))
      return row
    })
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
    const [cell, column, row] = [origins, origins + Number(useCell), origins + Number(useCell) + Number(useColumn)]
    const vector = (i: number): Point => ({ x: fit.parameters[i][0], y: fit.parameters[i][1] })
    return {
      fit,
      origins: first.map(vector),
      stretches: lines.map((_, l) =>
        Array.from({ length: 1 + (breaks[l]?.length ?? 0) }, (_, s) => vector(first[l] + s)),
      ),
      breaks,
      cell: useCell ? vector(cell) : undefined,
      column: useColumn ? vector(column) : undefined,
      row: useRow ? vector(row) : undefined,
      along: useColumn ? vector(column) : guess.along,
      down: useRow ? vector(row) : guess.down,
      index: { cell, column, row, lines: first },
    }
  }
  const starts = lines.map((dots) => ({ x: dots[0].dot.x, y: dots[0].dot.y }))
  return {
    origins: starts,
    stretches: starts.map((start) => [start]),
    breaks: [],
    ...guess,
    index: { cell: 0, column: 0, row: 0, lines: first },
  }
}

export function expectedAt(f: Steps, line: number, { cell, number }: Pick<ReadDot, 'cell' | 'number'>): Point {
  const origin = f.stretches[line][stretchOf(f.breaks, line, cell)]
  return {
    x: origin.x + cell * (f.cell?.x ?? 0) + columnOf(number) * f.along.x + rowOf(number) * f.down.x,
    y: origin.y + cell * (f.cell?.y ?? 0) + columnOf(number) * f.along.y + rowOf(number) * f.down.y,
  }
}

export const lengthOf = ({ x, y }: Point): number => length(x, y)
export const deviation = (f: Steps, parameter: number): number =>
  f.fit ? f.fit.sigma * Math.sqrt(f.fit.covariance[parameter][parameter]) : 0
