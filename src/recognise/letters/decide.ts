import type { FittedLine, Option } from './fit.js'

/**
 * What each character of a line is, or which ones it may be. The confidence of a reading is its posterior probability under
 * normal deviations, every reading being as likely beforehand, against the others and against “something else”.
 */
export interface Decision {
  /** The most fitting first; more than one when shape and place leave it open. None: not recognised. */
  readings: string[]
  /** How likely each of these is by its shape and place. */
  shares: number[]
  confidence: number
  /** From the most similar reference of the likeliest reading, in the usual scatter along an axis; Infinity without one. */
  distance: number
}

export const UNRECOGNISED: Decision = { readings: [], shares: [], confidence: 0, distance: Infinity }

/** Below this nothing is said. */
export const CONFIDENT = 0.99
/** What fits worse than this is likelier something else: a squared deviation, over look, top, bottom and width. */
const SOMETHING_ELSE = 25
/** A reading this improbable is no rival. */
export const NO_RIVAL = 0.008
/** No reference looks like it: distance in the usual scatter along an axis. */
const MOST_UNLIKE = 15
/** Characters that are read alike: whether a dash is a hyphen or a little longer says nothing. */
const SAME_MEANING: Record<string, string> = { '–': '-' }

const isRival = (best: FittedLine, other: FittedLine) => Math.exp((best.cost - other.cost) / 2) > NO_RIVAL

/** Whether a line can be read in another size about as well. */
export const isOpen = (fits: readonly FittedLine[]): boolean => fits.slice(1).some((f) => isRival(fits[0], f))

/** @param fits the ways in which the line can be read, the best first */
export function decide(fits: readonly FittedLine[]): Decision[] {
  const [best, ...others] = fits
  const rivals = others.filter((o) => isRival(best, o))
  return best.options().map((options, i) => {
    const likely = weighed(options)
    const first = likely.at(0)
    const sure = likely.reduce((sum, l) => sum + l.share, 0) >= CONFIDENT
    if (!first || !sure || first.option.distance > MOST_UNLIKE)
      return { ...UNRECOGNISED, confidence: first?.share ?? 0 }
    const found = likely.filter((l) => l.share > NO_RIVAL).map((l) => ({ reading: l.option.label, share: l.share }))
    for (const fit of rivals) {
      const rival = fit.best[i]?.label
      if (rival !== undefined && !found.some((f) => f.reading === rival))
        found.push({ reading: rival, share: first.share * Math.exp((best.cost - fit.cost) / 2) })
    }
    return { ...withoutSynonyms(found), confidence: first.share, distance: first.option.distance }
  })
}

interface Weighed {
  option: Option
  share: number
}

function weighed(options: readonly Option[]): Weighed[] {
  const weights = options.map((o) => Math.exp(-o.cost / 2))
  const all = weights.reduce((a, b) => a + b, Math.exp(-SOMETHING_ELSE / 2))
  return options.map((option, i) => ({ option, share: weights[i] / all }))
}

function withoutSynonyms(found: readonly { reading: string; share: number }[]): Pick<Decision, 'readings' | 'shares'> {
  const shares = new Map<string, number>()
  for (const { reading, share } of found) {
    const meant = SAME_MEANING[reading] ?? reading
    shares.set(meant, (shares.get(meant) ?? 0) + share)
  }
  return { readings: [...shares.keys()], shares: [...shares.values()] }
}

/** The decision with only those of its readings that pass, if any do. */
export function only(decision: Decision, test: (reading: string) => boolean): Decision {
  const kept = decision.readings.map((_, i) => i).filter((i) => test(decision.readings[i]))
  if (kept.length === 0) return decision
  return { ...decision, readings: kept.map((i) => decision.readings[i]), shares: kept.map((i) => decision.shares[i]) }
}
