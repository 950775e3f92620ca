import { INSTALLATION_POINTER } from '../measure/facts.js'
import type { Gap, Measurement, Observation } from '../measure/measurement.js'
import { compareNumber, extremes, noiseOf, type Compared, type Outcome } from './compare.js'
import type { Judgement, ResolvedLimit } from './finding.js'
import type { InForce, Limits } from './exceptions.js'
import { resolve, resolveAtDistance, resolveByDistance } from './limits.js'
import type { JudgeOptions } from './types.js'

/** All observations of one measurement, each held against the limit in force for it. */
export interface Weighed {
  limit: ResolvedLimit
  /** The worst first. */
  failed: Observation[]
  /** Of those that did not fail, the one that leaves the row open, else the one nearest to its limit. */
  nearest: Observation | undefined
  /** What stays open beside the measurement's own gaps. */
  gaps: Gap[]
  /** An observation is so near to a limit that its uncertainty reaches over it. */
  within: boolean
  margin: number | null
  unitSplit: Judgement['unitSplit']
}

type Unit = 'in' | 'mm'

/** One observation judged: with the limit that was used for it. */
interface Single extends Compared {
  observation: Observation
  limit: ResolvedLimit
  /** What keeps it from being decided. */
  gaps?: Gap[]
  split: Judgement['unitSplit']
}

export function weigh(measurement: Measurement, limits: Limits, firstUnit: Unit, options: JudgeOptions): Weighed {
  const singles = measurement.observations.map((observation) =>
    weighOne(observation, limits(observation), firstUnit, options),
  )
  const firstSplit = singles.find(({ split }) => split)?.split
  if (singles.length > 1) singles.sort((a, b) => (a.margin ?? Infinity) - (b.margin ?? Infinity))
  const failed: Observation[] = []
  const gaps: Gap[] = []
  let worst: Single | undefined
  let within: Single | undefined
  let open: Single | undefined
  let passed: Single | undefined
  for (const single of singles) {
    if (single.outcome === 'fail' && !single.gaps) {
      worst ??= single
      failed.push(single.observation)
    } else if (single.gaps) {
      open ??= single
      gaps.push(...single.gaps)
    } else if (single.outcome === 'within-uncertainty') within ??= single
    else passed ??= single
  }
  const nearest = within ?? open ?? passed
  const shown = worst ?? nearest
  return {
    limit: shown?.limit ?? resolved(limits(), firstUnit),
    failed,
    nearest: nearest?.observation,
    gaps,
    within: within !== undefined,
    margin: shown?.margin ?? null,
    unitSplit: shown?.split ?? firstSplit ?? null,
  }
}

const resolved = ({ limit, clause }: InForce, firstUnit: Unit): ResolvedLimit => resolve(limit, clause, firstUnit)

function weighOne(
  observation: Observation,
  { limit, clause }: InForce,
  firstUnit: Unit,
  options: JudgeOptions,
): Single {
  switch (limit.kind) {
    case 'length':
    case 'ratio':
    case 'number':
      if (observation.value === true) return plain(observation, resolve(limit, clause, firstUnit), 'pass')
      return number(observation, resolve(limit, clause, firstUnit), firstUnit, options)
    case 'nominal':
      return nominal(observation, resolve(limit, clause, firstUnit), limit.slack, firstUnit, options)
    case 'distance-share':
    case 'distance-steps':
      return atDistance(observation, { limit, clause }, firstUnit, options)
    case 'by-viewing-distance':
      return byDistance(observation, resolveByDistance(limit, clause, firstUnit, observation), firstUnit, options)
    case 'yes':
      return plain(observation, resolve(limit, clause, firstUnit), observation.value === true ? 'pass' : 'fail')
    case 'one-of': {
      const resolved = resolve(limit, clause, firstUnit)
      const kind = String(observation.value)
      const single = plain(observation, resolved, limit.pass.includes(kind) ? 'pass' : 'fail')
      if (!limit.judgement.includes(kind)) return single
      return {
        ...single,
        gaps: [
          {
            reason: 'needs-judgement',
            why: `“${kind}” passes or not by a person's judgement`,
            places: observation.places,
          },
        ],
      }
    }
  }
}

const plain = (observation: Observation, limit: ResolvedLimit, outcome: Outcome): Single => ({
  observation,
  limit,
  outcome,
  margin: null,
  split: null,
})

/** A number against the ends that count; `split` tells when the two printed units alone would judge differently. */
function number(observation: Observation, limit: ResolvedLimit, firstUnit: Unit, options: JudgeOptions): Single {
  const { decisionRule, unitSystem } = options
  const counting = unitSystem === 'both' ? bothUnits(limit) : limit
  const { outcome, margin } = compareNumber(observation, counting, limit.unit, decisionRule === 'guarded')
  const { atLeast, atMost } = observation
  const bound = outcome === 'pass' ? atMost : outcome === 'fail' ? atLeast : (atLeast ?? atMost)
  if (bound) return { observation, limit: counting, outcome, margin, gaps: [bound], split: null }
  if (!limit.other) return { observation, limit, outcome, margin, split: null }
  const first = compareNumber(observation, limit, limit.unit, false).outcome
  const second = compareNumber(observation, limit.other, limit.unit, false).outcome
  return { observation, limit: counting, outcome, margin, split: splitOf(first, second, firstUnit) }
}

