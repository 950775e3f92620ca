import { toMillimetres } from '../../sign/length.js'
import { nearestTo } from './aim.js'
import type { SignOrder } from './order.js'
import type { Wanted } from './wanted.js'

/** How far from the edges of the panel the content stays. Millimetres. */

export interface Margins {
  left: number
  right: number
  top: number
  bottom: number
  /** The content stands at this very distance from the lower edge, instead of in the middle. */
  isBottomFixed: boolean
}

export interface Frame {
  width: number
  inset: number
}

/** Common practice, no source. */
const USUAL_MARGIN = 12
const LEAST_MARGIN = 6
/** Beyond what a clearance from a border asks at least. */
const CLEARANCE_INSIDE = 1
const OFFSET_INSIDE = 2

export function frameOf({ border, units = 'mm' }: SignOrder): Frame | undefined {
  if (!border) return undefined
  return {
    width: toMillimetres(border.width, units),
    inset: border.inset === undefined ? LEAST_MARGIN : toMillimetres(border.inset, units),
  }
}

/** @param isTight the least that will do, where the usual leaves too little room */
export function marginsOf(order: SignOrder, wanted: Wanted, isTight: boolean): Margins {
  const margin = isTight ? LEAST_MARGIN : USUAL_MARGIN
  const frame = frameOf(order)
  const all = frame ? Math.max(margin, frame.inset + frame.width + clearOfBorder(wanted, margin)) : margin
  // Whether a code asks this of a sign may be seen only where it hangs: the braille stands there in any case.
  const left = wanted.likelyEnds('braille.leftOffset')
  const bottom = wanted.likelyEnds('braille.bottomOffset')
  const isBottomFixed = bottom.min !== undefined || bottom.max !== undefined
  return {
    left: nearestTo(all, left, OFFSET_INSIDE),
    right: all,
    top: all,
    bottom: nearestTo(all, bottom, OFFSET_INSIDE),
    isBottomFixed,
  }
}

const clearOfBorder = (wanted: Wanted, margin: number): number =>
  Math.max(
    ...['raised.borderClearance', 'braille.borderClearance'].map((quantity) =>
      nearestTo(margin, wanted.ends(quantity), CLEARANCE_INSIDE),
    ),
  )
