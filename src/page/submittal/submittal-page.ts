import { isolated, markup, NOTHING, type Html } from '../../report/html-tag.js'
import { timeWords } from '../../report/overlay.js'
import type { IntakeProblem, SetFinding } from '../../report/set/evidence.js'
import {
  FINDING_KINDS,
  findingWords,
  INTAKE_PROBLEMS_ARE,
  problemPlace,
  SET_FINDINGS_ARE,
} from '../../report/set/words.js'
import { table } from '../../report/html-table.js'
import { listStandards } from '../../standards/catalogue.js'
import type { SubmittalRow } from '../../submittals/store/tables.js'
import type { View } from '../layout.js'
import { setEvidence } from './evidence-links.js'
import { signTable, type Listed } from './sign-table.js'
import { counted, isUnderWay, verdictMark } from './words.js'

/** One set: how far it is, what it comes to, its signs, its evidence, and what can be done with it. */

export interface Shown {
  row: SubmittalRow
  verdicts: Record<string, number>
  listed: Listed
  said: Html
}

export function submittalPage({ row, verdicts, listed, said }: Shown): View {
  const { name, state } = row
  return {
    title: name,
    here: 'submittals',
    above: [{ address: '/submittals', name: 'Submittals' }],
    skip: { to: 'signs', text: 'Skip to the signs' },
    isUnderWay: isUnderWay(state),
    main: markup`${said}
      <h1>${isolated(name)}</h1>
      <p class="hidden" role="status" data-announce></p>
      <section aria-labelledby="state-heading" id="state" data-live>
        <h2 id="state-heading">Where it stands</h2>
        ${progress(row)} ${totals(row, verdicts)}
      </section>
      ${findings(row)} ${problems(row)}
      <section aria-labelledby="signs">
        <h2 id="signs" tabindex="-1">Signs</h2>
        ${signTable(listed)}
      </section>
      <section aria-labelledby="evidence"><h2 id="evidence">Evidence to take along</h2>${evidence(row)}</section>
      <section aria-labelledby="more"><h2 id="more">About this set</h2>${about(row)} ${actions(row)}</section>`,
  }
}

function progress({ id, state, total, open, updated_at }: SubmittalRow): Html {
  const done = total - open
  const words = `${counted(done, 'sign', 'signs')} of ${total.toLocaleString('en')} checked`
  if (!isUnderWay(state))
    return markup`<p data-state="${state}">
      <strong>${state === 'done' ? 'Checked.' : 'Cancelled.'}</strong>
      ${state === 'done' ? `${counted(total, 'sign', 'signs')}.` : 'Signs that had no report yet were not checked.'} Last change
      ${timeWords(updated_at)}.
    </p>`
  return markup`<p data-state="${state}" data-progress="/v1/submittals/${id}/events">
      <strong>${state === 'queued' ? 'Waiting to be checked.' : 'Being checked.'}</strong> ${words}.
    </p>
    <progress max="${total}" value="${done}" aria-label="Signs checked">${words}</progress>`
}

const VERDICTS = ['fail', 'undetermined', 'pass', 'not-applicable'] as const

function totals({ id }: SubmittalRow, verdicts: Record<string, number>): Html {
  const none = verdicts.none ?? 0
  return markup`<ul class="totals" aria-label="Signs by verdict">
    ${VERDICTS.filter((verdict) => verdict !== 'not-applicable' || (verdicts[verdict] ?? 0) > 0).map(
      (verdict) =>
        markup`<li><strong>${(verdicts[verdict] ?? 0).toLocaleString('en')}</strong>
          <a href="/submittals/${id}?verdict=${verdict}#signs">${verdictMark(verdict)}</a></li>`,
    )}
    ${none === 0 ? NOTHING : markup`<li><strong>${none.toLocaleString('en')}</strong> <a href="/submittals/${id}?verdict=none#signs">No report</a></li>`}
  </ul>`
}

function findings({ set_findings, state }: SubmittalRow): Html {
  const found = JSON.parse(set_findings) as SetFinding[]
  if (found.length === 0) return NOTHING
  const earlier = isUnderWay(state) ? ' As it was before the signs that are being checked now.' : ''
  return markup`<section aria-labelledby="set-findings">
    <h2 id="set-findings">About the set as a whole</h2>
    <p>${SET_FINDINGS_ARE}${earlier}</p>
    <ul>
      ${found.map((one) => markup`<li><strong>${FINDING_KINDS[one.kind]}:</strong> ${isolated(findingWords(one))}</li>`)}
    </ul>
  </section>`
}

/** As many problems stand open; more are folded. */
const MOST_OPEN = 10

function problems({ problems }: SubmittalRow): Html {
  const listed = JSON.parse(problems) as IntakeProblem[]
  if (listed.length === 0) return NOTHING
  const rows = listed.map(
    (one) =>
      markup`<tr>
        <th scope="row">${isolated(problemPlace(one))}</th>
        <td>${isolated(one.detail)}</td>
      </tr>`,
  )
  const all = table('What of the upload could not be used', ['Where', 'Why'], rows)
  return markup`<section aria-labelledby="problems">
    <h2 id="problems">What could not be used</h2>
    <p>${INTAKE_PROBLEMS_ARE}</p>
    ${listed.length > MOST_OPEN ? markup`<details><summary>${counted(listed.length, 'place', 'places')}</summary>${all}</details>` : all}
  </section>`
}

const evidence = ({ id, state }: SubmittalRow): Html =>
  markup`${isUnderWay(state) ? markup`<p>Not every sign has been checked yet; what is taken now says so.</p>` : NOTHING} ${setEvidence(id)}`

function about({ id, standards, created_at, event_count }: SubmittalRow): Html {
  return markup`<dl class="facts">
    <dt>Handed in</dt>
    <dd>${timeWords(created_at)}</dd>
    <dt>Held against</dt>
    <dd>${(JSON.parse(standards) as string[]).map(standardWords).join('; ')}</dd>
    <dt>What happened</dt>
    <dd><a href="/submittals/${id}/history">${counted(event_count, 'event', 'events')}</a></dd>
  </dl>`
}

/** The title behind a pinned id; a standard that is no longer here is named by its id alone. */
function standardWords(pinned: string): string {
  const title = listStandards().find(({ id }) => id === pinned.split('@')[0])?.title
  return title === undefined ? pinned : `${title} (${pinned})`
}

function actions({ id, state }: SubmittalRow): Html {
  const cancel = markup`<form method="post" action="/submittals/${id}/cancel">
    <button class="quiet" type="submit">Cancel what is not checked yet</button>
  </form>`
  return markup`<div class="actions">
    ${state === 'cancelled' ? NOTHING : markup`<a class="button" href="/submittals/${id}/add">Add files</a>`}
    ${isUnderWay(state) ? cancel : NOTHING}
    <a class="button quiet" href="/submittals/${id}/delete">Delete …</a>
  </div>`
}
