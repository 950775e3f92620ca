import { medianOf } from '../../geometry/fit.js'
import { spansOf } from './ink.js'
import type { Part } from './rows.js'

/**
 * The upright stem at the left of a letter (the only one of I and T), cut by lines along the baseline. All in the reader's
 * view, where stems are upright.
 */
export interface Stem {
  /** Width along the baseline, millimetres, of the cuts that show the stem alone. */
  width: number
  /** How far the foot and the head reach out to the left of the stem, in widths of the stem; the larger. */
  reach: number
}

/** Capitals whose left stem stands free over a good part of their height, and ones whose only stem is in the middle. */
const LEFT_STEM = 'BDEFHIKLMNPRU'
/** Capitals by how surely their stem is as thick as that of I: those of N and M are thinner in many faces. */
export const STEMS_BY_TRUST = ['I', 'HEFTLDPBRKU', 'NM'] as const
const MIDDLE_STEM = 'T'
/** Small letters with a free foot at the left: only for serifs. */
const SMALL_FEET = 'hkmnr'

/** Lines across a letter, between these shares of its height. */
const CUTS = 25
const CUT_BETWEEN = [0.15, 0.85] as const
/** Cuts wider than the narrower ones by this share show an arm or a bowl as well. */
const STEM_ALONE = 1.04
const FEWEST_CUTS = 6
/** How near the ends of a stem its serifs are looked for, in shares of the height. */
const HEAD = [0.012, 0.03] as const
const FOOT = [0.97, 0.988] as const
const [FIRST_CUT, LAST_CUT] = CUT_BETWEEN
const HEIGHTS = [
  ...HEAD,
  ...Array.from({ length: CUTS }, (_, i) => FIRST_CUT + ((LAST_CUT - FIRST_CUT) * i) / (CUTS - 1)),
  ...FOOT,
]

const hasStem = (label: string): boolean => LEFT_STEM.includes(label) || label === MIDDLE_STEM
export const hasFoot = (label: string): boolean => hasStem(label) || SMALL_FEET.includes(label)

/** The stem of a letter that has one; undefined when the cuts do not show it. */
export function stemOf({ ink, box }: Part, label: string): Stem | undefined {
  const all = spansOf(
    ink,
    HEIGHTS.map((share) => box.y + share * box.height),
  )
  const cuts = all.slice(HEAD.length, HEAD.length + CUTS)
  if (cuts.some((spans) => spans.length < 2)) return undefined
  const widths = cuts.map((spans) => spans[1] - spans[0])
  const narrow = new Float64Array(widths).sort()[Math.floor(CUTS / 4)]
  const alone = cuts.filter((_, i) => Math.abs(widths[i] / narrow - 1) <= STEM_ALONE - 1)
  if (alone.length < FEWEST_CUTS) return undefined
  const left = medianOf(alone.map((spans) => spans[0]))
  const width = medianOf(alone.map((spans) => spans[1] - spans[0]))
  // The foot of T stands free; its head is the arm.
  const [head, foot] = [all.slice(0, HEAD.length), all.slice(HEAD.length + CUTS)]
  const ends = label === MIDDLE_STEM ? foot : [...head, ...foot]
  const reaches = ends.flatMap((spans) => (spans.length >= 2 ? [(left - spans[0]) / width] : []))
  return { width, reach: Math.max(...reaches, 0) }
}
