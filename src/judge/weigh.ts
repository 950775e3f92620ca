import type { Gap, Measurement, Observation } from '../measure/measurement.js'
import type { Limit } from '../standards/standard.js'
import { compareNumber, type Compared, type Outcome } from './compare.js'
import type { Judgement, ResolvedLimit } from './finding.js'
import { resolve, resolveByDistance } from './limits.js'
import type { JudgeOptions } from './types.js'

/** All observations of one measurement held against one limit. */
export interface Weighed {
  limit: ResolvedLimit
  /** The worst first. */
  failed: Observation[]
  /** Of those that did not fail, the one that leaves the row open, else the one nearest to its limit. */
  nearest?: Observation
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
  gap?: Gap
  split: Judgement['unitSplit']
}

export function weigh(
  measurement: Measurement,
  limit: Limit,
  clause: string,
  firstUnit: Unit,
  options: JudgeOptions,
): Weighed {
  const singles = measurement.observations.map((observation) =>
    weighOne(observation, limit, clause, firstUnit, options),
  )
  const worstFirst = [...singles].sort((a, b) => (a.margin ?? Infinity) - (b.margin ?? Infinity))
  const failed = worstFirst.filter(({ outcome, gap }) => outcome === 'fail' && !gap)
  const others = worstFirst.filter((single) => !failed.includes(single))
  const shown = others.find(isWithin) ?? others.find(({ gap }) => gap) ?? others[0]
  const worst = failed[0] ?? shown
  const nearest = shown?.observation
  return {
    limit: worst?.limit ?? resolve(limit, clause, firstUnit),
    failed: failed.map(({ observation }) => observation),
    ...(nearest && { nearest }),
    gaps: others.flatMap(({ gap }) => gap ?? []),
    within: others.some(isWithin),
    margin: worst?.margin ?? null,
    unitSplit: worst?.split ?? singles.find(({ split }) => split)?.split ?? null,
  }
}

const isWithin = ({ outcome, gap }: Single): boolean => outcome === 'within-uncertainty' && !gap

function weighOne(
  observation: Observation,
  limit: Limit,
  clause: string,
  firstUnit: Unit,
  options: JudgeOptions,
): Single {
  switch (limit.kind) {
    case 'length':
    case 'ratio':
      return number(observation, resolve(limit, clause, firstUnit), firstUnit, options)
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
        gap: {
          reason: 'needs-judgement',
          why: `“${kind}” passes or not by a person's judgement`,
          places: observation.places,
        },
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
  const compared = compareNumber(observation, counting, limit.unit, decisionRule === 'guarded')
  if (!limit.other) return { observation, limit, ...compared, split: null }
  const first = compareNumber(observation, limit, limit.unit, false).outcome
  const second = compareNumber(observation, limit.other, limit.unit, false).outcome
  return { observation, limit: counting, ...compared, split: splitOf(first, second, firstUnit) }
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

/** The ends that satisfy both units. */
function bothUnits(limit: ResolvedLimit): ResolvedLimit {
  const { min, max, other } = limit
  const highest = Math.max(min ?? -Infinity, other?.min ?? -Infinity)
  const lowest = Math.min(max ?? Infinity, other?.max ?? Infinity)
  return {
    ...limit,
    ...(Number.isFinite(highest) && { min: highest }),
    ...(Number.isFinite(lowest) && { max: lowest }),
  }
}

/** Decided when every band that may hold gives the same; else the place of the characters is what is missing. */
function byDistance(observation: Observation, limits: ResolvedLimit[], firstUnit: Unit, options: JudgeOptions): Single {
  const singles = limits.map((limit) => number(observation, limit, firstUnit, options))
  const [lenient] = singles
  const strict = singles[singles.length - 1] ?? lenient
  if (!lenient || !strict) throw new RangeError('a table by viewing distance has no bands')
  if (lenient.outcome === 'fail') return lenient
  if (strict.outcome === lenient.outcome) return strict
  const ask = {
    pointer: '/sign/installation/panelBottomHeight',
    ask: 'How high above the finish floor is the lower edge of the panel?',
    unit: 'mm' as const,
  }
  const why = 'the height of the characters above the floor is not known'
  return { ...lenient, gap: { reason: 'missing-fact', why, places: observation.places, ask } }
}
