import type { RowInForce } from './in-force.js'
import type { Characters } from './lettering.js'
import type { Region } from './region.js'

/** What satisfies all rows of one quantity, for characters that the same rows look at. */
export interface Window extends Characters {
  quantity: string
  region: Region
  rows: RowInForce[]
}

/** Rows that cannot all be satisfied, and none of which can be left out of the contradiction. */
export interface Conflict {
  /** One, or those that the rows tie together. */
  quantities: string[]
  rows: RowInForce[]
  why: 'no-value' | 'opposite' | 'dome'
}
