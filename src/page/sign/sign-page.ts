import { readingSection } from '../../report/html-reading.js'
import { isolated, markup, NOTHING, type Html } from '../../report/html-tag.js'
import type { Report } from '../../report/schema.js'
import { STAGES } from '../../report/finding-schema.js'
import { placeOf } from '../../report/set/words.js'
import { STAGE_WORDS, VERDICT_SYMBOLS, VERDICT_WORDS, verdictSentence } from '../../report/words.js'
import { errorSummary } from '../form.js'
import type { View } from '../layout.js'
import { signEvidence } from '../submittal/evidence-links.js'
import { verdictMark } from '../submittal/words.js'
import { USE_WORDS } from '../upload/uses.js'
import { drawingFigure } from './drawing.js'
import { findingGroups } from './findings.js'
import type { ShownSign } from './gather.js'
import { measureForm } from './measure-form.js'
import { besideReport, noteForm, reportsMade } from './notes.js'
import { placeForm } from './place-form.js'
import { restsOn } from './rests-on.js'
import type { Refilled } from './waive-form.js'

/** One sign: the redrawn drawing beside its findings, and what can be entered. */

/** @param refilled a form that could not be taken, as it was filled in */
export function signPage(shown: ShownSign, said: Html, refilled?: Refilled): View {
  const { submittal, sign, earlier } = shown
  const report = earlier?.report ?? sign.report
  const drawing = earlier?.drawing ?? sign.drawing
  const name = sign.mark === '' ? 'Sign without a mark' : sign.mark
  const state = report ? VERDICT_WORDS[report.verdict] : 'No report'
  return {
    title: `${refilled ? 'Error: ' : ''}${name}: ${state} – ${submittal.name}`,
    here: 'submittals',
    above: [
      { address: '/submittals', name: 'Submittals' },
      { address: `/submittals/${submittal.id}`, name: submittal.name },
    ],
    skip: report ? { to: 'wrong', text: 'Skip to the findings' } : { to: 'main', text: 'Skip to the content' },
    main: markup`${refilled ? errorSummary(refilled.errors) : NOTHING} ${said}
      <h1>${isolated(name)}</h1>
      <p class="hidden" role="status" data-announce></p>
      ${standing(shown)} ${report ? verdict(report) : unchecked(shown)}
      ${report && drawing !== null ? markup`<div class="beside"><section class="drawing" aria-label="Drawing">${drawingFigure(report, drawing)}${facts(shown, report)}</section><div>${findingGroups(shown, report, refilled)}</div></div>` : facts(shown, null)}
      ${earlier ? NOTHING : besideReport(shown, report ?? { findings: [] })}
      ${earlier || !report ? NOTHING : entering(shown, report, refilled)}
      ${earlier ? NOTHING : markup`<section class="no-print" aria-labelledby="note"><h2 id="note">Notes</h2>${noteForm(shown, refilled)}</section>`}
      ${report ? markup`<section aria-labelledby="reading-heading" id="reading"><h2 id="reading-heading">What the sign reads</h2>${readingSection(report)}</section>${restsOn(report)}` : NOTHING}
      ${reportsMade(shown)}
      ${earlier || !report ? NOTHING : markup`<section class="no-print" aria-labelledby="evidence"><h2 id="evidence">Evidence to take along</h2>${signEvidence(submittal.id, sign.id)}</section>`}`,
  }
}

/** Whether what is shown is the last word. */
function standing({ kept: { sign }, submittal, earlier }: ShownSign): Html {
  const address = `/submittals/${submittal.id}/signs/${sign.id}`
  if (earlier)
    return markup`<div class="notice">
      <p><strong>An earlier report</strong>, of revision ${earlier.revision}, as it was made. <a href="${address}">Show the latest</a></p>
    </div>`
  if (sign.state === 'cancelled' && sign.report_revision !== sign.revision)
    return markup`<div class="notice"><p>The submittal was cancelled before this sign was checked${sign.report === null ? '' : ' again'}.</p></div>`
  if (sign.state !== 'queued') return NOTHING
  const words =
    sign.report === null
      ? 'This sign waits to be checked.'
      : 'This sign is being checked again. What you see is its report before that.'
  return markup`<div class="notice" data-progress="/v1/submittals/${submittal.id}/events" data-whole>
    <p>${words} <a href="${address}">Show the new report when it is there</a></p>
  </div>`
}

function verdict(report: Report): Html {
  const { verdict, stages } = report
  return markup`<div class="verdict ${verdict}">
      <strong>${VERDICT_SYMBOLS[verdict]} ${VERDICT_WORDS[verdict]}</strong>
      <p>${verdictSentence(report)}</p>
      <p>${STAGES.map((stage, i) => markup`${i === 0 ? '' : ' · '}${STAGE_WORDS[stage]}: ${verdictMark(stages[stage])}`)}</p>
    </div>
    ${report.standards.length > 1 ? markup`<ul>${report.standards.map((one) => markup`<li>${one.title}: ${verdictMark(one.verdict)}</li>`)}</ul>` : NOTHING}`
}

const unchecked = ({ sign: { problem } }: ShownSign): Html =>
  problem
    ? markup`<div class="verdict">
        <strong>! No report: ${problem.title}</strong>
        <p>${isolated(problem.detail)}</p>
      </div>`
    : NOTHING

function facts({ sign }: ShownSign, report: Report | null): Html {
  const place = placeOf(sign)
  const entries: [string, string][] = [
    ...(place === '' ? [] : [['Place', place] as [string, string]]),
    ...(report ? [['Use', USE_WORDS[report.use]] as [string, string]] : []),
    ...(sign.files.length === 0 ? [] : [['From', sign.files.join('; ')] as [string, string]]),
    ...(report ? [['Held against', report.standards.map(({ title }) => title).join('; ')] as [string, string]] : []),
  ]
  return markup`<dl class="facts">
    ${entries.map(
      ([name, value]) =>
        markup`<dt>${name}</dt>
          <dd>${isolated(value)}</dd>`,
    )}
  </dl>`
}

function entering(shown: ShownSign, report: Report, refilled?: Refilled): Html {
  return markup`<section class="no-print" aria-labelledby="measure">
      <h2 id="measure">Enter measured values</h2>
      ${measureForm(shown, report, refilled)}
    </section>
    <section class="no-print" aria-labelledby="place">
      <h2 id="place">Enter facts of its place</h2>
      ${placeForm(shown, report, refilled)}
    </section>`
}
