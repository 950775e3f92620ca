import { NO_CERTIFICATION } from '../caveats.js'
import { sourcesMarkup } from '../html-sources.js'
import { table } from '../html-table.js'
import { code, Html, isolated, markup, NOTHING } from '../html-tag.js'
import { VERDICT_SYMBOLS, VERDICT_WORDS } from '../words.js'
import type { SetEvidence, SetSign } from './evidence.js'
import { page } from './html-page.js'
import { signSection } from './html-sign.js'
import { inspectionOf } from './inspection.js'
import { inspectionMarkup } from './inspection-html.js'
import { SHEET_NAME } from './inspection-words.js'
import { makersOf, mergedReports } from './merged.js'
import { sharedCaveats } from './shared-caveats.js'
import { countWords, setCounts, setVerdict, standardsHeld, STATE_WORDS, tally, waivedIn } from './verdict.js'
import {
  comparedWords,
  COUNTED,
  datesOf,
  FINDING_KINDS,
  findingWords,
  historyWords,
  INTAKE_PROBLEMS_ARE,
  markOf,
  nameOf,
  partWords,
  placeOf,
  problemPlace,
  verdictOf,
} from './words.js'

/**
 * A whole submittal as one accessible page: no script, no request to anywhere, one style sheet whose hash is `SET_STYLE_HASH`.
 * Everything that came from a client is escaped. The same evidence gives the same bytes.
 */
export function setHtml(evidence: SetEvidence): string {
  const { signs } = evidence
  const shared = sharedCaveats(signs)
  const verdict = VERDICT_WORDS[setVerdict(evidence)]
  const name = nameOf(evidence)
  return page({
    title: `${name}: ${verdict} (submittal ${evidence.id})`,
    kind: 'Submittal of tactile signs',
    name,
    skip: { to: 'schedule', text: 'Skip to the schedule' },
    main: markup`${section('verdict', 'Verdict of the set', cover(evidence))}
      ${section('schedule', 'Schedule', schedule(signs))}
      ${section('set-findings', 'The set as a whole', setFindings(evidence))}
      ${section('intake', 'What could not be used of the upload', intake(evidence))}
      ${section('caveats', 'Before you rely on these reports', list(shared))}
      ${signs.map((sign, i) => signSection(sign, anchorOf(i), shared))}
      <section class="inspection" id="inspection" aria-labelledby="inspection-heading">
        <h2 id="inspection-heading">${SHEET_NAME}</h2>
        ${inspectionMarkup(inspectionOf(signs), 3)}
      </section>
      ${section('sources', 'Sources', sourcesMarkup(mergedReports(signs)))}
      ${section('identity', 'Identity of this evidence', identity(evidence))}
      ${evidence.history ? section('history', 'Digest of the history', history(evidence.history)) : NOTHING}`,
    foot: NO_CERTIFICATION,
  })
}

const anchorOf = (index: number): string => `sign-${index + 1}`

const section = (id: string, heading: string, content: Html): Html =>
  markup`<section id="${id}" aria-labelledby="${id}-heading">
    <h2 id="${id}-heading">${heading}</h2>
    ${content}
  </section>`

const list = (items: readonly string[]): Html =>
  markup`<ul>
    ${items.map((item) => markup`<li>${isolated(item)}</li>`)}
  </ul>`

function cover(evidence: SetEvidence): Html {
  const { signs, state, standards, part } = evidence
  const verdict = setVerdict(evidence)
  const waived = waivedIn(signs)
  const rows = standardsHeld(signs).map(
    ({ standard, counts }) =>
      markup`<tr>
        <th scope="row">${standard.title}</th>
        <td>${standard.id}, revision ${standard.revision}</td>
        <td>${countWords(counts)}</td>
      </tr>`,
  )
  return markup`<div class="verdict ${verdict}">
      <strong>${VERDICT_SYMBOLS[verdict]} ${VERDICT_WORDS[verdict]}</strong>
      <p>${countWords(setCounts(signs))}</p>
    </div>
    ${part ? markup`<p>${partWords(part, signs)}</p>` : NOTHING}
    ${state === 'done' ? NOTHING : markup`<p>Checking: ${STATE_WORDS[state]}</p>`}
    ${waived === 0 ? NOTHING : markup`<p>Findings that were waived: ${waived}. They count as they were found.</p>`}
    <p>${datesOf(evidence)}</p>
    ${
      rows.length === 0
        ? markup`<p>To be held against: ${isolated(standards.join(', '))}.</p>`
        : table('The standards', ['Standard', 'Name and revision of our table', 'Signs'], rows)
    }`
}

function schedule(signs: readonly SetSign[]): Html {
  if (signs.length === 0) return markup`<p>There is no sign in it.</p>`
  const rows = signs.map((sign, i) => {
    const { report } = sign
    const { fails, open, waived } = tally(sign)
    const verdict = report ? markup`<span class="${report.verdict}">${verdictOf(sign)}</span>` : verdictOf(sign)
    return markup`<tr>
      <th scope="row"><a href="#${anchorOf(i)}">${isolated(markOf(sign))}</a></th>
      <td>${isolated(placeOf(sign) || '–')}</td>
      <td>${verdict}</td>
      ${(report ? [fails, open, waived] : ['–', '–', '–']).map((count) => markup`<td>${count}</td>`)}
    </tr>`
  })
  return markup`${table('The signs with their verdicts', ['Mark', 'Place', 'Verdict', 'Fails', 'Undecided', 'Waived'], rows)}
    <p>${COUNTED}</p>`
}

function setFindings(evidence: SetEvidence): Html {
  const { setFindings } = evidence
  const words = markup`<p>${comparedWords(evidence)}</p>`
  if (setFindings.length === 0) return words
  return markup`${words}
    <ul>
      ${setFindings.map(
        (finding) =>
          markup`<li><strong>${FINDING_KINDS[finding.kind]}:</strong> ${isolated(findingWords(finding))}</li>`,
      )}
    </ul>`
}

function intake({ intakeProblems }: SetEvidence): Html {
  if (intakeProblems.length === 0) return markup`<p>Everything was used.</p>`
  return markup`<p>${INTAKE_PROBLEMS_ARE}</p>
    <ul>
      ${intakeProblems.map(
        (problem) => markup`<li><strong>${isolated(problemPlace(problem))}:</strong> ${isolated(problem.detail)}</li>`,
      )}
    </ul>`
}

function identity({ id, signs }: SetEvidence): Html {
  return markup`<dl>
    <dt>Submittal</dt>
    <dd>${code(id)}</dd>
    ${standardsHeld(signs).map(
      ({ standard }) =>
        markup`<dt>${standard.id}, revision ${standard.revision}</dt>
          <dd>${code(standard.digest)}</dd>`,
    )}
    ${makersOf(signs).map(
      (line) =>
        markup`<dt>Made by</dt>
          <dd>${line}</dd>`,
    )}
  </dl>`
}

const history = (kept: NonNullable<SetEvidence['history']>): Html =>
  markup`<p>${historyWords(kept)}</p>
    <p>${code(kept.head)}</p>`
