import { medianOf } from '../geometry/fit.js'
import { distance, type Point } from '../geometry/point.js'
import { missing, type Fact, type Known, type Place } from '../sign/sign.js'
import type { ReadDot } from './cells.js'
import type { Dot } from './dots.js'
import { fitStretches } from './breaks.js'
import { distortionOf, type Distortion } from './distortion.js'
import { madeByDisplaced, type Made } from './displaced.js'
import { columnOf, deviation, expectedAt, lengthOf, rowOf, type Steps } from './steps.js'

/**
 * Spacings of a block of braille. The values are those of one lattice fitted to all dots at once (robust linear regression,
 * see geometry/fit): each dot is its line's origin, plus its cell times the cell step, plus its column and row times a dot
 * step; the steps are free vectors, so a turned, squashed or sheared drawing is measured as it is. The extremes are those of
 * the actual pairs of dots: a displaced dot cannot hide in a fit.
 */
export interface Spacings {
  dotSpacing: Fact<number>
  cellSpacing: Fact<number>
  lineSpacing?: Fact<number>
  /** Step from cell to cell and from row to row, millimetres, as a reader goes. */
  along: Point
  down: Point
  /** Place of dot 1 of the first cell of each line. */
  origins: Point[]
  distortion: Distortion
}

/** An extreme is shown with its place when it is farther from the fit than so many standard deviations, and millimetres. */
const CLEARLY_OFF = 4
const CLEARLY_OFF_LEAST = 0.02
/** Extremes that differ by less, millimetres, are shown together, up to so many places. */
const ALIKE = 0.01
const MOST_PLACES = 12

const METHODS = {
  dot: 'robust least-squares lattice through all dots; extremes over neighbouring dots of a cell (half of 1-3 and 4-6 when no dot is between), centre to centre, and over the places beside a dot that is out of its own',
  cell: 'robust least-squares lattice through all dots; extremes over the same dot position in neighbouring occupied cells of a line, per cell step, centre to centre, and over cells that stand off their line’s lattice',
  cellByOrigin:
    'robust least-squares lattice through all dots; no dot position repeats in neighbouring cells, so the extremes are those of the cells’ origins',
  line: 'robust least-squares lattice through all dots; distance between the fitted lines',
  diameter: 'diameter of the least enclosing circle, half a painted stroke on each side included',
} as const

/** Pairs of dot numbers one spacing apart, and two apart with the number that must be missing between them. */
const NEIGHBOURS = [
  [1, 2],
  [2, 3],
  [4, 5],
  [5, 6],
  [1, 4],
  [2, 5],
  [3, 6],
] as const
const DOUBLES = [
  [1, 3, 2],
  [4, 6, 5],
] as const

/**
 * @param lines The dots of each line in reading order.
 * @param guess Dot steps as the lattice was found; used where the dots do not determine them.
 * @param placeOf Names a cell of a line, or one dot of it.
 */
