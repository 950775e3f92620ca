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
  return lines.map((line, i) => {
    const alike = gaps.filter((_, n) => Math.abs(lines[n].capital / line.capital - 1) <= ONE_SIZE)
    return { spaces: judged(gaps[i], alike, line), gaps: gaps[i].betweenOutlines }
  })
}

function gapsIn(parts: readonly Part[]): Gaps {
  const edges = parts.map((p) => edgesOf(contoursOf(p.ink)))
  const following = parts.slice(1)
  return {
    betweenOutlines: following.map((_, i) => gapBetween(edges[i], edges[i + 1]).distance),
    betweenBoxes: following.map(({ box }, i) => box.x - (parts[i].box.x + parts[i].box.width)),
  }
}

function judged(own: Gaps, alike: readonly Gaps[], { capital, ones }: Sized): Spacing['spaces'] {
  const outlines = usualOf(
    alike.flatMap((g) => g.betweenOutlines),
    capital,
  )
  const boxes = usualOf(
    alike.flatMap((g) => g.betweenBoxes),
    capital,
  )
  const excess = ({ betweenOutlines, betweenBoxes }: Gaps) =>
    betweenOutlines.map((gap, i) => (gap - outlines + betweenBoxes[i] - boxes) / (2 * capital))
  const all = alike.flatMap(excess)
  const widest = all.filter((e) => e < MAY_BE_SPACE).reduce((a, b) => Math.max(a, b), 0)
  return excess(own).map((more, i) => {
    if (all.length < FEWEST_GAPS && own.betweenOutlines[i] > DOUBTFUL * capital) return undefined
    if (more < MAY_BE_SPACE) return false
    const least = Math.max(IS_SPACE + (ones[i] || ones[i + 1] ? LOOSE : 0), STANDS_OUT * widest)
    return more >= least ? true : undefined
  })
}

/** The middle of the gaps within words: those before the widest step in the upper half of their order, if one is wide enough. */
function usualOf(gaps: readonly number[], capital: number): number {
  const sorted = new Float64Array(gaps).sort()
  let cut = sorted.length
  let widest = STEP * capital
  for (let i = Math.ceil(sorted.length / 2); i < sorted.length; i++)
    if (sorted[i] - sorted[i - 1] > widest) {
      widest = sorted[i] - sorted[i - 1]
      cut = i
    }
  return medianOf(sorted.subarray(0, cut))
}
