import { Html, isolated, markup } from '../../report/html-tag.js'
import type { Numbered } from '../../report/numbering.js'
import { WaiverRequest } from '../../service/submittals/change-requests.js'
import { faultsOf } from '../../sign/faults.js'
import type { z } from 'zod'
import { errorOf, hidden, textArea, textField, type FormError } from '../form.js'
import type { ShownSign } from './gather.js'

/** Letting a finding stand, and taking that back. */

/** A form that could not be taken, as it was filled in. */
export interface Refilled {
  form: 'measure' | 'place' | 'waive' | 'note'
  values: URLSearchParams
  errors: FormError[]
}

const WITHOUT_AUTHOR = { label: 'Entered by', hint: 'The person who says so.' }

/** Below a finding that fails or is undecided. */
export function waiving({ submittal, kept }: ShownSign, { number, finding }: Numbered, refilled?: Refilled): Html {
  const { fingerprint } = finding
  const own = refilled?.form === 'waive' && refilled.values.get('fingerprint') === fingerprint ? refilled : undefined
  const value = (name: string) => own?.values.get(name) ?? ''
  const id = (name: string) => waiveId(number, name)
  const error = (name: string) => errorOf(own?.errors ?? [], id(name))
  const at = `/submittals/${submittal.id}/signs/${kept.sign.id}/waivers`
  const given = kept.waivers.filter((waiver) => waiver.fingerprint === fingerprint)
  return markup`${given.map((waiver) => withdrawing(at, waiver))}
    <details class="no-print"${new Html(own ? ' open' : '')}>
      <summary>Waive<span class="hidden"> finding ${number}</span></summary>
      <form class="inside" method="post" action="${at}" aria-label="Waive finding ${number}">
        <p class="hint">An authority lets this stand. The finding and its verdict stay as they are.</p>
        ${hidden('fingerprint', fingerprint)}
        ${textArea({ id: id('reason'), name: 'reason', label: 'Reason', error: error('reason') }, value('reason'), true)}
        ${textField({ id: id('authority'), name: 'authority', label: 'Authority’s number or letter', error: error('authority') }, value('authority'), { isRequired: true, autocomplete: 'off' })}
        ${textField({ id: id('author'), name: 'author', ...WITHOUT_AUTHOR, error: error('author') }, value('author'), { isRequired: true, autocomplete: 'name' })}
        ${textField({ id: id('expires'), name: 'expires', label: 'Last day on which it holds', hint: 'Empty: until it is withdrawn.', error: error('expires') }, value('expires'), { type: 'date', isShort: true })}
        <button type="submit">Enter the waiver</button>
      </form>
    </details>`
}

export const waiveId = (number: number, name: string): string => `waive-${number}-${name}`

export const withdrawing = (at: string, { id, authority }: { id: string; authority: string }): Html =>
  markup`<form class="no-print actions" method="post" action="${at}/${id}/withdraw">
    <button class="quiet" type="submit">Withdraw the waiver ${isolated(authority)}</button>
  </form>`

const EMPTY: Record<string, string> = {
  reason: 'Give the reason.',
  authority: 'Give the authority’s number or letter.',
  author: 'Give the name of the person who enters this.',
}

/** @param number of the finding that it is for */
export function readWaiver(
  values: URLSearchParams,
  number: number,
): { waiver: z.infer<typeof WaiverRequest> } | { errors: FormError[] } {
  const said = (name: string) => oneLine(values.get(name) ?? '')
  const missing = Object.keys(EMPTY).filter((name) => said(name) === '')
  if (missing.length > 0)
    return { errors: missing.map((name) => ({ id: waiveId(number, name), text: EMPTY[name] ?? '' })) }
  const [reason, authority, author, expires] = ['reason', 'authority', 'author', 'expires'].map(said)
  const fingerprint = values.get('fingerprint') ?? ''
  const parsed = WaiverRequest.safeParse({ fingerprint, reason, authority, author, expires: expires || null })
  if (parsed.success) return { waiver: parsed.data }
  const faults = faultsOf(parsed.error, WaiverRequest)
  return { errors: faults.map(({ pointer = '', detail }) => ({ id: waiveId(number, pointer.slice(1)), text: detail })) }
}

/** What is kept is one line: the lines of a text field are put behind each other. */
export const oneLine = (text: string): string => text.replace(/\s*[\r\n]+\s*/gu, ' ').trim()
