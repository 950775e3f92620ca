import type { OnPage } from './html-place.js'
import { restSection } from './html-rest.js'
import { table } from './html-table.js'
import { markup, NOTHING, type Html } from './html-tag.js'
import { undecidedTable } from './html-undecided.js'
import { wrongSection } from './html-wrong.js'
import { findingsOf, type Numbered, type Numbers } from './numbering.js'
import type { Report } from './schema.js'
import { VERDICT_SYMBOLS, VERDICT_WORDS, verdictSentence } from './words.js'

/** The parts of the page that take one standard after another, where a sign is held against several. */

type Standard = Report['standards'][number]

export const counts = ({ pass, fail, undetermined, notApplicable }: Report['summary']): string =>
  `${pass} passed, ${fail} failed, ${undetermined} undecided, ${notApplicable} not applicable`

/** The verdict and the counts of each. */
export const standardsTable = ({ standards }: Report): Html =>
  table(
    'The verdict for each standard',
    ['Standard', 'Verdict', 'Findings, advice included'],
    standards.map(
      ({ id, title, verdict, summary }) =>
        markup`<tr>
          <th scope="row"><a href="#standard-${id}">${title}</a></th>
          <td><span class="${verdict}">${VERDICT_SYMBOLS[verdict]} ${VERDICT_WORDS[verdict]}</span></td>
          <td>${counts(summary)}</td>
        </tr>`,
    ),
  )

const KINDS: Partial<Record<Standard['kind'], string>> = {
  guidance: ' It is guidance, which no law asks for by itself.',
  'reference-geometry': ' It gives sizes a name, which no code asks of a sign.',
}

/** All findings of one standard: what is wrong, what is undecided, what is left. */
export function standardSection(
  report: Report,
  { id, verdict, summary, kind, supersededBy }: Standard,
  numbers: Numbers,
  on: OnPage,
): Html {
  const findings = findingsOf(report, id)
  const own = (items: readonly Numbered[]) => items.filter(({ finding }) => findings.includes(finding))
  const [failing, undecided] = [own(numbers.failing), own(numbers.undecided)]
  const replaced = supersededBy === null ? '' : ` It is superseded by ${supersededBy}.`
  return markup`<p>
      <span class="${verdict}">${VERDICT_SYMBOLS[verdict]} ${VERDICT_WORDS[verdict]}</span>
      ${verdictSentence({ verdict, findings })}${KINDS[kind] ?? ''}${replaced}
    </p>
    <p>Findings, advice included: ${counts(summary)}.</p>
    ${wrongSection(failing, on)}
    ${undecided.length === 0 ? NOTHING : undecidedTable(report, undecided, `Undecided by ${id}, and what would decide it`, on)}
    ${restSection(findings)}`
}
