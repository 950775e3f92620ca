import { centreOfBox, type Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'
import { directions, FACINGS, readingsOf, type Facing, type LineReading } from './cells.js'
import type { RankedLattice } from './blocks.js'
import type { Lattice } from './lattice.js'
import type { Wording, WordingJudge } from './wording.js'

/**
 * Which way round a block is read, and in which rows and columns of its cells a line without them stands. Geometry leaves
 * this open; the reading decides: an expected text before all, then a confirmed translation, then the natural way.
 */
export interface ChosenReading {
  /** Logarithm of the odds for it, as estimated. */
  score: number
  lattice: RankedLattice
  facing: Facing
  lines: {
    reading: LineReading
    wording: Wording
    /** Other ways with the same dots that say something too, when no expected text decides. */
    alternatives: LineReading[]
    /** One of these reads about as well, so that nothing is told. */
    isOpen: boolean
  }[]
}

export type Choice = ChosenReading | { undecided: string } | 'limit-reached'

/**
 * What counts for a reading, in natural logarithms of odds so that the familiarity of the cells can be added. Estimates of
 * ours, no source.
 */
const POINTS = {
  expected: 200,
  contracted: 5,
  uncontracted: 4,
  quality: 4,
  naturalPlace: 2,
  usual: 5,
  unmirrored: 5,
  lettering: 4,
  neighbours: 8,
} as const
/** A lattice this strange is believed only when it reads. */
const TOO_STRANGE = 3
/** Readings that differ by less are equally good: a wrong reading is worse than none. */
const EQUAL = 1.5
/** Rows and columns of a line, and ways round of a block, are in doubt when another reads this near to the chosen one, or so much better. */
const PLAUSIBLE = 0.5
const READS_BETTER = 1
/** Lines of a block that are read. */
export const MOST_LINES = 60
/** Combinations of ways to read the lines that are held against an expected text as a whole. */
const MOST_COMBINATIONS = 64

interface Scored extends ChosenReading {
  expected: boolean
  /** Upright and seen from the front, or as near to that as geometry allows. */
  usual: boolean
  /** Runs as other, surer braille of the drawing does. */
  alongside: boolean
  /** A translation confirms every line. */
  confirmed: boolean
  /** The part of the score that is for the words alone. */
  words: number
}

/** What is known of the surroundings of a block. */
export interface Surroundings {
  /** Boxes of what is probably lettering: braille stands below it. */
  lettering: readonly Box[]
  /** Reading direction, and whether mirrored, of other braille of the drawing that is sure. */
  neighbours?: { reading: Point; mirrored: boolean }
}

export function chooseReading(lattices: RankedLattice[], judge: WordingJudge, around: Surroundings): Choice {
  const scored: Scored[] = []
  const plainest = Math.min(...lattices.map((l) => l.strangeness))
  for (const lattice of lattices) {
    if (lattice.lines.length > MOST_LINES) return 'limit-reached'
    for (const facing of FACINGS) {
      const usual = lattice.strangeness === plainest && !facing.mirrored && (isSideways(lattice) || !facing.turned)
      const reading = scoredReading(lattice, facing, usual, judge, around)
      if (!reading) return 'limit-reached'
      if (reading.expected && usual && !isSideways(lattice)) return reading
      scored.push(reading)
    }
  }
  const candidates = scored.filter(
    ({ usual, expected, alongside, lattice, confirmed }) =>
      usual || expected || alongside || (confirmed && lattice.strangeness === plainest),
  )
  candidates.sort((a, b) => b.score - a.score)
  const [best, second] = candidates
  if (best.lattice.strangeness >= TOO_STRANGE && !best.expected && !best.confirmed)
    return { undecided: 'the dots stand in rows, but not as cells and lines of braille usually do' }
  if (second && best.score - second.score < EQUAL && textOf(best) !== textOf(second))
    return {
      undecided: `the dots read ${textOf(best)} one way round and ${textOf(second)} another, and nothing says which is meant`,
    }
  if (!best.expected && candidates.some((other) => other.confirmed && other.words > best.words + READS_BETTER))
    return { undecided: `the dots read ${textOf(best)} as they lie, but give better words another way round` }
  return best
}

const textOf = (s: ChosenReading): string => s.lines.map((line) => line.reading.cells).join(' / ')

const isSideways = (lattice: Lattice): boolean => Math.abs(lattice.along.y) > Math.abs(lattice.along.x)
function scoredReading(
  lattice: RankedLattice,
  facing: Facing,
  usual: boolean,
  judge: WordingJudge,
  around: Surroundings,
): Scored | undefined {
  const ways = readingsOf(lattice, facing)
  const judged = ways.map((line) => line.map((reading) => ({ reading, wording: judge.judge(reading.cells) })))
  const lines: ChosenReading['lines'] = []
  for (const line of judged) {
    const known = line.flatMap(({ reading, wording }) =>
      wording ? [{ reading, wording, points: pointsOf(reading, wording) }] : [],
    )
    if (known.length < line.length) return undefined
    known.sort((a, b) => b.points - a.points)
    const [best, ...others] = known
    const rivals = best.wording.expected
      ? []
      : others.filter((o) => o.wording.text !== undefined || best.wording.text === undefined)
    lines.push({
      reading: best.reading,
      wording: best.wording,
      alternatives: rivals.map((o) => o.reading),
      isOpen: rivals.some((o) => o.wording.quality >= Math.min(PLAUSIBLE, best.wording.quality)),
    })
  }
  const whole = asExpected(ways, judge)
  if (whole)
    whole.forEach((reading, i) => {
      const wording = judge.judge(reading.cells)
      if (wording) lines[i] = { reading, wording, alternatives: [], isOpen: false }
    })
  const expected = whole !== undefined || lines.every((line) => line.wording.expected)
  const sum = lines.reduce((total, line) => total + pointsOf(line.reading, line.wording), 0)
  const below = !facing.mirrored && letteringAbove(lattice, facing, around.lettering)
  const alongside = runsAlongside(lattice, facing, around.neighbours)
  const score =
    (expected ? POINTS.expected : sum) +
    (facing.mirrored ? 0 : POINTS.unmirrored) +
    (usual ? POINTS.usual : 0) +
    (below ? POINTS.lettering : 0) +
    (alongside ? POINTS.neighbours : 0)
  const confirmed = lines.every((line) => line.wording.text !== undefined)
  return { lattice, facing, lines, score, expected, usual, alongside, confirmed, words: sum }
}

function runsAlongside(lattice: Lattice, facing: Facing, neighbours: Surroundings['neighbours']): boolean {
  if (!neighbours || neighbours.mirrored !== facing.mirrored) return false
  const { reading } = directions(lattice, facing)
  const cosine = reading.x * neighbours.reading.x + reading.y * neighbours.reading.y
  return cosine > 0.9 * Math.hypot(reading.x, reading.y) * Math.hypot(neighbours.reading.x, neighbours.reading.y)
}

function pointsOf(reading: LineReading, wording: Wording): number {
  const natural = reading.rowShift === 0 && reading.columnShift === 0 ? POINTS.naturalPlace : 0
  if (wording.expected) return POINTS.expected + natural
  const confirmed = wording.contracted ? POINTS.contracted : POINTS.uncontracted
  const text = wording.text === undefined ? 0 : confirmed + POINTS.quality * wording.quality
  return natural + wording.familiarity + text
}

/** The ways to read the lines that together say an expected text, if any do. */
function asExpected(ways: LineReading[][], judge: WordingJudge): LineReading[] | undefined {
  const combinations = ways.reduce((product, line) => product * line.length, 1)
  for (let n = 0; n < Math.min(combinations, MOST_COMBINATIONS); n++) {
    let rest = n
    const lines = ways.map((line) => {
      const reading = line[rest % line.length]
      rest = Math.floor(rest / line.length)
      return reading
    })
    if (judge.says(lines.map((line) => line.cells).join('\u2800'))) return lines
  }
  return undefined
}

/** Whether the lettering as a whole stands above the block for a reader of that facing. */
function letteringAbove(lattice: Lattice, facing: Facing, lettering: readonly Box[]): boolean {
  if (lettering.length === 0) return false
  const here = meanOf(lattice.lines.flatMap((line) => line.places.map((p) => p.dot)))
  const there = meanOf(lettering.map(centreOfBox))
  const { down } = directions(lattice, facing)
  const below = (here.x - there.x) * down.x + (here.y - there.y) * down.y
  const beside = Math.abs((here.x - there.x) * down.y - (here.y - there.y) * down.x)
  return below > beside
}

const meanOf = (points: readonly Point[]): Point => ({
  x: points.reduce((sum, p) => sum + p.x, 0) / points.length,
  y: points.reduce((sum, p) => sum + p.y, 0) / points.length,
})
