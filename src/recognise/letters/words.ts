import { medianOf } from '../../geometry/fit.js'
import { distanceBetween } from '../../geometry/polyline.js'
import { contoursOf } from './ink.js'
import type { Part } from './rows.js'

/**
 * Spaces between words, from the gaps between neighbouring characters. Some shops set letters so that their boxes follow at
 * even gaps, others so that their outlines do: the measure under which the gaps within words are more even is the one to
 * believe. A space of common faces is about a third of the height of the capitals wide (common practice, no source) and comes
 * on top of the usual gap.
 */

/** A gap that is wider than the usual one by this share of the height of capitals may be, or is, a space. */
const MAY_BE_SPACE = 0.16
const IS_SPACE = 0.24
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
  return lines.map(({ capital }, i) => {
    const alike = gaps.filter((_, n) => Math.abs(lines[n].capital / capital - 1) <= ONE_SIZE)
    const judge = (of: keyof Gaps) =>
      judged(
        gaps[i][of],
        alike.flatMap((g) => g[of]),
        capital,
      )
    const [even, uneven] = [judge('betweenOutlines'), judge('betweenBoxes')].sort((a, b) => a.uneven - b.uneven)
    const spaces = even.spaces.map((s, n) => (s === undefined ? uneven.spaces[n] : s))
    return { spaces, gaps: gaps[i].betweenOutlines }
  })
}

function gapsIn(parts: readonly Part[]): Gaps {
  const contours = parts.map((p) => contoursOf(p.ink))
  const following = parts.slice(1)
  return {
    betweenOutlines: following.map((_, i) => distanceBetween(contours[i], contours[i + 1]).distance),
    betweenBoxes: following.map(({ box }, i) => box.x - (parts[i].box.x + parts[i].box.width)),
  }
}

interface Judged {
  spaces: (boolean | undefined)[]
  /** How much the gaps within words differ from the usual one, at most. */
  uneven: number
}

function judged(gaps: readonly number[], all: readonly number[], capital: number): Judged {
  const usual = usualOf(all, capital)
  const within = all.filter((g) => g - usual < MAY_BE_SPACE * capital)
  const widest = within.reduce((a, b) => Math.max(a, b - usual), 0)
  const spaces = gaps.map((gap) => {
    const more = gap - usual
    if (all.length < FEWEST_GAPS && gap > DOUBTFUL * capital) return undefined
    if (more < MAY_BE_SPACE * capital) return false
    return more >= Math.max(IS_SPACE * capital, STANDS_OUT * widest) ? true : undefined
  })
  return { spaces, uneven: within.reduce((a, b) => Math.max(a, Math.abs(b - usual)), 0) }
}

/** The middle of the gaps within words: those before the widest step in the upper half of their order, if one is wide enough. */
function usualOf(gaps: readonly number[], capital: number): number {
  const sorted = [...gaps].sort((a, b) => a - b)
  let cut = sorted.length
  let widest = STEP * capital
  for (let i = Math.ceil(sorted.length / 2); i < sorted.length; i++)
    if (sorted[i] - sorted[i - 1] > widest) {
      widest = sorted[i] - sorted[i - 1]
      cut = i
    }
  return medianOf(sorted.slice(0, cut))
}
