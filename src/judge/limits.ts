import type { Observation } from '../measure/measurement.js'
import type { Limit } from '../standards/standard.js'
import { ARITHMETIC_NOISE, FLOATING_NOISE } from './compare.js'
import type { ResolvedLimit } from './finding.js'

/** From limits as printed to limits in millimetres. */

/** By definition of the international inch. */
export const MILLIMETRES_PER_INCH = 25.4

export interface Ends {
  min?: number
  max?: number
}

type Unit = 'in' | 'mm'

const inInches = (ends: Ends | undefined): Ends | undefined =>
  ends && {
    ...(ends.min !== undefined && { min: ends.min * MILLIMETRES_PER_INCH }),
    ...(ends.max !== undefined && { max: ends.max * MILLIMETRES_PER_INCH }),
  }

const exactly = (figure: number | undefined): Ends | undefined =>
  figure === undefined ? undefined : { min: figure, max: figure }

const printsAny = (ends: Ends | undefined): ends is Ends =>
  ends !== undefined && (ends.min !== undefined || ends.max !== undefined)

/** A table's limits do not change while it is loaded: each is resolved once. */
const RESOLVED = new WeakMap<Limit, ResolvedLimit>()

/**
 * The limit ready to compare. Lengths are those of the unit that the standard puts first, when it prints one there; the other unit's ends
 * stand in `other`. A table by viewing distance has no ends before the place of the characters is known.
 */
export function resolve(limit: Limit, clause: string, firstUnit: Unit): ResolvedLimit {
  const before = RESOLVED.get(limit)
  if (before?.clause === clause) return before
  const resolved = resolveAnew(limit, clause, firstUnit)
  RESOLVED.set(limit, resolved)
  return resolved
}

function resolveAnew(limit: Limit, clause: string, firstUnit: Unit): ResolvedLimit {
  const { kind, printed } = limit
  switch (limit.kind) {
    case 'length':
      return { kind, ...inOrder(inInches(limit.in), limit.mm, firstUnit), unit: 'mm', printed, clause }
    case 'ratio': {
      const { min, max } = limit
      return {
        kind,
        ...(min !== undefined && { min }),
        ...(max !== undefined && { max }),
        unit: 'ratio',
        printed,
        clause,
      }
    }
    case 'number': {
      const { min, max } = limit
      return {
        kind,
        ...(min !== undefined && { min }),
        ...(max !== undefined && { max }),
        unit: limit.unit,
        printed,
        clause,
      }
    }
    case 'nominal': {
      const ends = inOrder(inInches(exactly(limit.in)), exactly(limit.mm) ?? {}, firstUnit)
      return { kind, ...ends, unit: 'mm', printed, clause }
    }
    case 'one-of':
      return { kind, pass: limit.pass, unit: 'kind', printed, clause }
    case 'yes':
      return { kind, unit: 'truth', printed, clause }
    case 'by-viewing-distance':
    case 'distance-share':
    case 'distance-steps':
      return { kind, unit: 'mm', printed, clause }
  }
}

function inOrder(inches: Ends | undefined, millimetres: Ends, firstUnit: Unit): Ends & { other?: Ends } {
  const [first, other] = firstUnit === 'in' ? [inches, millimetres] : [millimetres, inches]
  if (!printsAny(first)) return { ...other }
  return { ...first, ...(printsAny(other) && { other }) }
}

type DistanceLimit = Extract<Limit, { kind: 'by-viewing-distance' }>
type Band = DistanceLimit['bands'][number]

/** A length of a band in millimetres; where the unit is not printed, the printed millimetres. */
const lengthIn = (printed: { in?: number | undefined; mm: number }, unit: Unit): number =>
  unit === 'in' && printed.in !== undefined ? printed.in * MILLIMETRES_PER_INCH : printed.mm

/**
 * The height that one band asks for at a viewing distance (both in millimetres). The increment is taken in proportion to the
 * distance beyond the first row, since the text does not say whether it goes in steps.
 */
function heightFor(band: Band, distance: number, unit: Unit): number {
  const beyond = Math.max(0, distance - lengthIn(band.from, unit))
  return lengthIn(band.base, unit) + (beyond / lengthIn(band.step, unit)) * lengthIn(band.perStep, unit)
}

/** The place in the table of a baseline height's band; the lowest band also holds below its own lower end, where another row fails. */
function bandAt(bands: Band[], baseline: number, unit: Unit, noise: number): number {
  return bands.findIndex(({ baselineTo }) => baselineTo === undefined || baseline <= lengthIn(baselineTo, unit) + noise)
}

/** The bands of all baselines from the lowest to the highest that the characters may stand on; all bands where those are not known. */
function bandsFor(bands: Band[], context: Observation['context'], unit: Unit): Band[] {
  const { baselineHeight: from, baselineHeightTo: to = from, baselineDrawn } = context ?? {}
  if (typeof from !== 'number' || typeof to !== 'number') return bands
  const noise = baselineDrawn === true ? ARITHMETIC_NOISE : FLOATING_NOISE
  return bands.slice(bandAt(bands, from, unit, noise), bandAt(bands, to, unit, noise) + 1)
}

/**
 * The limits that may hold for one observation: one when the height of its baseline above the floor is known, else one per
 * band. With no distance given nothing stands in the reader's way, and the first distance row applies.
 */
export function resolveByDistance(
  limit: DistanceLimit,
  clause: string,
  firstUnit: Unit,
  { context }: Observation,
): ResolvedLimit[] {
  const distance = typeof context?.viewingDistance === 'number' ? context.viewingDistance : 0
  const inInchesAt = bandsFor(limit.bands, context, 'in')
  const inMillimetresAt = bandsFor(limit.bands, context, 'mm')
  return inInchesAt.map((band, i) => {
    const mm = inMillimetresAt[i]
    const inches: Ends = band ? { min: heightFor(band, distance, 'in') } : {}
    const millimetres: Ends = mm ? { min: heightFor(mm, distance, 'mm') } : {}
    return { kind: limit.kind, ...inOrder(inches, millimetres, firstUnit), unit: 'mm', printed: limit.printed, clause }
  })
}

type ShareOrSteps = Extract<Limit, { kind: 'distance-share' | 'distance-steps' }>

/** The limit at a known viewing distance (mm); undefined beyond the last step of a table. */
export function resolveAtDistance(limit: ShareOrSteps, clause: string, distance: number): ResolvedLimit | undefined {
  const { kind, printed } = limit
  const min =
    limit.kind === 'distance-share'
      ? limit.share * Math.min(distance, limit.upTo ?? Infinity)
      : limit.steps.find(({ upTo }) => distance <= upTo)?.min
  return min === undefined ? undefined : { kind, min, unit: 'mm', printed, clause }
}