export function spacingsOf(
  lines: ReadDot[][],
  guess: { along: Point; down: Point },
  placeOf: (line: number, cell: number, dot?: number) => Place,
): Spacings {
  const fitted = fitStretches(lines, guess)
  const off = (line: number, dot: ReadDot): number => distance(dot.dot, expectedAt(fitted, line, dot))
  const worse = (line: number, a: ReadDot, b: ReadDot): Place => {
    const [bad, good] = off(line, a) >= off(line, b) ? [a, b] : [b, a]
    const mates = lines[line].filter((dot) => dot.cell === bad.cell && dot.number !== bad.number)
    const others = [good, ...mates].map((dot) => off(line, dot))
    const alone = off(line, bad) > Math.max(2 * Math.max(...others), CLEARLY_OFF_LEAST)
    return alone ? placeOf(line, bad.cell, bad.number) : placeOf(line, bad.cell)
  }
  const dotPairs: Pair[] = []
  const cellPairs: Pair[] = []
  lines.forEach((dots, line) => {
    for (const cell of byCell(dots).values()) {
      const add = (a: ReadDot | undefined, b: ReadDot | undefined, steps: number) => {
        if (a && b) dotPairs.push({ value: distance(a.dot, b.dot) / steps, places: () => [worse(line, a, b)] })
      }
      for (const [a, b] of NEIGHBOURS) add(cell.get(a), cell.get(b), 1)
      for (const [a, b, between] of DOUBLES) if (!cell.has(between)) add(cell.get(a), cell.get(b), 2)
    }
    for (const [a, b] of repeatedPlaces(dots))
      cellPairs.push({ value: distance(a.dot, b.dot) / (b.cell - a.cell), places: () => [worse(line, a, b)] })
  })
  const made = madeByDisplaced(lines, fitted)
  const asPair = ({ value, line, cell, number, after }: Made): Pair => ({
    value,
    places: () => [...(after === undefined ? [] : [placeOf(line, after)]), placeOf(line, cell, number)],
  })
  if (fitted.column || fitted.row) dotPairs.push(...made.dots.map(asPair))
  return {
    dotSpacing: dotFact(fitted, dotPairs),
    cellSpacing: cellFact(
      fitted,
      cellPairs.length > 0 ? cellPairs : originPairs(fitted, lines, placeOf),
      made.cells.map(asPair),
      cellPairs.length > 0 ? METHODS.cell : METHODS.cellByOrigin,
    ),
    lineSpacing: lines.length > 1 ? lineFact(fitted, lines.length) : undefined,
    along: fitted.along,
    down: fitted.down,
    origins: fitted.origins,
    distortion: distortionOf(
      fitted,
      lines.flatMap((dots) => dots.map(({ dot }) => dot)),
    ),
  }
}

export function diameterFact(dots: readonly Dot[], placeOf: (dot: Dot) => Place): Known<number> {
  const diameters = dots.map((d) => d.diameter)
  const value = diameters.reduce((sum, d) => sum + d, 0) / diameters.length
  const variance = diameters.reduce((sum, d) => sum + (d - value) ** 2, 0) / Math.max(diameters.length - 1, 1)
  const least = dots.reduce((a, b) => (b.diameter < a.diameter ? b : a))
  const most = dots.reduce((a, b) => (b.diameter > a.diameter ? b : a))
  const middle = medianOf(diameters)
  const places = [least, most].filter((dot) => Math.abs(dot.diameter - middle) > CLEARLY_OFF_LEAST).map(placeOf)
  return {
    value,
    basis: 'drawn',
    min: least.diameter,
    max: most.diameter,
    count: dots.length,
    uncertainty: Math.sqrt(variance / diameters.length),
    method: METHODS.diameter,
    ...(places.length > 0 && { places }),
  }
}

interface Pair {
  value: number
  places: () => Place[]
}

function dotFact(f: Steps, pairs: Pair[]): Fact<number> {
  const steps: { value: number; deviation: number }[] = []
  if (f.column) steps.push({ value: lengthOf(f.column), deviation: deviation(f, f.index.column) })
  if (f.row) steps.push({ value: lengthOf(f.row), deviation: deviation(f, f.index.row) })
  if (steps.length === 0 || pairs.length === 0)
    return missing('no two neighbouring dots of a cell show the dot spacing')
  const weight = steps.reduce((sum, s) => sum + 1 / s.deviation ** 2, 0)
  const value = steps.reduce((sum, s) => sum + s.value / s.deviation ** 2, 0) / weight
  return fact(value, 1 / Math.sqrt(weight), pairs, METHODS.dot, f.fit?.sigma ?? 0)
}

function cellFact(f: Steps, shown: Pair[], made: Pair[], method: string): Fact<number> {
  if (!f.cell) return missing('no two cells show the cell spacing')
  return fact(lengthOf(f.cell), deviation(f, f.index.cell), [...shown, ...made], method, f.fit?.sigma ?? 0)
}

