import type { Measured } from './finding-schema.js'
import { fixed, roundDown, roundUp, type Notation } from './numbers.js'
import { notationFor } from './quantities.js'
import type { Conformity, Sample } from './statistics-schema.js'

/** What statistics say of measured values, for people: one line, or nothing. */

const FORMS: Partial<Record<Notation, { factor: number; decimals: number; unit: string }>> = {
  length: { factor: 1, decimals: 3, unit: ' mm' },
  percent: { factor: 100, decimals: 1, unit: ' %' },
}
const PLAIN = { factor: 1, decimals: 3, unit: '' }

type Form = typeof PLAIN

/** Shares in percent have this many decimals, and none is told as nothing or as all. */
const SHARE_DECIMALS = 1
const LEAST_SHARE = 0.1
const INDEX_DECIMALS = 2

/** A share in percent, rounded down so that no more is said than is known. */
function percent(share: number): string {
  const hundredths = 100 * share
  if (hundredths < LEAST_SHARE) return `less than ${LEAST_SHARE} %`
  if (hundredths > 100 - LEAST_SHARE) return `more than ${fixed(100 - LEAST_SHARE, SHARE_DECIMALS)} %`
  return `${fixed(roundDown(hundredths, SHARE_DECIMALS), SHARE_DECIMALS)} %`
}

/** "The true value keeps the limit with a probability of 69.1 %." Empty where nothing follows from the readings. */
export function statisticsWords({ conformity, sample, unit }: Measured, quantity: string): string {
  const form = FORMS[notationFor(quantity, unit)] ?? PLAIN
  return [...conformityWords(conformity), ...sampleWords(sample, form)].join(' ')
}

function conformityWords(conformity: Conformity | undefined): string[] {
  if (!conformity) return []
  return [
    `The true value keeps the limit with a probability of ${percent(conformity.probability)} (normal distribution).`,
  ]
}

function sampleWords(sample: Sample | undefined, form: Form): string[] {
  if (!sample) return []
  const { factor, decimals, unit } = form
  const mean = fixed(sample.mean * factor, decimals)
  const deviation = fixed(sample.standardDeviation * factor, decimals)
  const told = `Mean ${mean}${unit}, standard deviation ${deviation}${unit}`
  const ofAll = [...intervalWords(sample, form), ...shareWords(sample), ...indexWords(sample), ...moreWords(sample)]
  return [ofAll.length === 0 ? `${told}.` : `${told}; with readings of one normal distribution, ${ofAll.join(', ')}.`]
}

function intervalWords({ interval }: Sample, { factor, decimals, unit }: Form): string[] {
  if (!interval) return []
  const { min, max, coverage, confidence } = interval
  const low = min === null ? '' : fixed(roundDown(min * factor, decimals), decimals)
  const high = max === null ? '' : fixed(roundUp(max * factor, decimals), decimals)
  const where = min === null ? `at most ${high}` : max === null ? `at least ${low}` : `between ${low} and ${high}`
  return [`at least ${100 * coverage} % of all values are ${where}${unit} (confidence ${100 * confidence} %)`]
}

const shareWords = ({ shareWithin }: Sample): string[] =>
  shareWithin
    ? [`${percent(shareWithin.atLeast)} or more of all keep the limit (confidence ${100 * shareWithin.confidence} %)`]
    : []

function indexWords({ capability }: Sample): string[] {
  if (!capability) return []
  const { cpk, cpkMin, cpkMax } = capability
  return [`Cpk ${fixed(cpk, INDEX_DECIMALS)} (${fixed(cpkMin, INDEX_DECIMALS)} to ${fixed(cpkMax, INDEX_DECIMALS)})`]
}

const moreWords = ({ moreReadings }: Sample): string[] =>
  moreReadings ? [`${moreReadings} more like these would put that share within the limit`] : []
