import { waiverEntries } from '../../report/html-overlay.js'
import { heading, numberMark, type OnPage } from '../../report/html-place.js'
import { restSection } from '../../report/html-rest.js'
import { code, isolated, markup, NOTHING, type Html } from '../../report/html-tag.js'
import { wrongSection } from '../../report/html-wrong.js'
import { measuredInShort } from '../../report/in-short.js'
import { clauseOf, numbered, type Numbered } from '../../report/numbering.js'
import { NO_OVERLAY, waiversFor } from '../../report/overlay.js'
import type { Report } from '../../report/schema.js'
import { CONFIDENCE_WORDS } from '../../report/sources.js'
import { FORCE_WORDS, REASON_WORDS, STAGE_WORDS } from '../../report/words.js'
import { placesOf } from './drawing.js'
import type { ShownSign } from './gather.js'
import { wayToDecide } from './way-to-decide.js'
import { waiving, type Refilled } from './waive-form.js'

/** The findings of a sign in four groups: what is wrong, what is undecided, what passed, what does not apply. */

/** @param refilled a form that could not be taken, as it was filled in */
export function findingGroups(shown: ShownSign, report: Report, refilled?: Refilled): Html {
  const { failing, undecided } = numbered(report)
  const isEarlier = shown.earlier !== undefined
  const places = placesOf(report)
  const on: OnPage = {
    overlay: isEarlier ? NO_OVERLAY : shown.sign,
    level: 2,
    prefix: '',
    clause: (finding) => clauseOf(report, finding),
    below: (item) =>
      markup`<div class="below">
        ${placeLink(item, places)} ${citation(item)} ${isEarlier ? NOTHING : waiving(shown, item, refilled)}
      </div>`,
  }
  return markup`<section aria-labelledby="wrong"><h2 id="wrong" tabindex="-1">What is wrong (${counts(failing)})</h2>${wrongSection(failing, on)}</section>
    <section aria-labelledby="undecided-heading">
      <h2 id="undecided-heading">What is undecided (${counts(undecided)})</h2>
      ${undecided.length === 0 ? markup`<p>Nothing is left undecided.</p>` : undecided.map((item) => open(item, report, on, isEarlier))}
    </section>
    <section aria-labelledby="rest-heading" id="rest">
      <h2 id="rest-heading">What passed and what does not apply</h2>
      ${restSection(report.findings)}
    </section>`
}

/** So that the numbers here and those of the verdict, which leave advice out, are seen to agree. */
function counts(items: readonly Numbered[]): string {
  const advised = items.filter(({ finding }) => finding.force !== 'shall').length
  return advised === 0 ? `${items.length}` : `${items.length}, of these ${advised} advice`
}

function open({ number, finding }: Numbered, report: Report, on: OnPage, isEarlier: boolean): Html {
  const { force, reason, measured, limit } = finding
  const weight = force === 'shall' ? '' : ` (${FORCE_WORDS[force]})`
  return markup`<article class="finding open${force === 'shall' ? '' : ' advice'}" id="finding-${number}">
    ${heading(
      on.level + 1,
      markup`${numberMark(number, true)} ${on.clause(finding)} ${finding.title}
        <span class="undetermined">? Undecided${weight}</span>`,
    )}
    <dl>
      <dt>Why</dt>
      <dd>${reason ? markup`<strong>${REASON_WORDS[reason]}</strong>. ` : NOTHING}${isolated(finding.message)}</dd>
      ${waiverEntries(waiversFor(on.overlay, finding))}
      <dt>Allowed</dt>
      <dd>${limit.printed}</dd>
      ${
        measured
          ? markup`<dt>Measured</dt>
              <dd>${isolated(measuredInShort(finding))}</dd>`
          : NOTHING
      }
      <dt>What decides it</dt>
      <dd>${wayToDecide(finding, report, isEarlier)}</dd>
      <dt>Requirement</dt>
      <dd>${code(finding.requirement)}, evidence: ${STAGE_WORDS[finding.stage].toLowerCase()}</dd>
    </dl>
    ${on.below?.({ number, finding }) ?? NOTHING}
  </article>`
}

function placeLink({ number }: Numbered, places: Map<number, string>): Html {
  const place = places.get(number)
  return place === undefined
    ? NOTHING
    : markup`<p><a href="#${place}">Show on the drawing<span class="hidden">: finding ${number}</span></a></p>`
}

function citation({ finding: { citation } }: Numbered): Html {
  const { document, clause, scopedBy, confidence, note } = citation
  const inForce = scopedBy === clause ? '' : `; in force by ${scopedBy}`
  const remark = note === null ? '' : ` ${note}`
  return markup`<p class="hint">
    Source: ${document}, ${clause}${inForce}; ${CONFIDENCE_WORDS[confidence]}.${remark}
  </p>`
}
