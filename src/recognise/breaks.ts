import { medianOf } from '../geometry/fit.js'
import type { Point } from '../geometry/point.js'
import type { ReadDot } from './cells.js'
import { columnOf, fitSteps, lengthOf, rowOf, type Breaks, type Steps } from './steps.js'

/**
 * Lines that are broken: from some cell on, all dots stand moved along the line. One lattice through both stretches would fit
 * neither, so each stretch gets an origin of its own, and what lies between them is measured for itself. The break is
 * looked for where successive cells differ most from the usual step, and believed when the fit gets much closer by it.
 */

/** Fits that are closer than this (standard deviation, millimetres) hide no break. */
const CLOSE = 0.03
/** A break is believed when it brings the standard deviation down to this share. */
const MUCH_CLOSER = 0.4
/** Breaks of one block that are looked for, and places that are tried for each. */
const MOST_BREAKS = 3
const MOST_TRIED = 3

/** The steps of a block, each stretch of a broken line by itself. */
export function fitStretches(lines: ReadDot[][], guess: { along: Point; down: Point }): Steps {
  let best = fitSteps(lines, guess)
  for (let found = 0; found < MOST_BREAKS; found++) {
    if (!best.fit || best.fit.sigma <= CLOSE) return best
    const tried = jumps(lines, best)
      .slice(0, MOST_TRIED)
      .map(({ line, cell }) => fitSteps(lines, guess, withBreak(lines, best.breaks, line, cell)))
    const closest = tried.reduce<Steps | undefined>((a, b) => (a && sigmaOf(a) <= sigmaOf(b) ? a : b), undefined)
    if (!closest || sigmaOf(closest) > MUCH_CLOSER * best.fit.sigma) return best
    best = closest
  }
  return best
}

const sigmaOf = ({ fit }: Steps): number => fit?.sigma ?? Infinity

const withBreak = (lines: ReadDot[][], breaks: Breaks, line: number, cell: number): Breaks =>
  lines.map((_, l) => (l === line ? [...(breaks[l] ?? []), cell].sort((a, b) => a - b) : (breaks[l] ?? [])))

/** Cells whose step from the cell before differs from the usual one, the most different first. */
function jumps(lines: ReadDot[][], { along, down, breaks }: Steps): { line: number; cell: number }[] {
  const length = lengthOf(along)
  const steps = lines.flatMap((dots, line) => {
    const cells = new Map<number, number[]>()
    for (const { dot, cell, number } of dots) {
      const x = dot.x - columnOf(number) * along.x - rowOf(number) * down.x
      const y = dot.y - columnOf(number) * along.y - rowOf(number) * down.y
      cells.set(cell, [...(cells.get(cell) ?? []), (x * along.x + y * along.y) / length])
    }
    const placed = [...cells].sort((a, b) => a[0] - b[0]).map(([cell, at]) => ({ cell, at: medianOf(at) }))
    return placed.slice(1).map(({ cell, at }, i) => ({
      line,
      cell,
      cells: cell - placed[i].cell,
      step: at - placed[i].at,
    }))
  })
  const usual = medianOf(steps.map(({ step, cells }) => step / cells))
  return steps
    .filter(({ line, cell }) => !breaks[line]?.includes(cell))
    .map((s) => ({ ...s, off: Math.abs(s.step - s.cells * usual) }))
    .sort((a, b) => b.off - a.off)
}
