import { ARITHMETIC_NOISE, noiseOf } from '../judge/compare.js'
import type { Judgement } from '../judge/finding.js'
import type { Measurement, Observation } from '../measure/measurement.js'
import type { Measured } from './finding-schema.js'
import { sentence } from './sentences.js'
import { kept, MILLIMETRES_PER_INCH, type Ends } from './numbers.js'

/** What a judgement's observations say together: the mean, the extremes, the worst single value. */

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value)

const least = (o: Observation): number | undefined => o.min ?? (isNumber(o.value) ? o.value : undefined)
const greatest = (o: Observation): number | undefined => o.max ?? (isNumber(o.value) ? o.value : undefined)

const outside = (value: number, { min, max }: Ends): number =>
  Math.max(min === undefined ? -Infinity : min - value, max === undefined ? -Infinity : value - max)

/** The ends that decided: the limit as judged or, when the value lies inside it, the other printed unit's. */
export function decidingEnds(judgement: Judgement): Ends {
  const { min, max, other } = judgement.limit
  const own = { min, max }
  const worst = worstValue(judgement, own)
  const split = judgement.verdict === 'fail' && other !== undefined && worst !== undefined && outside(worst, own) <= 0
  return split ? other : own
}

/** The single value that decided: the farthest outside the limit, or the nearest to an end. */
export function worstValue(judgement: Judgement, ends: Ends = decidingEnds(judgement)): number | undefined {
  const observation = judgement.decisive[0] ?? judgement.measurement?.observations[0]
  if (!observation) return undefined
  const values = [least(observation), greatest(observation)].filter(isNumber)
  if (ends.min === undefined && ends.max === undefined)
    return isNumber(observation.value) ? observation.value : undefined
  return values.reduce<number | undefined>(
    (worst, v) => (worst === undefined || outside(v, ends) > outside(worst, ends) ? v : worst),
    undefined,
  )
}

/** All observations of one measurement as one entry of the report; null when there are none. */
export function measured(judgement: Judgement): Measured | null {
  const { measurement } = judgement
  const observations = measurement?.observations ?? []
  const chief = judgement.decisive[0] ?? observations[0]
  if (!measurement || !chief) return null
  const numbers = observations.filter((o) => isNumber(o.value))
  const count = observations.reduce((sum, o) => sum + (o.count ?? 1), 0)
  const weight = numbers.reduce((sum, o) => sum + (o.count ?? 1), 0)
  const mean = numbers.reduce((sum, o) => sum + (o.value as number) * (o.count ?? 1), 0) / weight
  const value = isNumber(chief.value) ? (numbers.length === 1 ? chief.value : mean) : chief.value
  return {
    value: isNumber(value) ? (kept(value) ?? 0) : value,
    unit: measurement.unit,
    inches: measurement.unit === 'mm' && isNumber(value) ? kept(value / MILLIMETRES_PER_INCH) : null,
    min: kept(extreme(numbers.map(least), Math.min)),
    max: kept(extreme(numbers.map(greatest), Math.max)),
    count,
    uncertainty: kept(chief.uncertainty),
    basis: chief.basis,
    instrument: chief.instrument ?? null,
    method: howIn(measurement, chief),
  }
}

function extreme(values: (number | undefined)[], pick: (a: number, b: number) => number): number | undefined {
  const known = values.filter(isNumber)
  return known.length === 0 ? undefined : known.reduce((a, b) => pick(a, b))
}

/**
 * Whether a remark tells how a value was got. What is said of a drawn number does; what is said of a kind, of a yes or no
 * or of something declared belongs to the finding itself.
 */
export const isMethod = (o: Observation): boolean => o.basis === 'drawn' && isNumber(o.value)

const NOISE = `Up to ${ARITHMETIC_NOISE} mm of arithmetic noise in drawn lengths is allowed at each limit.`

function howIn({ method, unit }: Measurement, chief: Observation): string {
  if (chief.basis !== 'drawn') return method
  const own = isMethod(chief) && chief.remark !== undefined ? chief.remark : ''
  const exact: Observation = { ...chief, basis: 'declared' }
  const noise = noiseOf(chief, unit) > noiseOf(exact, unit) ? NOISE : ''
  return [method, own, noise]
    .filter((part) => part !== '')
    .map(sentence)
    .join(' ')
}
