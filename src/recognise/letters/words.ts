import { medianOf } from '../../geometry/fit.js'
import { edgesOf, gapBetween } from '../../geometry/gap.js'
import { contoursOf } from './ink.js'
import type { Part } from './rows.js'

/**
 * Spaces between words, from the gaps between neighbouring characters. Some shops set letters so that their boxes follow at
 * even gaps, others so that their outlines do, and typefaces do neither: the mean of both measures parts spaces from other
 * gaps best. A space of common faces is about a third of the height of the capitals wide (common practice, no source) and
 * comes on top of the usual gap; the limits here were chosen on the reference faces.
 */

/** A gap that is wider than the usual one by this share of the height of capitals may be, or is, a space. */
const MAY_BE_SPACE = 0.18
const IS_SPACE = 0.23
/** The figure 1 stands loosely in the width that all figures of a face share: next to it a gap says less. */
const LOOSE = 0.12
/** A gap is a space only when it stands out from the gaps within words by so many times their widest deviation. */
const STANDS_OUT = 1.5
/** Between successive gaps, a step of this share of the height of capitals may part gaps within words from spaces. */
const STEP = 0.12

export interface Spacing {
  /** For each character but the first whether a space stands before it; undefined when it cannot be told. */
  spaces: (boolean | undefined)[]
  /** Between the outlines of neighbouring characters, millimetres. */
  gaps: number[]
}

/** A row of characters and how high its capitals are, in millimetres. */
export interface Sized {
  parts: readonly Part[]
  /** For each character whether it may be a figure 1. */
  ones: readonly boolean[]
  capital: number
}

/** Lines are of one size when their capitals differ by no more than this share. */
const ONE_SIZE = 0.05
/** When there are fewer gaps than this, the usual one is not known: a gap wider than this share of the capitals is doubtful. */
const FEWEST_GAPS = 2
const DOUBTFUL = 0.4

interface Gaps {
  betweenOutlines: number[]
  betweenBoxes: number[]
}

/** The spaces of each line; lines of one size are judged together. */
export function spacesIn(lines: readonly Sized[]): Spacing[] {
  const gaps = lines.map(({ parts }) => gapsIn(parts))
  const pools = new Map<string, Pool>()
  return lines.map((line, i) => {
    const alike = gaps.filter((_, n) => Math.abs(lines[n].capital / line.capital - 1) <= ONE_SIZE)
    const key = alike.map((own) => gaps.indexOf(own)).join(' ')
    const pool = pools.get(key) ?? poolOf(alike)
    pools.set(key, pool)
    return { spaces: judged(gaps[i], pool, line), gaps: gaps[i].betweenOutlines }
  })
}

/** All gaps of lines of one size: as they come, and in order. */
interface Pool extends Gaps {
  sortedOutlines: Float64Array
  sortedBoxes: Float64Array
}

function poolOf(alike: readonly Gaps[]): Pool {
  const betweenOutlines = alike.flatMap((g) => g.betweenOutlines)
  const betweenBoxes = alike.flatMap((g) => g.betweenBoxes)
  return {
    betweenOutlines,
    betweenBoxes,
    sortedOutlines: new Float64Array(betweenOutlines).sort(),
    sortedBoxes: new Float64Array(betweenBoxes).sort(),
  }
}

function gapsIn(parts: readonly Part[]): Gaps {
  const edges = parts.map((p) => edgesOf(contoursOf(p.ink)))
  const following = parts.slice(1)
  return {
    betweenOutlines: following.map((_, i) => gapBetween(edges[i], edges[i + 1]).distance),
    betweenBoxes: following.map(({ box }, i) => box.x - (parts[i].box.x + parts[i].box.width)),
  }
}

function judged(own: Gaps, all: Pool, { capital, ones }: Sized): Spacing['spaces'] {
  const outlines = usualOf(all.sortedOutlines, capital)
  const boxes = usualOf(all.sortedBoxes, capital)
  const excess = ({ betweenOutlines, betweenBoxes }: Gaps, i: number) =>
    (betweenOutlines[i] - outlines + betweenBoxes[i] - boxes) / (2 * capital)
  const count = all.betweenOutlines.length
  let widest = 0
  for (let i = 0; i < count; i++) {
    const more = excess(all, i)
    if (more < MAY_BE_SPACE && more > widest) widest = more
  }
  return own.betweenOutlines.map((_, i) => {
    const more = excess(own, i)
    if (count < FEWEST_GAPS && own.betweenOutlines[i] > DOUBTFUL * capital) return undefined
    if (more < MAY_BE_SPACE) return false
    const least = Math.max(IS_SPACE + (ones[i] || ones[i + 1] ? LOOSE : 0), STANDS_OUT * widest)
    return more >= least ? true : undefined
  })
}

/** The middle of the gaps within words: those before the widest step in the upper half of their order, if one is wide enough. */
function usualOf(sorted: Float64Array, capital: number): number {
  let cut = sorted.length
  let widest = STEP * capital
  for (let i = Math.ceil(sorted.length / 2); i < sorted.length; i++)
    if (sorted[i] - sorted[i - 1] > widest) {
      widest = sorted[i] - sorted[i - 1]
      cut = i
    }
  return medianOf(sorted.subarray(0, cut))
}
