import { FLOATING_NOISE } from '../judge/compare.js'
import type { Judgement } from '../judge/finding.js'
import type { Observation } from '../measure/measurement.js'
import { capability, potentialCapability } from '../statistics/capability.js'
import { conformityProbability, type Limits } from '../statistics/conformity.js'
import { decide, expanded } from '../statistics/guard-band.js'
import { spreadOf, type Spread } from '../statistics/spread.js'
import { moreReadings, shareWithin, toleranceInterval } from '../statistics/tolerance-interval.js'
import type { Measured } from './finding-schema.js'
import { kept } from './numbers.js'
import type { Conformity, Sample } from './statistics-schema.js'

/** What statistics say of the readings behind a judgement. Nothing is said of values that were declared, drawn or worked out. */

/** Common in the trade of quality, no source: nineteen in twenty, nineteen times in twenty. */
const ASSURANCE = { coverage: 0.95, confidence: 0.95 }

const OF_THE_VALUE =
  'The true value is taken to be normally distributed about the reading; nothing else is known of it.'
const OF_THE_SAMPLE =
  'The readings are taken to be independent and of one normal distribution, which was not tested; their spread includes that of the instrument.'

/** The limits that judged, when statistics can be held against them: lengths and ratios with room between their ends. */
function limitsOf({ limit }: Judgement): Limits | undefined {
  const { min, max, unit } = limit
  if (unit === 'kind' || unit === 'truth' || unit === 'count') return undefined
  if (min === undefined && max === undefined) return undefined
  return (min ?? -Infinity) < (max ?? Infinity) ? { min, max } : undefined
}

const rounded = (value: number): number => kept(value) ?? 0
const end = (value: number | undefined): number | null => kept(value)

/**
 * What is said of the readings behind a judgement.
 * @param value the single value that decided, in the unit of the limit
 */
export function statisticsOf(
  judgement: Judgement,
  observations: readonly Observation[],
  value: number | undefined,
): Pick<Measured, 'conformity' | 'sample'> {
  const limits = limitsOf(judgement)
  if (!limits) return {}
  const { uncertainty = 0 } = judgement.decisive[0] ?? observations[0] ?? {}
  const readings = observations.flatMap(({ sample }) => sample ?? [])
  return {
    ...(value !== undefined && uncertainty > 0 && { conformity: conformityOf(value, uncertainty, limits) }),
    ...(readings.length > 1 && { sample: sampleOf(spreadOf(readings), limits, judgement) }),
  }
}

function conformityOf(value: number, uncertainty: number, limits: Limits): Conformity {
  const margin = Math.min(value - (limits.min ?? -Infinity), (limits.max ?? Infinity) - value)
  return {
    value: rounded(value),
    expandedUncertainty: rounded(expanded(uncertainty)),
    probability: rounded(conformityProbability(value, uncertainty, limits)),
    guarded: decide('guarded', margin, uncertainty, FLOATING_NOISE),
    assumption: OF_THE_VALUE,
  }
}

const sampleOf = (spread: Spread, limits: Limits, judgement: Judgement): Sample => ({
  count: spread.count,
  mean: rounded(spread.mean),
  standardDeviation: rounded(spread.standardDeviation),
  ...(spread.standardDeviation > 0 ? ofAll(spread, limits, judgement) : NOTHING_OF_ALL),
  assumption: OF_THE_SAMPLE,
})

type OfAll = Pick<Sample, 'interval' | 'shareWithin' | 'capability' | 'moreReadings'>

/** Equal readings show that the instrument does not tell them apart, and nothing of how all values spread. */
const NOTHING_OF_ALL: OfAll = { interval: null, shareWithin: null, capability: null, moreReadings: null }

function ofAll(spread: Spread, limits: Limits, { verdict }: Judgement): OfAll {
  const { coverage, confidence } = ASSURANCE
  const interval = toleranceInterval(spread, limits, ASSURANCE)
  const share = shareWithin(spread, limits, confidence)
  const cp = potentialCapability(spread, limits, confidence)
  const cpk = capability(spread, limits, confidence)
  return {
    interval: { min: end(interval.min), max: end(interval.max), coverage, confidence },
    shareWithin: share === null ? null : { atLeast: rounded(share), confidence },
    capability: {
      cp: cp && rounded(cp.value),
      cpk: rounded(cpk.value),
      cpkMin: rounded(cpk.min),
      cpkMax: rounded(cpk.max),
      confidence,
    },
    moreReadings: verdict === 'fail' ? null : moreReadings(spread, limits, ASSURANCE),
  }
}