function lineFact(f: Steps, lines: number): Fact<number> {
  const direction = f.cell ?? f.along
  const cross = direction.x * f.down.y - direction.y * f.down.x
  const pitches: number[] = []
  for (let i = 1; i < lines; i++) {
    const x = f.origins[i].x - f.origins[i - 1].x
    const y = f.origins[i].y - f.origins[i - 1].y
    pitches.push((Math.abs(direction.x * y - direction.y * x) / Math.abs(cross)) * lengthOf(f.down))
  }
  const value = pitches.reduce((sum, p) => sum + p, 0) / pitches.length
  const c = f.fit?.covariance
  const [a, b] = [f.index.lines[0], f.index.lines[lines - 1]]
  const variance = c ? c[a][a] + c[b][b] - 2 * c[a][b] : 0
  return {
    value,
    basis: 'drawn',
    min: Math.min(...pitches),
    max: Math.max(...pitches),
    count: pitches.length,
    uncertainty: ((f.fit?.sigma ?? 0) * Math.sqrt(Math.max(variance, 0))) / (lines - 1),
    method: METHODS.line,
  }
}

function fact(value: number, uncertainty: number, pairs: Pair[], method: string, sigma: number): Known<number> {
  const least = pairs.reduce((a, b) => (b.value < a.value ? b : a))
  const most = pairs.reduce((a, b) => (b.value > a.value ? b : a))
  const clear = Math.max(CLEARLY_OFF * Math.SQRT2 * sigma, CLEARLY_OFF_LEAST)
  const extreme = ({ value: v }: Pair) => v < least.value + ALIKE || v > most.value - ALIKE
  const places = pairs.filter((p) => Math.abs(p.value - value) > clear && extreme(p)).flatMap((p) => p.places())
  const distinct = places
    .filter((place, i) => places.findIndex((p) => p.element === place.element) === i)
    .slice(0, MOST_PLACES)
  return {
    value,
    basis: 'drawn',
    min: least.value,
    max: most.value,
    count: pairs.length,
    uncertainty,
    method,
    ...(distinct.length > 0 && { places: distinct }),
  }
}

function byCell(dots: ReadDot[]): Map<number, Map<number, ReadDot>> {
  const cells = new Map<number, Map<number, ReadDot>>()
  for (const dot of dots) {
    const cell = cells.get(dot.cell)
    if (cell) cell.set(dot.number, dot)
    else cells.set(dot.cell, new Map([[dot.number, dot]]))
  }
  return cells
}

/** The same dot position in neighbouring occupied cells. */
function repeatedPlaces(dots: ReadDot[]): [ReadDot, ReadDot][] {
  const cells = [...byCell(dots)].sort((a, b) => a[0] - b[0]).map(([, cell]) => cell)
  return cells.slice(1).flatMap((cell, i) =>
    [...cell].flatMap(([number, dot]): [ReadDot, ReadDot][] => {
      const before = cells[i].get(number)
      return before ? [[before, dot]] : []
    }),
  )
}

/** Neighbouring cells by their origins: each cell's dots moved back to dot 1 by the fitted dot steps, then averaged. */
function originPairs(f: Steps, lines: ReadDot[][], placeOf: (line: number, cell: number) => Place): Pair[] {
  return lines.flatMap((dots, line) => {
    const origins = [...byCell(dots)]
      .sort((a, b) => a[0] - b[0])
      .map(([cell, members]) => {
        const back = [...members.values()].map(({ dot, number }) => ({
          x: dot.x - columnOf(number) * f.along.x - rowOf(number) * f.down.x,
          y: dot.y - columnOf(number) * f.along.y - rowOf(number) * f.down.y,
        }))
        const mean = (of: (p: Point) => number) => back.reduce((sum, p) => sum + of(p), 0) / back.length
        return { cell, at: { x: mean((p) => p.x), y: mean((p) => p.y) } }
      })
    return origins.slice(1).map((origin, i) => ({
      value: distance(origin.at, origins[i].at) / (origin.cell - origins[i].cell),
      places: () => [placeOf(line, origin.cell)],
    }))
  })
}
