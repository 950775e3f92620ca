/** Sizes, in points, and colours of the printed sheets. */

/** A4, whose printed part fits on Letter too. */
export const MARGIN = 54
/** Where the lines above and under the text of a sheet stand, from its edge. */
export const HEAD = 30
export const FOOT = 36
export const SIZES = { 1: 20, 2: 14, 3: 11, 4: 9.5 } as const
export const BODY = 9.5
export const SMALL = 8
export const GAP = 5
export const INK = '#1f2933'
export const QUIET = '#4a5563'
export const RULE = '#9aa5b1'
export const HEAD_GROUND = '#eef1f4'
export const LINK = '#1d4f91'
