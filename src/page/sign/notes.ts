import { overlaySection } from '../../report/html-overlay.js'
import { alone } from '../../report/html-place.js'
import { Html, isolated, markup, NOTHING } from '../../report/html-tag.js'
import { isBare, timeWords } from '../../report/overlay.js'
import { table } from '../../report/html-table.js'
import type { Report } from '../../report/schema.js'
import type { ReportVerdict } from '../../report/finding-schema.js'
import { VERDICT_SYMBOLS, VERDICT_WORDS } from '../../report/words.js'
import { errorOf, textArea, textField } from '../form.js'
import type { ShownSign } from './gather.js'
import { withdrawing, type Refilled } from './waive-form.js'

/** What lies beside a report: waivers that hold nothing, readings, notes, and the reports that were made before. */

export function besideReport({ sign, kept, submittal }: ShownSign, report: Pick<Report, 'findings'>): Html {
  if (isBare(sign)) return NOTHING
  const at = `/submittals/${submittal.id}/signs/${sign.id}/waivers`
  const known = new Set(report.findings.filter(isOpen).map(({ fingerprint }) => fingerprint))
  const loose = kept.waivers.filter(({ fingerprint }) => !known.has(fingerprint))
  return markup`<section aria-labelledby="laid-over">
    <h2 id="laid-over">Waivers, notes and added readings</h2>
    ${overlaySection(report, alone(sign))} ${loose.map((waiver) => withdrawing(at, waiver))}
  </section>`
}

/** At these the waiver is withdrawn at the finding itself. */
const isOpen = ({ verdict }: { verdict: ReportVerdict }): boolean => verdict === 'fail' || verdict === 'undetermined'

export function noteForm({ submittal, kept }: ShownSign, refilled?: Refilled): Html {
  const own = refilled?.form === 'note' ? refilled : undefined
  const value = (name: string) => own?.values.get(name) ?? ''
  const error = (id: string) => errorOf(own?.errors ?? [], id)
  return markup`<details${new Html(own ? ' open' : '')}>
    <summary>Add a note</summary>
    <form class="inside" method="post" action="/submittals/${submittal.id}/signs/${kept.sign.id}/notes" aria-label="Add a note">
      ${textArea({ id: 'note-text', name: 'text', label: 'Note', hint: 'For whoever reads the evidence. It changes no verdict.', error: error('note-text') }, value('text'), true)}
      ${textField({ id: 'note-author', name: 'author', label: 'Written by', hint: 'May be left empty.', error: error('note-author') }, value('author'), { autocomplete: 'name' })}
      <button type="submit">Add the note</button>
    </form>
  </details>`
}

export function reportsMade({ submittal, kept: { sign, reports } }: ShownSign): Html {
  if (reports.length === 0) return NOTHING
  const address = `/submittals/${submittal.id}/signs/${sign.id}`
  const rows = reports.map(({ revision, verdict, made_at, id }, i) => {
    const known = verdict as ReportVerdict
    return markup`<tr>
      <th scope="row"><a href="${i === 0 ? address : `${address}?report=${revision}`}">${i === 0 ? 'Latest' : 'Earlier'}: revision ${revision}</a></th>
      <td>${timeWords(made_at)}</td>
      <td>${VERDICT_SYMBOLS[known]} ${VERDICT_WORDS[known]}</td>
      <td>${isolated(id)}</td>
    </tr>`
  })
  return markup`<section aria-labelledby="reports">
    <h2 id="reports">Reports of this sign</h2>
    ${table('The latest first; a report is never changed', ['Report', 'Made', 'Verdict', 'Id'], rows)}
  </section>`
}
