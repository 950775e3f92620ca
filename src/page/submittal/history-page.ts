import { code, isolated, markup, type Html } from '../../report/html-tag.js'
import type { ReportVerdict } from '../../report/finding-schema.js'
import { timeWords } from '../../report/overlay.js'
import { VERDICT_WORDS } from '../../report/words.js'
import type { EventKind, ProvedHistory } from '../../submittals/history.js'
import type { EventRow, SubmittalRow } from '../../submittals/store/tables.js'
import type { View } from '../layout.js'
import { pager, type Part } from '../pager.js'
import { counted } from './words.js'

/** Who did what, when; and whether all of it is as it was written. */

const KINDS: Record<EventKind, string> = {
  'submittal-created': 'Handed in',
  'signs-added': 'Files added',
  'sign-checked': 'Sign checked',
  'sign-not-checked': 'Sign could not be checked',
  'sign-removed': 'Sign taken out',
  'measurements-added': 'Measured values entered',
  'installation-changed': 'Facts of its place entered',
  'waiver-added': 'Waiver entered',
  'waiver-withdrawn': 'Waiver withdrawn',
  'note-added': 'Note added',
  'submittal-checked': 'Every sign checked',
  'submittal-cancelled': 'Cancelled',
}

export const HISTORY_PAGE = 200
/** Of a hash, in the table; all of it stands in the event as it was written. */
const SHOWN_DIGITS = 12

export function historyPage({ id, name }: SubmittalRow, proof: ProvedHistory, part: Part): View {
  const first = (part.page - 1) * part.size
  const shown = proof.events.slice(first, first + part.size)
  return {
    title: `History of ${name}`,
    here: 'submittals',
    above: [
      { address: '/submittals', name: 'Submittals' },
      { address: `/submittals/${id}`, name },
    ],
    main: markup`<h1>History of ${isolated(name)}</h1>
      ${verdict(proof)}
      <p>
        Each event holds the hash of the one before it, so that a change of any of them shows. Who notes the hash of the last event can tell
        later that nothing before it was changed. <a href="/v1/submittals/${id}/history">The same as data, with how the hashes are made</a>
      </p>
      ${events(shown, id)} ${pager(part, `/submittals/${id}/history`, new URLSearchParams(), 'events')}`,
  }
}

function verdict({ intact, brokenAt, head, events }: ProvedHistory): Html {
  const words = intact
    ? markup`<strong class="pass">✓ Intact</strong>
        <p>${counted(events.length, 'event', 'events')}; every hash was computed anew and is what it must be.</p>`
    : markup`<strong class="fail">✗ Not intact</strong>
        <p>From event ${brokenAt ?? 1} on it is not what was written. Take the evidence along and tell whoever runs the service.</p>`
  return markup`<div class="verdict ${intact ? 'pass' : 'fail'}">${words}<p>Hash of the last event: ${code(head)}</p></div>`
}

const events = (rows: EventRow[], submittal: string): Html =>
  markup`<div class="scroll" tabindex="0" role="group" aria-label="Events">
    <table class="history">
      <caption class="hidden">Events, the first at the top</caption>
      <thead>
        <tr>
          <th scope="col">No.</th><th scope="col">When</th><th scope="col">Who</th><th scope="col">What</th><th scope="col">Hash</th>
        </tr>
      </thead>
      <tbody>${rows.map((row) => event(row, submittal))}</tbody>
    </table>
  </div>`

const isKind = (kind: string): kind is EventKind => Object.hasOwn(KINDS, kind)

function event({ number, at, actor, kind, data, hash }: EventRow, submittal: string): Html {
  return markup`<tr>
    <th scope="row">${number}</th>
    <td>${timeWords(at)}</td>
    <td>${isolated(actor)}</td>
    <td>
      <strong>${isKind(kind) ? KINDS[kind] : kind}</strong> ${about(JSON.parse(data) as Data, submittal)}
      <details><summary>As it was written</summary>${code(data)}<br />Hash: ${code(hash)}</details>
    </td>
    <td>${code(hash.slice(0, SHOWN_DIGITS))}…</td>
  </tr>`
}

const isVerdict = (verdict: string): verdict is ReportVerdict => Object.hasOwn(VERDICT_WORDS, verdict)

/** What of the data of an event is told in words; all of it stands below. */
interface Data {
  sign?: string
  mark?: string
  verdict?: string | null
  signs?: number
  author?: string
}

function about({ sign, mark, verdict, signs, author }: Data, submittal: string): Html {
  const words = [
    ...(typeof signs === 'number' ? [markup`${counted(signs, 'sign', 'signs')}`] : []),
    ...(sign === undefined
      ? []
      : [markup`<a href="/submittals/${submittal}/signs/${sign}">${isolated(mark ?? sign)}</a>`]),
    ...(typeof verdict === 'string'
      ? [markup`${isVerdict(verdict) ? VERDICT_WORDS[verdict].toLowerCase() : verdict}`]
      : []),
    ...(author === undefined ? [] : [markup`by ${isolated(author)}`]),
  ]
  return markup`${words.map((one, i) => markup`${i === 0 ? '' : ', '}${one}`)}`
}