function splitOf(first: Outcome, second: Outcome, firstUnit: Unit): Judgement['unitSplit'] {
  if (first === second) return null
  const otherUnit = firstUnit === 'in' ? 'mm' : 'in'
  return {
    judged: firstUnit,
    pass: first === 'pass' ? firstUnit : otherUnit,
    fail: first === 'fail' ? firstUnit : otherUnit,
  }
}

const both = new WeakMap<ResolvedLimit, ResolvedLimit>()

/** The ends that satisfy both units. */
function bothUnits(limit: ResolvedLimit): ResolvedLimit {
  const before = both.get(limit)
  if (before) return before
  const found = narrowed(limit)
  both.set(limit, found)
  return found
}

function narrowed(limit: ResolvedLimit): ResolvedLimit {
  const { min, max, other } = limit
  const highest = Math.max(min ?? -Infinity, other?.min ?? -Infinity)
  const lowest = Math.min(max ?? Infinity, other?.max ?? Infinity)
  return {
    ...limit,
    ...(Number.isFinite(highest) && { min: highest }),
    ...(Number.isFinite(lowest) && { max: lowest }),
  }
}

/** What would tell the height of the characters above the floor. */
function heightGaps({ limitGaps = [], places }: Observation): Gap[] {
  const why = 'the height of the characters above the floor is not known'
  const [first = { reason: 'missing-fact' as const, why, places }, ...others] = limitGaps
  return [first, ...others].map((gap) => ({ ...gap, why, places }))
}

const NOTHING_IN_THE_WAY =
  'No viewing distance is given; the first distance row of the table is taken, as when nothing stops a reader coming near.'

/**
 * Decided when every band that may hold gives the same; else the place of the characters is what is missing. With nothing in the
 * way the first distance row holds (Access Board, guide to chapter 7).
 */
function byDistance(measured: Observation, limits: ResolvedLimit[], firstUnit: Unit, options: JudgeOptions): Single {
  const isFar = typeof measured.context?.viewingDistance === 'number'
  const observation = isFar ? measured : { ...measured, remark: NOTHING_IN_THE_WAY }
  const singles = limits.map((limit) => number(observation, limit, firstUnit, options))
  const [lenient] = singles
  const strict = singles[singles.length - 1] ?? lenient
  if (!lenient || !strict) throw new RangeError('a table by viewing distance has no bands')
  if (lenient.outcome === 'fail') return lenient
  if (strict.outcome === lenient.outcome) return strict
  return { ...lenient, gaps: heightGaps(observation) }
}

type Slack = Extract<InForce['limit'], { kind: 'nominal' }>['slack']

/**
 * A length printed without a tolerance: what differs from it is left to a person, since nothing says by how much it may. Where only
 * slack downward is thinkable, a single value above the figure fails.
 */
function nominal(
  observation: Observation,
  limit: ResolvedLimit,
  slack: Slack,
  firstUnit: Unit,
  options: JudgeOptions,
): Single {
  const single = number(observation, limit, firstUnit, options)
  if (single.outcome !== 'fail' || single.gaps) return single
  const [, highest] = extremes(observation)
  if (slack === 'downward' && single.limit.max !== undefined) {
    const above = highest - single.limit.max
    if (above > noiseOf(observation, limit.unit)) return { ...single, margin: -above }
  }
  const off = slack === 'downward' ? 'is below it' : 'differs from it'
  const why = `the standard prints ${limit.printed} without a tolerance, and the sign ${off}`
  return { ...single, gaps: [{ reason: 'needs-judgement', why, places: observation.places }] }
}

interface AtDistance extends InForce {
  limit: Extract<InForce['limit'], { kind: 'distance-share' | 'distance-steps' }>
}

function atDistance(
  observation: Observation,
  { limit, clause }: AtDistance,
  firstUnit: Unit,
  options: JudgeOptions,
): Single {
  const distance = observation.context?.viewingDistance
  const resolved = typeof distance === 'number' ? resolveAtDistance(limit, clause, distance) : undefined
  if (resolved) return number(observation, resolved, firstUnit, options)
  const gap: Gap =
    typeof distance === 'number'
      ? {
          reason: 'needs-judgement',
          why: 'the table does not go as far as this viewing distance',
          places: observation.places,
        }
      : {
          reason: 'missing-fact',
          why: 'the viewing distance is not given',
          places: observation.places,
          ask: DISTANCE_ASK,
        }
  return { ...plain(observation, resolve(limit, clause, firstUnit), 'fail'), gaps: [gap] }
}

const DISTANCE_ASK: Gap['ask'] = {
  pointer: `${INSTALLATION_POINTER}/viewingDistance`,
  ask: 'From how far is the sign read?',
  unit: 'mm',
}
