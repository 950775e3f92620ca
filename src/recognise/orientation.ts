import { centreOfBox, type Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'
import { directions, FACINGS, readingsOf, type Facing, type LineReading } from './cells.js'
import type { Lattice } from './lattice.js'
import type { Wording, WordingJudge } from './wording.js'

/**
 * Which way round a block is read, and in which rows and columns of its cells a line without them stands. Geometry leaves
 * this open; the reading decides: an expected text before all, then a confirmed translation, then the natural way.
 */
export interface ChosenReading {
  lattice: Lattice
  facing: Facing
  lines: { reading: LineReading; wording: Wording; /** Other ways that read as well. */ alternatives: LineReading[] }[]
}

export type Choice = ChosenReading | { undecided: string } | 'limit-reached'

/** What counts for a reading, in points. Common sense, no source. */
const POINTS = {
  expected: 100,
  contracted: 10,
  uncontracted: 8,
  quality: 12,
  naturalPlace: 2,
  upright: 3,
  unmirrored: 4,
  lettering: 3,
} as const
/** Wording this good may overrule that a drawing is upright and seen from the front. */
const GOOD_QUALITY = 0.75
/** Readings that differ by less are equally good. */
const EQUAL = 0.5
/** Lines of a block that are read. */
export const MOST_LINES = 60
/** Combinations of ways to read the lines that are held against an expected text as a whole. */
const MOST_COMBINATIONS = 64

interface Scored extends ChosenReading {
  score: number
  expected: boolean
  quality: number
}

/** @param lettering Boxes of what is probably lettering: braille stands below it. */
export function chooseReading(lattices: Lattice[], judge: WordingJudge, lettering: readonly Box[]): Choice {
  const scored: Scored[] = []
  for (const lattice of lattices) {
    if (lattice.lines.length > MOST_LINES) return 'limit-reached'
    for (const facing of FACINGS) {
      const reading = scoredReading(lattice, facing, judge, lettering)
      if (!reading) return 'limit-reached'
      if (reading.expected && isNatural(lattice, facing)) return reading
      scored.push(reading)
    }
  }
  const candidates = scored.filter(
    (s) => isUsual(s.lattice, s.facing) || s.expected || s.quality >= GOOD_QUALITY || standsBelow(s, lettering),
  )
  candidates.sort((a, b) => b.score - a.score)
  const [best, second] = candidates
  if (second && best.score - second.score < EQUAL && textOf(best) !== textOf(second))
    return {
      undecided: `the dots read ${textOf(best)} one way round and ${textOf(second)} another, and nothing says which is meant`,
    }
  return best
}

const textOf = (s: ChosenReading): string => s.lines.map((line) => line.reading.cells).join(' / ')

const isSideways = (lattice: Lattice): boolean => Math.abs(lattice.along.y) > Math.abs(lattice.along.x)
const isNatural = (lattice: Lattice, facing: Facing): boolean =>
  !isSideways(lattice) && !facing.turned && !facing.mirrored
/** The ways round that need no good reason: upright, or for a sideways block either end up. */
const isUsual = (lattice: Lattice, facing: Facing): boolean =>
  !facing.mirrored && (isSideways(lattice) || !facing.turned)

const standsBelow = (s: Scored, lettering: readonly Box[]): boolean =>
  !s.facing.mirrored && s.quality > 0 && letteringAbove(s.lattice, s.facing, lettering)

function scoredReading(
  lattice: Lattice,
  facing: Facing,
  judge: WordingJudge,
  lettering: readonly Box[],
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
    const rivals = others.filter((o) => best.points - o.points <= POINTS.naturalPlace + EQUAL && !best.wording.expected)
    lines.push({ reading: best.reading, wording: best.wording, alternatives: rivals.map((o) => o.reading) })
  }
  const whole = asExpected(ways, judge)
  if (whole)
    whole.forEach((reading, i) => {
      const wording = judge.judge(reading.cells)
      if (wording) lines[i] = { reading, wording, alternatives: [] }
    })
  const expected = whole !== undefined || lines.every((line) => line.wording.expected)
  const mean = (value: (line: ChosenReading['lines'][number]) => number) =>
    lines.reduce((sum, line) => sum + value(line), 0) / lines.length
  let score = expected ? POINTS.expected : mean((line) => pointsOf(line.reading, line.wording))
  if (!facing.mirrored) score += POINTS.unmirrored
  if (!facing.turned && !isSideways(lattice)) score += POINTS.upright
  if (letteringAbove(lattice, facing, lettering)) score += POINTS.lettering
  return { lattice, facing, lines, score, expected, quality: mean((line) => line.wording.quality) }
}

function pointsOf(reading: LineReading, wording: Wording): number {
  const natural = reading.rowShift === 0 && reading.columnShift === 0 ? POINTS.naturalPlace : 0
  if (wording.expected) return POINTS.expected + natural
  if (wording.text === undefined) return natural
  return natural + (wording.contracted ? POINTS.contracted : POINTS.uncontracted) + POINTS.quality * wording.quality
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
