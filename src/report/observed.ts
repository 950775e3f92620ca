import { ARITHMETIC_NOISE, noiseOf } from '../judge/compare.js'
import type { Judgement } from '../judge/finding.js'
import type { Measurement, Observation } from '../measure/measurement.js'
import type { Measured } from './finding-schema.js'
import { sentence } from './sentences.js'
import { statisticsOf } from './statistics.js'
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
  if (ends.min === undefined && ends.max === undefined)
    return isNumber(observation.value) ? observation.value : undefined
  const [low, high] = [least(observation), greatest(observation)]
  if (!isNumber(low) || !isNumber(high)) return isNumber(low) ? low : isNumber(high) ? high : undefined
  return outside(high, ends) > outside(low, ends) ? high : low
}

/** All observations of one measurement as one entry of the report; null when there are none. */
export function measured(judgement: Judgement): Measured | null {
  const { measurement } = judgement
  const observations = measurement?.observations ?? []
  const chief = judgement.decisive[0] ?? observations[0]
  if (!measurement || !chief) return null
  let [count, weight, sum, numbers] = [0, 0, 0, 0]
  let low: number | undefined
  let high: number | undefined
  for (const o of observations) {
    const times = o.count ?? 1
    count += times
    if (!isNumber(o.value)) continue
    numbers++
    weight += times
    sum += o.value * times
    const [from, to] = [least(o), greatest(o)]
    if (isNumber(from) && (low === undefined || from < low)) low = from
    if (isNumber(to) && (high === undefined || to > high)) high = to
  }
  const value = isNumber(chief.value) && numbers > 1 ? sum / weight : chief.value
  return {
    value: isNumber(value) ? (kept(value) ?? 0) : value,
    unit: measurement.unit,
    inches: measurement.unit === 'mm' && isNumber(value) ? kept(value / MILLIMETRES_PER_INCH) : null,
    min: kept(low),
    max: kept(high),
    count,
    uncertainty: kept(chief.uncertainty),
    basis: chief.basis,
    instrument: chief.instrument ?? null,
    method: howIn(measurement, chief),
    ...(chief.sample && statisticsOf(judgement, observations, worstValue(judgement, judgement.limit))),
  }
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
