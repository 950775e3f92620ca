import { isCapital, isDigit, isLetter, isSmall } from './characters.js'
import { NO_RIVAL, only, type Decision } from './decide.js'

/** What shape and place leave open, settled by what stands around. What the word does not settle stays open. */

/** Characters of one shape in many faces. */
const ROUND = 'O0o°'
const UPRIGHT = 'Il1|'
const DASHES = '-—'
/** How likely a small letter is in a line of capitals; common practice, no source. */
const ODD_CASE = 0.05
/** Names that go on with a capital: after these a bar may be an I. */
const INNER_CAPITAL = /^(?:Mc|Mac|De|Di|Da|Du|La|Le|Fitz|O['’])$/

export function settleByWord(word: readonly Decision[], line: readonly Decision[]): Decision[] {
  const kinds = settleKind(word, line)
  return kinds.map((decision, i) => {
    const { readings } = decision
    if (isBetween(decision, DASHES)) return only(decision, (c) => c === '-')
    if (isBetween(decision, ROUND)) return settleRound(decision, kinds, i)
    if (readings.length < 2) return decision
    if (isBetween(decision, UPRIGHT)) return settleUpright(decision, kinds, i, line)
    return readings.length === 2 && readings[0].toLowerCase() === readings[1].toLowerCase()
      ? settleCase(decision, kinds, i)
      : decision
  })
}

const isBetween = ({ readings }: Decision, set: string) => readings.length > 0 && readings.every((r) => set.includes(r))
const settled = (decisions: readonly Decision[]) =>
  decisions.flatMap((d) => (d.readings.length === 1 ? d.readings : []))
const others = (word: readonly Decision[], i: number) => settled(word.filter((_, n) => n !== i))

/**
 * A word is all letters or all figures, unless one of its characters is surely the one and another surely the other: the kind
 * under which its shapes are by far likelier is taken.
 */
function settleKind(word: readonly Decision[], line: readonly Decision[]): Decision[] {
  const around = settled(line)
  const inCapitals = around.some(isCapital) && !around.some(isSmall)
  const usual = (c: string) => (inCapitals && isSmall(c) ? ODD_CASE : 1)
  const likelihood = (test: (c: string) => boolean) =>
    word.reduce((product, { readings, shares }) => {
      if (!readings.some((r) => isLetter(r) || isDigit(r))) return product
      return product * readings.reduce((most, r, i) => (test(r) ? Math.max(most, usual(r) * shares[i]) : most), 0)
    }, 1)
  const [letters, digits] = [likelihood(isLetter), likelihood(isDigit)]
  if (letters === digits) return [...word]
  const kind = letters > digits ? isLetter : isDigit
  if (Math.min(letters, digits) > NO_RIVAL * Math.max(letters, digits)) return [...word]
  return word.map((d) => only(d, kind))
}

/**
 * How wide a ring is tells O from 0 in most faces, not in all: where that speaks against what stands next to it, it stays
 * open. A small ring in a word without other small letters may be a figure of the old style, and so may several.
 */
function settleRound(decision: Decision, word: readonly Decision[], i: number): Decision {
  const around = others(word, i)
  const { readings } = decision
  if (readings.length > 1) return around.some(isLetter) && !around.some(isDigit) ? only(decision, isLetter) : decision
  const beside = settled([word[i - 1], word[i + 1]].filter((d) => d !== undefined))
  const [letters, digits] = [beside.some(isLetter), beside.some(isDigit)]
  if (readings[0] === 'O' && digits) return alsoRead(decision, '0')
  if (readings[0] === '0' && letters && !digits) return alsoRead(decision, 'O')
  const small = around.some((c) => isSmall(c) && !ROUND.includes(c))
  if (readings[0] === 'o' && word.length > 1 && !small) return alsoRead(decision, '0')
  return decision
}

const alsoRead = (decision: Decision, reading: string): Decision => ({
  ...decision,
  readings: [...decision.readings, reading],
  shares: [...decision.shares, NO_RIVAL],
})

function settleUpright(decision: Decision, word: readonly Decision[], i: number, line: readonly Decision[]): Decision {
  const around = others(word, i)
  // A word of nothing but bars is judged by its line.
  const bars = word.every((d) => isBetween(d, UPRIGHT) && !d.readings.includes('1'))
  const nearby = bars ? settled(line) : around
  if (!nearby.some(isLetter) || nearby.some(isDigit)) return decision
  if (!nearby.some(isSmall)) return only(decision, (c) => c === 'I')
  const before = word.slice(0, i).map((d) => d.readings[0])
  const inside = i > 0 && isSmall(before[i - 1] ?? '') && !before.slice(1).some(isCapital)
  return inside && !INNER_CAPITAL.test(before.join('')) ? only(decision, (c) => c === 'l') : decision
}

/** Of a capital and a small letter of one shape, the one that fits better if its kind is all there is around. */
function settleCase(decision: Decision, word: readonly Decision[], i: number): Decision {
  const around = others(word, i)
  const [first] = decision.readings
  const [capitals, smalls] = [around.some(isCapital), around.some(isSmall)]
  const agrees = isCapital(first) ? capitals && !smalls : smalls && i > 0
  return agrees ? only(decision, (c) => c === first) : decision
}

/**
 * Settles what is left open by a word that the sign says elsewhere (its braille): only between characters of one shape, and
 * only when exactly one of the expected words can be read from the shapes.
 * @returns undefined when that does not settle it
 */
export function settleByExpected(word: readonly Decision[], expected: readonly string[]): Decision[] | undefined {
  const open = word.filter((d) => d.readings.length !== 1)
  if (!open.every((d) => isBetween(d, ROUND) || isBetween(d, UPRIGHT))) return undefined
  const fits = (candidate: string) =>
    candidate.length === word.length && word.every((d, i) => d.readings.some((r) => r.toLowerCase() === candidate[i]))
  const fitting = [...new Set(expected.map((e) => e.toLowerCase()))].filter(fits)
  if (fitting.length !== 1) return undefined
  const chosen = word.map((d, i) => only(d, (r) => r.toLowerCase() === fitting[0][i]))
  return chosen.every((d) => d.readings.length === 1) ? chosen : undefined
}
