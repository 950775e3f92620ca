import { medianOf } from '../geometry/fit.js'
import type { Point } from '../geometry/point.js'
import { basesOf, straightened } from './bases.js'
import { clustersOf, USUAL_SPACING } from './clusters.js'
import type { Dot } from './dots.js'
import { latticesAlong, type Lattice } from './lattice.js'

/** Groups of dots that stand on a braille lattice, by geometry alone. */
export interface Group {
  dots: Dot[]
  /** The lattices that fit about equally well, the most natural first: read along one direction or along the other. */
  lattices: RankedLattice[]
  /** Set when the group was not looked at. */
  tooMany?: true
}

/** The less strange, the more natural. */
export type RankedLattice = Lattice & { strangeness: number }

/** Dots of one group that are looked at: more are no braille of a sign. */
export const MOST_DOTS_IN_BLOCK = 4000

/** True dot spacing of braille in use, millimetres, with room for faults on either side. */
const TRUE_SPACING = [1.9, 3.2] as const
/** At any scale: diameter over dot spacing, and cell pitch over dot spacing. */
const DIAMETER_OF_SPACING = [0.33, 0.86] as const
const PITCH_OF_SPACING = [2.35, 3.65] as const
/** Cell pitch over dot spacing from the narrowest to the widest that 2010 ADA Standards, Table 703.3.1, leaves. */
const USUAL_PITCH = [2.4, 3.34] as const
/** Share of the dots that a lattice has to explain. */
const LEAST_EXPLAINED = 0.85
/** Another lattice is as good when it explains as many dots and misfits at most so much more (dot spacings). */
const AS_GOOD = 0.03
/** In groups up to this size bases that are only inferred are tried even when another fits. */
const FEW_DOTS = 8
/** Lines nearer to each other than this (dot spacings) are rather the columns of cells. */
const LEAST_LINE_PITCH = 3.2
/** Radians away from the axes of the drawing from which on a lattice stands askew. */
const MOST_OFF_AXIS = 0.35
/** Rows of two lines farther apart than this (dot spacings) belong to two blocks. */
const WIDEST_LINE_PITCH = 6.2

/** Rows farther apart than this, in diameters, are in no two lines that follow each other: two dot spacings less than that pitch. */
const WIDEST_GAP = (WIDEST_LINE_PITCH - 2) * USUAL_SPACING

export function groupsOf(dots: readonly Dot[]): Group[] {
  return clustersOf(dots).flatMap((cluster) => splitLines(cluster))
}

function splitLines(cluster: Dot[]): Group[] {
  if (cluster.length > MOST_DOTS_IN_BLOCK) return [{ dots: cluster, lattices: [], tooMany: true }]
  const lattices = latticesOf(cluster)
  const best = lattices[0]
  if (!best) {
    const parts = betweenWideGaps(cluster)
    return parts.length > 1 ? parts.flatMap(splitLines) : [{ dots: cluster, lattices: [] }]
  }
  const cut = best.lines.findIndex((_, i) => i > 0 && apart(best, i - 1) > WIDEST_LINE_PITCH)
  if (cut < 0) return [{ dots: cluster, lattices }]
  const above = new Set(best.lines.slice(0, cut).flatMap((line) => line.places.map((p) => p.dot)))
  const first = cluster.filter((dot) => above.has(dot))
  const second = cluster.filter((dot) => !above.has(dot))
  return first.length === 0 || second.length === 0
    ? [{ dots: cluster, lattices }]
    : [...splitLines(first), ...splitLines(second)]
}

/** Dots that fit no lattice together, parted where no line of theirs can follow another: blocks of different spacings, say. */
function betweenWideGaps(cluster: readonly Dot[]): Dot[][] {
  const sorted = [...cluster].sort((a, b) => a.y - b.y)
  const widest = WIDEST_GAP * medianOf(cluster.map((d) => d.diameter))
  const parts: Dot[][] = []
  sorted.forEach((dot, i) => {
    if (i === 0 || dot.y - sorted[i - 1].y > widest) parts.push([dot])
    else parts[parts.length - 1].push(dot)
  })
  return parts
}

/** Least pitch between a line and the next that their rows allow, in dot spacings. */
function apart(lattice: Lattice, i: number): number {
  const [upper, lower] = [lattice.lines[i], lattice.lines[i + 1]]
  return lower.top - lower.rowSlack - upper.top
}

function latticesOf(dots: Dot[]): RankedLattice[] {
  if (dots.length < 2) return []
  const bases = basesOf(dots)
  const found: RankedLattice[] = []
  for (const { first, second, direct } of bases) {
    if (dots.length > FEW_DOTS && (direct ? found.some(isPlain) : found.length > 0)) break
    for (const [along, across] of [upright(first, second), upright(second, first)]) {
      for (const lattice of latticesAlong(dots, straightened(dots, along, across), across))
        if (dots.length - lattice.outliers.length >= LEAST_EXPLAINED * dots.length)
          found.push({ ...lattice, strangeness: strangenessOf(lattice, direct) })
    }
  }
  const fewest = Math.min(...found.map((l) => l.outliers.length))
  const best = found.filter((l) => l.outliers.length === fewest)
  const misfit = Math.min(...best.map((l) => l.misfit))
  return best
    .filter((l) => l.misfit <= misfit + AS_GOOD)
    .sort((a, b) => a.strangeness - b.strangeness || a.misfit - b.misfit)
}

/** Nothing fits better: other bases need not be tried. */
const isPlain = (lattice: RankedLattice): boolean =>
  lattice.strangeness === 0 && lattice.outliers.length === 0 && lattice.misfit < AS_GOOD

/** How unlike usual braille a lattice lies on its drawing. Common sense, no source; only the order matters. */
function strangenessOf(lattice: Lattice, direct: boolean): number {
  const { along } = lattice
  const angle = Math.abs(Math.atan2(along.y, along.x))
  const offAxis = Math.min(angle, Math.abs(angle - Math.PI / 2))
  const crowded = lattice.lines.some((line, i) => i > 0 && line.top - lattice.lines[i - 1].top < LEAST_LINE_PITCH)
  const spacing = spacingOf(lattice)
  const pitch = lattice.pitch ?? USUAL_PITCH[0]
  return (
    (direct ? 0 : 1) +
    (pitch < USUAL_PITCH[0] || pitch > USUAL_PITCH[1] ? 1 : 0) +
    (angle > Math.PI / 4 ? 2 : 0) +
    (offAxis > MOST_OFF_AXIS ? 2 : 0) +
    (crowded ? 3 : 0) +
    (spacing < TRUE_SPACING[0] || spacing > TRUE_SPACING[1] ? 2 : 0)
  )
}

const spacingOf = ({ along, across }: Lattice): number =>
  Math.sqrt(Math.hypot(along.x, along.y) * Math.hypot(across.x, across.y))

/** Signs so that `along` points to the right (or down) and `across` is clockwise from it as seen. */
function upright(along: Point, across: Point): [Point, Point] {
  const turn = Math.abs(along.x) >= Math.abs(along.y) ? along.x < 0 : along.y < 0
  const u = turn ? { x: -along.x, y: -along.y } : along
  const clockwise = u.x * across.y - u.y * across.x > 0
  return [u, clockwise ? across : { x: -across.x, y: -across.y }]
}

/** Whether a lattice has the proportions of braille, when nobody said that it is. */
export function looksLikeBraille(lattice: Lattice): boolean {
  const spacing = spacingOf(lattice)
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
    const outliers = new Set(lattice.outliers.map((outlier) => outlier.dot))
    return group.dots.filter((dot) => !outliers.has(dot))
  })
}
