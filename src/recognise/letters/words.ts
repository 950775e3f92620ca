import { medianOf } from '../../geometry/fit.js'
import type { Part } from './rows.js'

/**
 * Spaces between words, from the gaps between the boxes of neighbouring characters. A space of common faces is about a third
 * of the height of the capitals wide (common practice, no source) and comes on top of the usual gap.
 */

/** A gap that is wider than the usual one by this share of the height of capitals may be, or is, a space. */
const MAY_BE_SPACE = 0.16
const IS_SPACE = 0.24
/** A gap is a space only when it stands out from the gaps within words by so many of their widest deviation. */
const STANDS_OUT = 1.5

export interface Spacing {
  /** For each character but the first whether a space stands before it; undefined when it cannot be told. */
  spaces: (boolean | undefined)[]
  /** The gaps, millimetres along the baseline. */
  gaps: number[]
}

export function spacesIn(parts: readonly Part[], capital: number): Spacing {
  const gaps = parts.slice(1).map((part, i) => part.box.x - (parts[i].box.x + parts[i].box.width))
  if (gaps.length === 0) return { spaces: [], gaps }
  const usual = usualOf(gaps, capital)
  const within = gaps.filter((g) => g - usual < MAY_BE_SPACE * capital)
  const widest = within.reduce((a, b) => Math.max(a, b - usual), 0)
  const spaces = gaps.map((gap) => {
    const more = gap - usual
    if (more < MAY_BE_SPACE * capital) return false
    return more >= Math.max(IS_SPACE * capital, STANDS_OUT * widest) ? true : undefined
  })
  return { spaces, gaps }
}

/** The middle of the gaps within words: those that a space's width above the narrowest ones does not reach. */
function usualOf(gaps: readonly number[], capital: number): number {
  const sorted = [...gaps].sort((a, b) => a - b)
  // The widest step between successive gaps parts letters from words, if it is wide enough to be a part of a space.
  let cut = sorted.length
  let widest = MAY_BE_SPACE * capital * 0.75
  for (let i = 1; i < sorted.length; i++)
    if (sorted[i] - sorted[i - 1] > widest) {
      widest = sorted[i] - sorted[i - 1]
      cut = i
    }
  return medianOf(sorted.slice(0, cut))
}
