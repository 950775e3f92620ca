import type { Observation } from '../measure/measurement.js'
import { decide, type Decision } from '../statistics/guard-band.js'
import type { Ends } from './limits.js'
import type { ResolvedLimit } from './finding.js'

/** One observation against one limit. No value is rounded, and no limit is widened but for the noise of the arithmetic. */

/** Millimetres by which arithmetic on drawn coordinates may be off; allowed at every limit and no tolerance. */
export const ARITHMETIC_NOISE = 0.001

/** What sums and products of declared values may be off, in millimetres or as a ratio. */
export const FLOATING_NOISE = 1e-9

export type Outcome = Decision

export interface Compared {
  outcome: Outcome
  /** Signed distance of the worst extreme inside (+) or outside (-) the nearer end; null where nothing is measured in numbers. */
  margin: number | null
}

/** What may be off in an observation because of arithmetic alone, in the observation's unit. */
export function noiseOf({ basis, value, context }: Observation, unit: ResolvedLimit['unit']): number {
  if (basis !== 'drawn') return FLOATING_NOISE
  if (unit === 'mm') return ARITHMETIC_NOISE
  const below = context?.characterHeight ?? context?.strokeThickness
  if (typeof below !== 'number' || typeof value !== 'number') return FLOATING_NOISE
  return (ARITHMETIC_NOISE * (1 + Math.abs(value))) / below
}

/** The lowest and the highest single value that an observation stands for. */
export function extremes({ value, min, max }: Observation): [number, number] {
  const middle = typeof value === 'number' ? value : NaN
  return [min ?? middle, max ?? middle]
}

/** Signed distance of the worst extreme from the nearer end; Infinity without ends. */
export function marginOf(observation: Observation, { min, max }: Ends): number {
  const [low, high] = extremes(observation)
  return Math.min(min === undefined ? Infinity : low - min, max === undefined ? Infinity : max - high)
}

/**
 * Whether a number lies within the ends.
 * @param guarded with an uncertainty that reaches over the nearer end, the outcome is open.
 */
export function compareNumber(
  observation: Observation,
  ends: Ends,
  unit: ResolvedLimit['unit'],
  guarded: boolean,
): Compared {
  const margin = marginOf(observation, ends)
  const rule = guarded ? 'guarded' : 'simple'
  const outcome = decide(rule, margin, observation.uncertainty ?? 0, noiseOf(observation, unit))
  return { outcome, margin: outcome === 'pass' ? Math.max(0, margin) : margin }
}
