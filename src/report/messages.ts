import type { Judgement, Reason } from '../judge/finding.js'
import { missing } from '../sign/sign.js'
import { write, type Ends, type Written } from './numbers.js'
import { decidingEnds, isMethod, worstValue } from './observed.js'
import { notMet } from './not-met.js'
import { choices, lowerFirst, sentence } from './sentences.js'
import { kindWords, notationFor, wordsFor } from './quantities.js'

/** The sentences of a finding, made from its typed data only: one function for each kind of limit and each reason. */

/** How many different remarks or reasons one message tells. */
const MOST_TOLD = 3
/** What a fact says that nobody gave. */
const NOT_GIVEN = missing().why

/** The message of one finding, for people. */
export function messageFor(judgement: Judgement): string {
  const { verdict } = judgement
  if (verdict === 'not-applicable') return sentence(judgement.because ?? 'Nothing of this sign is held against it')
  if (verdict === 'undetermined') return undetermined(judgement)
  return joined([
    found(judgement),
    splitNote(judgement),
    remarks(judgement),
    verdict === 'fail' ? others(judgement) : '',
  ])
}

function found(judgement: Judgement): string {
  switch (judgement.limit.kind) {
    case 'length':
    case 'ratio':
    case 'number':
    case 'nominal':
    case 'by-viewing-distance':
    case 'distance-share':
    case 'distance-steps':
      return interval(judgement)
    case 'one-of':
      return kind(judgement)
    case 'yes':
      return yes(judgement)
  }
}

function interval(judgement: Judgement): string {
  const { quantity } = judgement.requirement
  const value = worstValue(judgement)
  if (value === undefined) return judgement.verdict === 'fail' ? 'It fails.' : 'It passes.'
  const words = wordsFor(quantity)
  const failed = judgement.verdict === 'fail'
  const ends = decidingEnds(judgement)
  const written = write(value, ends, notationFor(quantity, judgement.limit.unit), failed)
  const of = judgement.limit.unit === 'ratio' && words.of ? ` ${words.of}` : ''
  const be = words.plural ? 'are' : 'is'
  const several = (judgement.measurement?.observations ?? []).reduce((sum, o) => sum + (o.count ?? 1), 0) > 1
  const atWorst = several ? (failed ? ' at its worst' : ' where it is nearest to the limit') : ''
  const pair = several ? between(judgement, value) : ''
  const excess = failed ? excessOf(written, value, ends) : ''
  return `The ${words.name} ${be} ${written.value}${of}${atWorst}${pair}${excess}; ${allowed(written, ends)}.`
}

/** The two characters whose distance decided, where it is known which they are. */
function between({ decisive }: Judgement, value: number): string {
  const [o] = decisive
  const pair = value === o?.min ? o.between?.least : value === o?.max ? o.between?.most : undefined
  return pair ? `, between “${pair[0]}” and “${pair[1]}”` : ''
}

function excessOf(written: Written, value: number, ends: Ends): string {
  if (written.excess === undefined) return ''
  return ends.min !== undefined && value < ends.min ? `, ${written.excess} too little` : `, ${written.excess} too much`
}

/** "allowed is from … to …", with the ends in the digits of the value. */
function allowed({ min, max }: Written, ends: Ends): string {
  if (min !== undefined && max !== undefined)
    return ends.min === ends.max ? `required is ${min}` : `allowed is ${min} to ${max}`
  if (min !== undefined) return `required is at least ${min}`
  return max === undefined ? 'there is no numeric limit' : `allowed is at most ${max}`
}

function kind(judgement: Judgement): string {
  const { name, plural } = wordsFor(judgement.requirement.quantity)
  const value = judgement.decisive[0]?.value ?? judgement.measurement?.observations[0]?.value
  const list = choices((judgement.limit.pass ?? []).map(kindWords))
  const be = plural ? 'are' : 'is'
  return judgement.verdict === 'fail'
    ? `The ${name} ${be} ${kindWords(String(value))}; allowed is ${list}.`
    : `The ${name} ${be} ${kindWords(String(value))}, which is allowed.`
}

