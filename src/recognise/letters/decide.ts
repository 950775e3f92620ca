import { isCapital, isDigit, isLetter, isSmall } from './characters.js'
import type { FittedLine, Option } from './fit.js'

/**
 * What each character of a line is, or which ones it may be. The confidence of a reading is its posterior probability under
 * normal deviations, every reading being as likely beforehand, against the others and against “something else”.
 */
export interface Decision {
  /** The most fitting first; more than one when shape and place leave it open. None: not recognised. */
  readings: string[]
  confidence: number
}

/** Below this nothing is said. */
export const CONFIDENT = 0.99
/** What fits worse than this is likelier something else: a squared deviation, over look, top, bottom and width. */
const SOMETHING_ELSE = 25
/** A reading this improbable is no rival. */
const NO_RIVAL = 0.004
/** No reference looks like it: distance in the usual scatter along an axis. */
const MOST_UNLIKE = 15
/** Characters that are read alike: whatever dash it is, it is a dash. */
const SAME_MEANING = [`-–—`]

const isRival = (best: FittedLine, other: FittedLine) => Math.exp((best.cost - other.cost) / 2) > NO_RIVAL

/** Whether a line can be read in another size about as well. */
export const isOpen = (fits: readonly FittedLine[]): boolean => fits.slice(1).some((f) => isRival(fits[0], f))

/** @param fits the ways in which the line can be read, the best first */
export function decide(fits: readonly FittedLine[]): Decision[] {
  const [best, ...others] = fits
  const rivals = others.filter((o) => isRival(best, o))
  return best.options.map((options, i) => {
    const likely = weighed(options)
    const first = likely.at(0)
    const sure = likely.reduce((sum, l) => sum + l.share, 0) >= CONFIDENT
    if (!first || !sure || first.option.distance > MOST_UNLIKE) return { readings: [], confidence: first?.share ?? 0 }
    const readings = likely.filter((l) => l.share > NO_RIVAL).map((l) => l.option.label)
    for (const fit of rivals) {
      const rival = fit.options[i].at(0)?.label
      if (rival !== undefined && !readings.some((r) => sameMeaning(r, rival))) readings.push(rival)
    }
    return { readings: withoutSynonyms(readings), confidence: first.share }
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

const sameMeaning = (a: string, b: string) => a === b || SAME_MEANING.some((s) => s.includes(a) && s.includes(b))

const withoutSynonyms = (readings: readonly string[]): string[] =>
  readings.filter((r, i) => !readings.slice(0, i).some((before) => sameMeaning(before, r)))

/** Characters of one shape in many faces: which one it is, the word tells. */
const ROUND = 'O0o°'
const UPRIGHT = 'Il1|'

/**
 * Settles what shape leaves open by what stands around: an O among letters or a 0 among digits, an I among capitals or an l
 * after small letters. What the word does not settle stays open.
 */
export function settleByWord(word: readonly Decision[], line: readonly Decision[]): Decision[] {
  const settled = (ds: readonly Decision[]) => ds.flatMap((d) => (d.readings.length === 1 ? d.readings : []))
  const around = settled(word)
  const count = (test: (c: string) => boolean, among = around) => among.filter(test).length
  return word.map((decision, i) => {
    const { readings } = decision
    if (readings.length < 2) return decision
    const only = (c: string): Decision => (readings.includes(c) ? { ...decision, readings: [c] } : decision)
    const within = (set: string) => readings.every((r) => set.includes(r))
    const [letters, digits] = [count(isLetter), count(isDigit)]
    if (within(ROUND) && readings.includes('0')) {
      if (digits > 0 && letters === 0) return only('0')
      if (letters > 0 && digits === 0) {
        const rest = readings.filter(isLetter)
        return rest.length === 1 ? only(rest[0]) : { ...decision, readings: rest.length > 0 ? rest : readings }
      }
    }
    const [first] = readings
    if (readings.length === 2 && first.toLowerCase() === readings[1].toLowerCase()) {
      // A capital that fits better among capitals, a small letter after small letters.
      const others = word.flatMap((d, n) => (n !== i && d.readings.length === 1 ? d.readings : []))
      const [capitals, smalls] = [count(isCapital, others), count(isSmall, others)]
      if (isCapital(first) && capitals > 0 && smalls === 0) return only(first)
      if (isSmall(first) && smalls > 0 && i > 0) return only(first)
    }
    if (within(UPRIGHT)) {
      if (digits > 0 && letters === 0) return only('1')
      const nearby = letters > 0 ? around : settled(line)
      const [capitals, smalls] = [count(isCapital, nearby), count(isSmall, nearby)]
      if (digits === 0 && capitals > 0 && smalls === 0) return only('I')
      if (digits === 0 && smalls > 0 && i > 0 && readings[0] !== 'I') return only('l')
    }
    return decision
  })
}

/**
 * Settles what is left open by a word that the sign says elsewhere (its braille): only between characters of one shape, and
 * only when exactly one of the expected words can be read from the shapes.
 * @returns undefined when that does not settle it
 */
export function settleByExpected(word: readonly Decision[], expected: readonly string[]): Decision[] | undefined {
  if (word.some((d) => d.readings.length === 0)) return undefined
  const open = word.filter((d) => d.readings.length > 1)
  if (!open.every(({ readings }) => [ROUND, UPRIGHT].some((set) => readings.every((r) => set.includes(r)))))
    return undefined
  const fits = (candidate: string) =>
    candidate.length === word.length && word.every((d, i) => d.readings.some((r) => r.toLowerCase() === candidate[i]))
  const fitting = [...new Set(expected.map((e) => e.toLowerCase()))].filter(fits)
  if (fitting.length !== 1) return undefined
  const chosen = word.map((d, i) => ({ ...d, readings: d.readings.filter((r) => r.toLowerCase() === fitting[0][i]) }))
  return chosen.every((d) => d.readings.length === 1) ? chosen : undefined
}
