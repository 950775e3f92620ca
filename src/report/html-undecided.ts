import { evidenceWords, instrumentsOf } from './evidence.js'
import type { Finding } from './finding-schema.js'
import { waiverParagraphs } from './html-overlay.js'
import { heading, numberMark, type OnPage } from './html-place.js'
import { table } from './html-table.js'
import { code, isolated, markup, NOTHING, type Html } from './html-tag.js'
import type { Numbered } from './numbering.js'
import { byWeight, waiversFor } from './overlay.js'
import type { Report } from './schema.js'
import { statisticsWords } from './statistics-words.js'
import { FORCE_WORDS, REASON_WORDS } from './words.js'

/** The part of the page that says what is undecided. */

/** What decides where there is nothing to measure. */
const DECIDED_BY: Record<NonNullable<Finding['reason']>, string> = {
  'missing-fact': 'Add the fact to the request.',
  'within-uncertainty': 'Measure it with less uncertainty, or move it away from the limit.',
  'needs-judgement': 'Have a person judge it.',
  unreadable: 'Say in the request what the drawing does not say in a way that can be read.',
  'limit-reached': 'Ask for less at once.',
}

/** What is undecided and what would decide it, as a form to print and fill in. */
export function undecidedSection(report: Report, undecided: readonly Numbered[], on: OnPage): Html {
  if (undecided.length === 0) return markup`<p>Nothing is left undecided.</p>`
  return markup`${undecidedTable(report, undecided, 'Undecided, and what would decide it', on)}${fillIn(report, on)}`
}

/** @param caption tells this table from others on the page */
export function undecidedTable(report: Report, undecided: readonly Numbered[], caption: string, on: OnPage): Html {
  const how = new Map(report.toMeasure.map((item) => [item.requirement, item.how]))
  const rows = undecided.map(
    ({ number, finding }) =>
      markup`<tr id="${on.prefix}finding-${number}">
        <th scope="row">
          ${numberMark(number, true)} ${on.clause(finding)}
          ${finding.title}${finding.force === 'shall' ? '' : ` (${FORCE_WORDS[finding.force]})`}
        </th>
        <td>
          ${isolated(finding.message)} ${evidence(finding)} ${waiverParagraphs(waiversFor(on.overlay, finding))}
        </td>
        <td>${how.get(finding.requirement) ?? (finding.reason ? DECIDED_BY[finding.reason] : '')}</td>
        <td>${finding.limit.printed}</td>
        <td><span class="hidden">To be filled in</span><span class="blank"></span></td>
      </tr>`,
  )
  return table(caption, ['Requirement', 'Why', 'How to decide it', 'Allowed', 'Found'], rows)
}

/** What would help to decide, whichever standard it is for, and who measured what. */
export const fillIn = (report: Report, on: OnPage): Html =>
  markup`${questions(report, on)}
    ${instruments(report)}
    <p>Measured with: <span class="hidden">to be filled in</span><span class="blank"></span></p>
    <p>By, on: <span class="hidden">to be filled in</span><span class="blank"></span></p>`

/** Of what was measured: with what, how often and how surely. */
const evidence = ({ measured, quantity }: Finding): Html =>
  measured?.basis === 'measured'
    ? markup`${isolated(`${evidenceWords(measured, quantity)}.`)} ${statisticsWords(measured, quantity)}`
    : NOTHING

/** In short, for a set: what only lacks a fact is named, since its message says no more; whatever else is open has a line of its own. */
export function undecidedInShort(undecided: readonly Numbered[], on: OnPage): Html {
  if (undecided.length === 0) return markup`<p>Nothing is left undecided.</p>`
  const { plain, rest } = byWeight(undecided, on.overlay)
  const name = ({ number, finding }: Numbered) =>
    markup`${numberMark(number, true)} ${on.clause(finding)} ${finding.title}${finding.force === 'shall' ? '' : ` (${FORCE_WORDS[finding.force]})`}`
  const lines = rest.map(
    (item) =>
      markup`<li>
        ${name(item)}: ${item.finding.reason ? REASON_WORDS[item.finding.reason] : ''}.
        ${isolated(item.finding.message)} ${waiverParagraphs(waiversFor(on.overlay, item.finding))}
      </li>`,
  )
  return markup`${lines.length === 0 ? NOTHING : markup`<ul class="open">${lines}</ul>`}
  ${plain.length === 0 ? NOTHING : markup`<p>Not given, ${plain.length}:</p><ul class="inline">${plain.map((item) => markup`<li>${name(item)}</li>`)}</ul>`}`
}

function instruments(report: Report): Html {
  const named = instrumentsOf(report)
  return named.length === 0
    ? NOTHING
    : markup`<p>Measured so far with: ${named.map((name, i) => markup`${i === 0 ? '' : ', '}${isolated(name)}`)}.</p>`
}

const UNIT_WORDS = {
  mm: 'millimetres',
  in: 'inches',
  ratio: 'ratio',
  count: 'a whole number',
  lx: 'lux',
  'gloss-units': 'gloss units',
}

function questions({ questions }: Report, on: OnPage): Html {
  if (questions.length === 0) return NOTHING
  const rows = questions.map(
    (q) =>
      markup`<tr>
        <th scope="row">${isolated(q.ask)}</th>
        <td>
          ${q.choices ? q.choices.join(', ') : q.unit === null ? 'text' : UNIT_WORDS[q.unit]}
        </td>
        <td>${code(q.pointer)}</td>
        <td>${q.decides.length}</td>
      </tr>`,
  )
  return markup`${heading(on.level + 1, 'Facts that would help')}
    ${table('Facts to add to the request', ['Question', 'Answer in', 'Where in the request', 'Requirements it helps to decide'], rows)}`
}
