import { medianOf } from '../geometry/fit.js'
import type { Point } from '../geometry/point.js'
import { basesOf } from './bases.js'
import { clustersOf } from './clusters.js'
import type { Dot } from './dots.js'
import { latticeOf, type Lattice } from './lattice.js'

/** Groups of dots that stand on a braille lattice, by geometry alone. */
export interface Group {
  dots: Dot[]
  /** The lattices that fit about equally well, the most natural first: read along one direction or along the other. */
  lattices: Lattice[]
  /** Set when the group was not looked at. */
  tooMany?: true
}

/** Dots of one group that are looked at: more are no braille of a sign. */
export const MOST_DOTS_IN_BLOCK = 4000

/** True dot spacing of braille in use, millimetres, with room for faults on either side. */
const TRUE_SPACING = [1.9, 3.2] as const
/** At any scale: diameter over dot spacing, and cell pitch over dot spacing. */
const DIAMETER_OF_SPACING = [0.33, 0.86] as const
const PITCH_OF_SPACING = [2.35, 3.35] as const
/** Share of the dots that a lattice has to explain. */
const LEAST_EXPLAINED = 0.85
/** Another lattice is as good when it explains as many dots and misfits at most so much more (dot spacings). */
const AS_GOOD = 0.03
/** Rows of two lines farther apart than this (dot spacings) belong to two blocks. */
const WIDEST_LINE_PITCH = 6.2

export function groupsOf(dots: readonly Dot[]): Group[] {
  return clustersOf(dots).flatMap((cluster) => splitLines(cluster))
}

function splitLines(cluster: Dot[]): Group[] {
  if (cluster.length > MOST_DOTS_IN_BLOCK) return [{ dots: cluster, lattices: [], tooMany: true }]
  const lattices = latticesOf(cluster)
  const best = lattices[0]
  if (!best) return [{ dots: cluster, lattices: [] }]
  const cut = best.lines.findIndex((line, i) => i > 0 && apart(best, i - 1) > WIDEST_LINE_PITCH && line.top > 0)
  if (cut < 0) return [{ dots: cluster, lattices }]
  const above = new Set(best.lines.slice(0, cut).flatMap((line) => line.places.map((p) => p.dot)))
  const first = cluster.filter((dot) => above.has(dot))
  const second = cluster.filter((dot) => !above.has(dot))
  return first.length === 0 || second.length === 0
    ? [{ dots: cluster, lattices }]
    : [...splitLines(first), ...splitLines(second)]
}

/** Least pitch between a line and the next that their rows allow, in dot spacings. */
function apart(lattice: Lattice, i: number): number {
  const [upper, lower] = [lattice.lines[i], lattice.lines[i + 1]]
  return lower.top - lower.rowSlack - upper.top
}

function latticesOf(dots: Dot[]): Lattice[] {
  if (dots.length < 2) return []
  const bases = basesOf(dots)
  for (const direct of [true, false]) {
    const found = bases
      .filter((basis) => basis.direct === direct)
      .flatMap(({ first, second }) => [
        latticeOf(dots, ...upright(first, second)),
        latticeOf(dots, ...upright(second, first)),
      ])
      .filter((lattice) => lattice !== undefined)
      .filter((lattice) => dots.length - lattice.outliers.length >= LEAST_EXPLAINED * dots.length)
      .sort((a, b) => a.outliers.length - b.outliers.length || turned(a) - turned(b) || a.misfit - b.misfit)
    if (found.length === 0) continue
    const misfit = Math.min(...found.filter((l) => l.outliers.length === found[0].outliers.length).map((l) => l.misfit))
    return found.filter((l) => l.outliers.length === found[0].outliers.length && l.misfit <= misfit + AS_GOOD)
  }
  return []
}

/** Quarter turns away from upright. */
const turned = (lattice: Lattice): number => (Math.abs(lattice.along.y) > Math.abs(lattice.along.x) ? 1 : 0)

/** Signs so that `along` points to the right (or down) and `across` is clockwise from it as seen. */
function upright(along: Point, across: Point): [Point, Point] {
  const turn = Math.abs(along.x) >= Math.abs(along.y) ? along.x < 0 : along.y < 0
  const u = turn ? { x: -along.x, y: -along.y } : along
  const clockwise = u.x * across.y - u.y * across.x > 0
  return [u, clockwise ? across : { x: -across.x, y: -across.y }]
}

/** Whether a lattice has the proportions of braille, when nobody said that it is. */
export function looksLikeBraille(lattice: Lattice): boolean {
  const spacing = Math.sqrt(
    Math.hypot(lattice.along.x, lattice.along.y) * Math.hypot(lattice.across.x, lattice.across.y),
  )
  const diameter = medianOf(lattice.lines.flatMap((line) => line.places.map((p) => p.dot.diameter)))
  const within = (value: number, [least, most]: readonly [number, number]) => value >= least && value <= most
  if (!within(diameter / spacing, DIAMETER_OF_SPACING)) return false
  return lattice.pitch === undefined ? within(spacing, TRUE_SPACING) : within(lattice.pitch, PITCH_OF_SPACING)
}

/** Fewest dots that geometry alone takes for braille. */
export const FEWEST_DOTS = 4

/** The dots that geometry alone takes for braille. */
export function brailleAmong(dots: readonly Dot[]): Dot[] {
  return groupsOf(dots).flatMap((group) => {
    const lattice = group.lattices.find(looksLikeBraille)
    if (!lattice || group.dots.length < FEWEST_DOTS) return []
    const outliers = new Set(lattice.outliers)
    return group.dots.filter((dot) => !outliers.has(dot))
  })
}