function yes(judgement: Judgement): string {
  return judgement.verdict === 'fail'
    ? (notMet(judgement) ?? `Not met: ${sentence(judgement.requirement.text)}`)
    : `Met: ${sentence(judgement.requirement.text)}`
}

function splitNote(judgement: Judgement): string {
  const { unitSplit } = judgement
  if (!unitSplit) return ''
  const unit = { in: 'inches', mm: 'millimetres' }
  const both = judgement.verdict === 'fail' && unitSplit.judged === unitSplit.pass
  const first = both
    ? `Both printed units had to pass: it passes by the printed ${unit[unitSplit.pass]} and fails`
    : unitSplit.judged === unitSplit.fail
      ? `It fails by the printed ${unit[unitSplit.fail]}, which the standard puts first, and would pass`
      : `It passes by the printed ${unit[unitSplit.pass]}, which the standard puts first, and would fail`
  return `${first} by the printed ${unit[unitSplit.judged === unitSplit.fail ? unitSplit.pass : unitSplit.fail]} (${judgement.limit.printed}).`
}

function remarks(judgement: Judgement): string {
  const [only] = judgement.decisive
  if (judgement.decisive.length <= 1) return only?.remark && !isMethod(only) ? sentence(only.remark) : ''
  const told = new Set(
    judgement.decisive
      .map((o) => (isMethod(o) ? undefined : o.remark))
      .filter((r): r is string => r !== undefined && r !== ''),
  )
  return [...told].slice(0, MOST_TOLD).map(sentence).join(' ')
}

/** A failure stands whatever else could not be measured; that there was something is said all the same. */
function others(judgement: Judgement): string {
  return judgement.gaps.length === 0 ? '' : `Not everything could be measured: ${reasonsOf(judgement)}`
}

const LEADS: Record<Reason, string> = {
  'missing-fact': 'Not decided:',
  'within-uncertainty': 'Not decided: the value lies within its uncertainty of the limit.',
  'needs-judgement': 'Not decided; a person must judge it:',
  unreadable: 'Not decided; a part of the sign could not be read:',
  'limit-reached': 'Not decided; a limit of this service was reached:',
}

function undetermined(judgement: Judgement): string {
  const reason = judgement.reason ?? 'missing-fact'
  const lead = LEADS[reason]
  if (reason === 'within-uncertainty') return joined([lead, near(judgement), remarks(judgement)])
  const why = reasonsOf(judgement)
  if (why !== '') return joined([lead, lowerFirst(why), remarks(judgement)])
  const value = judgement.decisive[0]?.value
  const { name } = wordsFor(judgement.requirement.quantity)
  const seen =
    value === undefined || typeof value === 'boolean'
      ? judgement.requirement.text
      : `the ${name} is ${kindWords(String(value))}`
  return joined([lead, lowerFirst(sentence(seen)), remarks(judgement)])
}

function near(judgement: Judgement): string {
  const { quantity } = judgement.requirement
  const value = worstValue(judgement)
  if (value === undefined) return ''
  const ends = decidingEnds(judgement)
  const notation = notationFor(quantity, judgement.limit.unit)
  const isOutside = (judgement.margin ?? 0) < 0
  const written = write(value, ends, notation, isOutside)
  const uncertainty = judgement.decisive[0]?.uncertainty
  const spread =
    uncertainty === undefined ? '' : `, give or take ${write(2 * uncertainty, {}, notation, false).value} (k = 2)`
  return `The ${wordsFor(quantity).name} is ${written.value}${spread}; ${allowed(written, ends)}.`
}

/** The reasons of all gaps, each once; "not given" alone is told of the quantity itself. */
function reasonsOf({ gaps, requirement }: Judgement): string {
  const whole = (why: string) => (why === NOT_GIVEN ? `the ${wordsFor(requirement.quantity).name} is not given` : why)
  const told = [...new Set(gaps.map((gap) => sentence(whole(gap.why))))]
  const more = told.length - MOST_TOLD
  return joined([...told.slice(0, MOST_TOLD), more > 0 ? `And ${more} more.` : ''])
}

function joined(parts: string[]): string {
  let text = ''
  for (const part of parts) if (part !== '') text = text === '' ? part : `${text} ${part}`
  return text
}
