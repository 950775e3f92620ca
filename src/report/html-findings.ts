import { evidenceWords, instrumentsOf } from './evidence.js'
import type { Finding, Measured } from './finding-schema.js'
import { code, isolated, markup, NOTHING, type Content, type Html } from './html-tag.js'
import type { Numbered } from './numbering.js'
import { placeWords } from './place-words.js'
import type { Report } from './schema.js'
import { lowerFirst } from './sentences.js'
import { statisticsWords } from './statistics-words.js'
import { FORCE_WORDS, STAGE_WORDS } from './words.js'

/** The parts of the page that list findings: what is wrong, what is undecided, what passed. */

const MOST_PLACES_TOLD = 10

/** A table with a caption and a head, in a region that scrolls by keyboard where it is too wide. */
export function table(caption: string, heads: string[], rows: Content[]): Html {
  return markup`<div class="scroll" tabindex="0" role="group" aria-label="${caption}">
    <table>
      <caption>
        ${caption}
      </caption>
      <thead>
        <tr>
          ${heads.map((head) => markup`<th scope="col">${head}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows}
      </tbody>
    </table>
  </div>`
}

const numberMark = (number: number, open: boolean): Html =>
  markup`<span class="number${open ? ' open' : ''}">${open ? `? ${number}` : number}</span>`

/** Every failing finding: the clause, what was found, what is allowed, what to change it to, where. */
export function wrongSection(failing: readonly Numbered[]): Html {
  if (failing.length === 0) return markup`<p>Nothing that was looked at fails.</p>`
  return markup`${failing.map(({ number, finding }) => failure(number, finding))}`
}

function failure(number: number, finding: Finding): Html {
  const advice = finding.force !== 'shall'
  return markup`<article class="finding${advice ? ' advice' : ''}" id="finding-${number}">
    <h3>
      ${numberMark(number, false)} ${finding.clause} ${finding.title}
      <span class="fail">✗ ${advice ? `Not met (${FORCE_WORDS[finding.force]})` : 'Fails'}</span>
    </h3>
    <dl>
      <dt>Found</dt>
      <dd>${isolated(finding.message)}</dd>
      <dt>Allowed</dt>
      <dd>${finding.limit.printed}</dd>
      ${
        finding.remedy
          ? markup`<dt>Change</dt>
              <dd class="change">${isolated(finding.remedy.text)}</dd>`
          : NOTHING
      }
      <dt>Where</dt>
      <dd>${where(finding)}</dd>
      ${
        finding.measured
          ? markup`<dt>How it was got</dt>
              <dd>${isolated(evidenceWords(finding.measured, finding.quantity))}. ${finding.measured.method}</dd>
              ${readings(finding)}`
          : NOTHING
      }
      <dt>What is asked</dt>
      <dd>${finding.asks}</dd>
      <dt>Requirement</dt>
      <dd>${code(finding.requirement)}, evidence: ${STAGE_WORDS[finding.stage].toLowerCase()}</dd>
    </dl>
  </article>`
}

function where({ where, whereTotal }: Finding): Html {
  if (where.length === 0) return markup`The whole sign.`
  const told = where.slice(0, MOST_PLACES_TOLD)
  const more = whereTotal - told.length
  return markup`<ul>
    ${told.map((place) => markup`<li>${isolated(placeWords(place))}</li>`)}${more > 0 ? markup`<li>and ${more} more</li>` : NOTHING}
  </ul>`
}

/** What decides where there is nothing to measure. */
const DECIDED_BY: Record<NonNullable<Finding['reason']>, string> = {
  'missing-fact': 'Add the fact to the request.',
  'within-uncertainty': 'Measure it with less uncertainty, or move it away from the limit.',
  'needs-judgement': 'Have a person judge it.',
  unreadable: 'Say in the request what the drawing does not say in a way that can be read.',
  'limit-reached': 'Ask for less at once.',
}

/** What is undecided and what would decide it, as a form to print and fill in. */
export function undecidedSection(report: Report, undecided: readonly Numbered[]): Html {
  if (undecided.length === 0) return markup`<p>Nothing is left undecided.</p>`
  return markup`${undecidedTable(report, undecided, 'Undecided, and what would decide it')}${fillIn(report)}`
}

/** @param caption tells this table from others on the page */
export function undecidedTable(report: Report, undecided: readonly Numbered[], caption: string): Html {
  const how = new Map(report.toMeasure.map((item) => [item.requirement, item.how]))
  const rows = undecided.map(
    ({ number, finding }) =>
      markup`<tr id="finding-${number}">
        <th scope="row">
          ${numberMark(number, true)} ${finding.clause}
          ${finding.title}${finding.force === 'shall' ? '' : ` (${FORCE_WORDS[finding.force]})`}
        </th>
        <td>${isolated(finding.message)} ${evidence(finding)}</td>
        <td>${how.get(finding.requirement) ?? (finding.reason ? DECIDED_BY[finding.reason] : '')}</td>
        <td>${finding.limit.printed}</td>
        <td><span class="hidden">To be filled in</span><span class="blank"></span></td>
      </tr>`,
  )
  return table(caption, ['Requirement', 'Why', 'How to decide it', 'Allowed', 'Found'], rows)
}

/** What would help to decide, whichever standard it is for, and who measured what. */
export const fillIn = (report: Report): Html =>
  markup`${questions(report)}
    ${instruments(report)}
    <p>Measured with: <span class="hidden">to be filled in</span><span class="blank"></span></p>
    <p>By, on: <span class="hidden">to be filled in</span><span class="blank"></span></p>`

/** Of what was measured: with what, how often and how surely. */
const evidence = ({ measured, quantity }: Finding): Html =>
  measured?.basis === 'measured'
    ? markup`${isolated(`${evidenceWords(measured, quantity)}.`)} ${statisticsWords(measured, quantity)}`
    : NOTHING

/** What the readings say, behind with what they were taken. */
function after(measured: Measured, quantity: string): string {
  const words = statisticsWords(measured, quantity)
  return words === '' ? '' : `. ${words}`
}

function readings({ measured, quantity }: Finding): Html {
  const words = measured ? statisticsWords(measured, quantity) : ''
  return words === ''
    ? NOTHING
    : markup`<dt>What the readings say</dt>
        <dd>${words}</dd>`
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

function questions({ questions }: Report): Html {
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
  return markup`<h3>Facts that would help</h3>
    ${table('Facts to add to the request', ['Question', 'Answer in', 'Where in the request', 'Requirements it helps to decide'], rows)}`
}

/** What passed and what does not apply, folded away. */
export function restSection(findings: readonly Finding[]): Html {
  const of = (verdict: Finding['verdict']) => findings.filter((f) => f.verdict === verdict)
  return markup`${passed(of('pass'))}${notApplicable(of('not-applicable'))}`
}

function passed(findings: Finding[]): Html {
  if (findings.length === 0) return NOTHING
  const rows = findings.map(
    (f) =>
      markup`<tr>
        <th scope="row">${f.clause} ${f.title}</th>
        <td>${isolated(f.message)}</td>
        <td>
          ${STAGE_WORDS[f.stage]}${f.measured ? markup`: ${isolated(lowerFirst(evidenceWords(f.measured, f.quantity)))}${after(f.measured, f.quantity)}` : ''}
        </td>
      </tr>`,
  )
  return markup`<details>
    <summary><span class="pass">✓ Passed</span>: ${findings.length}</summary>
    ${table('Passed', ['Requirement', 'Finding', 'Evidence'], rows)}
  </details>`
}

/** What does not apply, each reason once. */
function notApplicable(findings: Finding[]): Html {
  if (findings.length === 0) return NOTHING
  const byReason = new Map<string, string[]>()
  for (const { message, clause, title } of findings)
    byReason.set(message, [...(byReason.get(message) ?? []), `${clause} ${title}`])
  const rows = [...byReason].map(
    ([why, requirements]) =>
      markup`<tr>
        <th scope="row">${isolated(why)}</th>
        <td>${requirements.join('; ')}</td>
      </tr>`,
  )
  return markup`<details>
    <summary><span class="not-applicable">– Not applicable</span>: ${findings.length}</summary>
    ${table('Not applicable', ['Why', 'Requirements'], rows)}
  </details>`
}
