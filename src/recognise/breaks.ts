import { medianOf } from '../geometry/fit.js'
import type { Point } from '../geometry/point.js'
import type { ReadDot } from './cells.js'
import { columnOf, fitSteps, lengthOf, rowOf, type Steps } from './steps.js'

/**
 * Lines that are broken: from some cell on, all dots stand moved along the line. One lattice through both stretches would fit
 * neither, so each stretch gets an origin of its own, and what lies between them is measured for itself. The break is
 * looked for where successive cells differ most from the usual step, and believed when the fit gets much closer by it.
 */

/** Fits that are closer than this (standard deviation, millimetres) hide no break. */
const CLOSE = 0.03
/** A break is believed when it brings the standard deviation down to this share. */
const MUCH_CLOSER = 0.4
/** Breaks of one line that are looked for, and places that are tried for each. */
const MOST_BREAKS = 3
const MOST_TRIED = 3

/** The steps of a block, each stretch of a broken line by itself. */
export function fitStretches(lines: ReadDot[][], guess: { along: Point; down: Point }): Steps {
  const whole = fitSteps(lines, guess)
  if (sigmaOf(whole) <= CLOSE) return whole
  const breaks = lines.map((dots) => breaksOf(dots, guess))
  return breaks.some((own) => own.length > 0) ? fitSteps(lines, guess, breaks) : whole
}

/** The breaks of one line, looked for in that line alone: the cost does not grow with the block. */
function breaksOf(dots: ReadDot[], guess: { along: Point; down: Point }): number[] {
  let breaks: number[] = []
  let best = fitSteps([dots], guess)
  for (let found = 0; found < MOST_BREAKS && sigmaOf(best) > CLOSE; found++) {
    const tried = jumps(dots, best)
      .slice(0, MOST_TRIED)
      .map((cell) => [...breaks, cell].sort((a, b) => a - b))
      .map((own) => ({ own, fitted: fitSteps([dots], guess, [own]) }))
      .filter(({ fitted }) => fitted.fit)
    if (tried.length === 0) return breaks
    const closest = tried.reduce((a, b) => (sigmaOf(a.fitted) <= sigmaOf(b.fitted) ? a : b))
    if (sigmaOf(closest.fitted) > MUCH_CLOSER * sigmaOf(best)) return breaks
    best = closest.fitted
    breaks = closest.own
  }
  return breaks
}

const sigmaOf = ({ fit }: Steps): number => fit?.sigma ?? 0

/** Cells whose step from the cell before differs from the usual one, the most different first. */
function jumps(dots: ReadDot[], { along, down, breaks }: Steps): number[] {
  const length = lengthOf(along)
  const cells = new Map<number, number[]>()
  for (const { dot, cell, number } of dots) {
    const x = dot.x - columnOf(number) * along.x - rowOf(number) * down.x
    const y = dot.y - columnOf(number) * along.y - rowOf(number) * down.y
    cells.set(cell, [...(cells.get(cell) ?? []), (x * along.x + y * along.y) / length])
  }
  const placed = [...cells].sort((a, b) => a[0] - b[0]).map(([cell, at]) => ({ cell, at: medianOf(at) }))
  const steps = placed
    .slice(1)
    .map(({ cell, at }, i) => ({ cell, cells: cell - placed[i].cell, step: at - placed[i].at }))
  const usual = medianOf(steps.map(({ step, cells: count }) => step / count))
  return steps
    .filter(({ cell }) => !breaks[0]?.includes(cell))
    .map((s) => ({ cell: s.cell, off: Math.abs(s.step - s.cells * usual) }))
    .sort((a, b) => b.off - a.off)
    .map(({ cell }) => cell)
}
