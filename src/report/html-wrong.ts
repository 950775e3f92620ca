import { evidenceWords } from './evidence.js'
import type { Finding } from './finding-schema.js'
import { waiverEntries } from './html-overlay.js'
import { heading, numberMark, type OnPage } from './html-place.js'
import { table } from './html-table.js'
import { code, isolated, markup, NOTHING, type Html } from './html-tag.js'
import { marginInShort, measuredInShort } from './in-short.js'
import type { Numbered } from './numbering.js'
import { isWaived, waiversFor } from './overlay.js'
import { placeWords } from './place-words.js'
import { statisticsWords } from './statistics-words.js'
import { FORCE_WORDS, STAGE_WORDS } from './words.js'

/** The part of the page that says what is wrong. */

const MOST_PLACES_TOLD = 10

/** Every failing finding: the clause, what was found, what is allowed, what to change it to, where, and who lets it stand. */
export function wrongSection(failing: readonly Numbered[], on: OnPage): Html {
  if (failing.length === 0) return markup`<p>Nothing that was looked at fails.</p>`
  return markup`${failing.map((item) => failure(item, on))}`
}

/** The same in one row each. @param caption tells this table from others on the page */
export function wrongTable(failing: readonly Numbered[], caption: string, on: OnPage): Html {
  const rows = failing.map(
    ({ number, finding }) =>
      markup`<tr>
        <th scope="row">
          <a href="#${on.prefix}finding-${number}">${number}. ${on.clause(finding)} ${finding.title}</a>
          ${isWaived(on.overlay, finding) ? '(waived)' : ''}
        </th>
        <td>${finding.limit.printed}</td>
        <td>${isolated(measuredInShort(finding))}</td>
        <td>${marginInShort(finding)}</td>
        <td>${finding.remedy ? isolated(finding.remedy.text) : '–'}</td>
      </tr>`,
  )
  return table(caption, ['Requirement', 'Allowed', 'Measured', 'Margin', 'Change'], rows)
}

function failure({ number, finding }: Numbered, on: OnPage): Html {
  const advice = finding.force !== 'shall'
  return markup`<article class="finding${advice ? ' advice' : ''}" id="${on.prefix}finding-${number}">
    ${heading(
      on.level + 1,
      markup`${numberMark(number, false)} ${on.clause(finding)} ${finding.title}
        <span class="fail">✗ ${advice ? `Not met (${FORCE_WORDS[finding.force]})` : 'Fails'}</span>`,
    )}
    <dl>
      <dt>Found</dt>
      <dd>${isolated(finding.message)}</dd>
      ${waiverEntries(waiversFor(on.overlay, finding))}
      <dt>Allowed</dt>
      <dd>${finding.limit.printed}</dd>
      ${
        finding.margin === null
          ? NOTHING
          : markup`<dt>Margin</dt>
              <dd>${marginInShort(finding)}</dd>`
      }
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
    ${on.below?.({ number, finding }) ?? NOTHING}
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

function readings({ measured, quantity }: Finding): Html {
  const words = measured ? statisticsWords(measured, quantity) : ''
  return words === ''
    ? NOTHING
    : markup`<dt>What the readings say</dt>
        <dd>${words}</dd>`
}
