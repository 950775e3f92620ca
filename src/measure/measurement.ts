import type { NumberUnit } from '../sign/quantities.js'
import type { Between, Place, WhyUnknown } from '../sign/sign.js'

/** One value of a quantity at one place of the sign. */
export interface Observation {
  /**
   * Millimetres, a ratio, a kind from an enumeration, or a plain yes or no. `value` is the mean where it stands for several. A
   * length is `true` where it is as long as anyone may ask for and has no number of its own.
   */
  value: number | string | boolean
  min?: number
  max?: number
  count?: number
  /** Standard uncertainty, same unit. */
  uncertainty?: number
  /** The true value is this or more: what would tell it. Such a value shows that a limit is kept, never that it is not. */
  atLeast?: Gap
  /** The true value is this or less: what would tell it. Such a value shows that a limit is not kept, never that it is. */
  atMost?: Gap
  basis: 'declared' | 'drawn' | 'measured'
  instrument?: string
  /** The single readings of an instrument, where it stands for those and nothing else. */
  sample?: readonly number[]
  places: Place[]
  /** Number of the lettering that it was taken from, where it was taken from one. */
  lettering?: number
  /** Of a distance between neighbouring characters: those that have the least and the greatest. */
  between?: Between
  /** Other quantities that the limit of this observation depends on, e.g. `strokeThickness` in mm. */
  context?: Record<string, number | string | boolean>
  /** What keeps the limit of this observation from being known, and what would tell it. */
  limitGaps?: Gap[]
  /** Said in the finding beside the value, e.g. what the cells read and what the letters say. */
  remark?: string
}

/** A value that could not be had, why, and what would decide it. */
export interface Gap {
  reason: WhyUnknown
  why: string
  places: Place[]
  /** What a client could add to the description. */
  ask?: { pointer: string; ask: string; unit?: 'mm' | 'ratio' | NumberUnit; choices?: string[] }
}

export type MeasureUnit = 'mm' | 'ratio' | NumberUnit | 'kind' | 'truth'

/** All that is known of one quantity on one sign. No observation and no gap: the sign has nothing to measure it on. */
export interface Measurement {
  quantity: string
  unit: MeasureUnit
  /** How it was measured, for people. */
  method: string
  observations: Observation[]
  gaps: Gap[]
  /** Why there is nothing to measure, in one sentence, when there is nothing. */
  nothing?: string
}
