import { markup, NOTHING, type Html } from '../../report/html-tag.js'
import type { Report } from '../../report/schema.js'
import type { SignDescription } from '../../sign/description.js'
import type { Unit } from '../../sign/length.js'
import { choice, errorOf, selectField, textField } from '../form.js'
import { counted } from '../submittal/words.js'
import type { ShownSign } from './gather.js'
import { FACTS, factId, optionWords, shownFact, unitOf, type Fact } from './place-facts.js'
import type { Refilled } from './waive-form.js'

/** Entering where and how a sign hangs. */

/** What is known of its place so far, and what a bare length of it means. */
export function knownFacts({ kept: { sign } }: ShownSign): { facts: Record<string, unknown>; bare: Unit } {
  if (sign.installation !== null) return { facts: JSON.parse(sign.installation) as Record<string, unknown>, bare: 'mm' }
  const description = JSON.parse(sign.description ?? '{}') as Partial<SignDescription>
  return { facts: { ...description.installation }, bare: description.units ?? 'mm' }
}

export function placeForm(shown: ShownSign, report: Report | null, refilled?: Refilled): Html {
  const { facts, bare } = knownFacts(shown)
  const own = refilled?.form === 'place' ? refilled : undefined
  const unit: Unit = own ? (own.values.get('place-unit') === 'in' ? 'in' : 'mm') : unitOf(facts, bare)
  const value = (fact: Fact) => own?.values.get(factId(fact)) ?? (own ? '' : shownFact(facts, fact, bare, unit))
  const helpful = (fact: Fact) => decidedBy(fact, report)
  const control = (fact: Fact) => controlOf(fact, value(fact), helpful(fact), errorOf(own?.errors ?? [], factId(fact)))
  const isWanted = (fact: Fact) => helpful(fact) > 0 || value(fact) !== ''
  const rest = FACTS.filter((fact) => !isWanted(fact))
  const doors = facts.neighbouringDoors
  const isNone = own ? own.values.has('place-no-other-door') : Array.isArray(doors) && doors.length === 0
  return markup`<form method="post" action="/submittals/${shown.submittal.id}/signs/${shown.kept.sign.id}/installation" aria-label="Facts of its place">
    <p>These take the place of what was said of its place before. What is left empty counts as not known.</p>
    ${selectField(
      { id: 'place-unit', label: 'Unit of the lengths' },
      [
        ['mm', 'mm'],
        ['in', 'inches'],
      ],
      unit,
    )}
    <div class="columns">${FACTS.filter(isWanted).map(control)}</div>
    ${rest.length === 0 ? NOTHING : markup`<details><summary>More about its place (${rest.length})</summary><div class="inside columns">${rest.map(control)}</div></details>`}
    ${Array.isArray(doors) && doors.length > 0 ? markup`<p>${counted(doors.length, 'neighbouring door is', 'neighbouring doors are')} described and stay so.</p>` : choice('place-no-other-door', 'yes', 'No other door turns over the floor at the sign', isNone)}
    <div class="actions"><button type="submit">Enter and check again</button></div>
  </form>`
}

/** How many undecided requirements the fact helps to decide. */
function decidedBy({ path }: Fact, report: Report | null): number {
  const pointer = `/sign/installation/${path.join('/')}`
  return report?.questions.find((question) => question.pointer === pointer)?.decides.length ?? 0
}

function controlOf(fact: Fact, value: string, decides: number, error: string | undefined): Html {
  const hint = decides === 0 ? {} : { hint: `Helps to decide ${counted(decides, 'requirement', 'requirements')}.` }
  const field = { id: factId(fact), label: fact.label, ...hint, error }
  if (fact.kind === 'length') return textField(field, value, { isShort: true, isDecimal: true, autocomplete: 'off' })
  const options = fact.kind === 'truth' ? YES_OR_NO : fact.kind.map((kind) => [kind, optionWords(kind)] as const)
  return selectField(field, [['', 'Not known'], ...options], value)
}

const YES_OR_NO = [
  ['yes', 'Yes'],
  ['no', 'No'],
] as const
