import { evidenceWords } from './evidence.js'
import type { Finding } from './finding-schema.js'
import { marginInShort, measuredInShort } from './in-short.js'
import { clauseOf, findingsOf, type Numbered } from './numbering.js'
import { byWeight, isWaived, STANDING_WORDS, waiversFor, waiverWords, type Overlay } from './overlay.js'
import { waiverLines } from './pdf-overlay.js'
import type { Paper } from './pdf-paper.js'
import { placeWords } from './place-words.js'
import type { Report } from './schema.js'
import { lowerFirst } from './sentences.js'
import { statisticsWords } from './statistics-words.js'
import { FORCE_WORDS, REASON_WORDS } from './words.js'

/** The parts of the printed report that list findings. */

const MOST_PLACES_TOLD = 10
/** Points: room to write a value by hand. */
const WRITING_HEIGHT = 34
const BLANK = '_'.repeat(40)

const named = (report: Report, finding: Finding): string => {
  const force = finding.force === 'shall' ? '' : ` (${FORCE_WORDS[finding.force]})`
  return `${clauseOf(report, finding)} ${finding.title}${force}`
}

/** What is wrong, first in a table, then each with its evidence, its places and whoever lets it stand. */
export function wrongSection(paper: Paper, report: Report, failing: readonly Numbered[], overlay: Overlay): void {
  paper.heading(2, 'What is wrong')
  if (failing.length === 0) return paper.paragraph('Nothing that was looked at fails.')
  paper.table(
    [
      { head: 'Requirement', share: 0.24 },
      { head: 'Allowed', share: 0.2 },
      { head: 'Measured', share: 0.17 },
      { head: 'Margin', share: 0.12 },
      { head: 'Change', share: 0.27 },
    ],
    failing.map(({ number, finding }) => [
      `${number}. ${named(report, finding)}${isWaived(overlay, finding) ? ' (waived)' : ''}`,
      finding.limit.printed,
      measuredInShort(finding),
      marginInShort(finding),
      finding.remedy?.text ?? '–',
    ]),
  )
  for (const item of failing) failure(paper, report, item, overlay)
}

/** One failure: what was found, how it was got, what is asked, where, and the waivers of it. */
function failure(paper: Paper, report: Report, { number, finding }: Numbered, overlay: Overlay): void {
  const { message, where, whereTotal, measured, quantity, asks, requirement, citation } = finding
  paper.heading(3, `${number}. ${named(report, finding)}: ${finding.force === 'shall' ? 'fails' : 'not met'}`)
  paper.paragraph(message, 'Found: ')
  waiverLines(paper, waiversFor(overlay, finding))
  if (measured)
    paper.paragraph(
      `${evidenceWords(measured, quantity)}. ${measured.method} ${statisticsWords(measured, quantity)}`.trim(),
      'How it was got: ',
    )
  paper.paragraph(`${asks} ${requirement}; ${citation.document}, ${citation.clause}.`, 'What is asked: ')
  if (where.length === 0) return
  const told = where.slice(0, MOST_PLACES_TOLD).map((place) => ({ label: 'Where:', text: placeWords(place) }))
  const more = whereTotal - told.length
  paper.list(more > 0 ? [...told, { label: 'Where:', text: `${more} more` }] : told)
}

/** Each undecided finding with its reason, and the waivers of it. */
export function undecidedSection(paper: Paper, report: Report, undecided: readonly Numbered[], overlay: Overlay): void {
  paper.heading(2, 'What is undecided')
  if (undecided.length === 0) return paper.paragraph('Nothing is left undecided.')
  paper.list(
    undecided.map(({ number, finding }) => ({
      label: `? ${number}. ${named(report, finding)}:`,
      text: [
        `${finding.reason ? REASON_WORDS[finding.reason] : ''}. ${finding.message}`,
        ...waiversFor(overlay, finding).map((waiver) => `${STANDING_WORDS[waiver.standing]}: ${waiverWords(waiver)}`),
      ].join(' '),
    })),
  )
}

/**
 * The same in short, for a set: what only lacks a fact is named, since its message says no more; whatever else is open, or was waived,
 * keeps a line of its own.
 */
export function undecidedInShort(paper: Paper, report: Report, undecided: readonly Numbered[], overlay: Overlay): void {
  const { plain, rest } = byWeight(undecided, overlay)
  if (undecided.length === 0 || rest.length > 0) undecidedSection(paper, report, rest, overlay)
  else paper.heading(2, 'What is undecided')
  if (plain.length > 0)
    paper.paragraph(
      `${plain.map(({ number, finding }) => `? ${number}. ${named(report, finding)}`).join('; ')}.`,
      `Not given, ${plain.length}: `,
    )
}

/** What a gauge or a tape would decide, as a form to fill in by hand. */
export function toMeasureSection(paper: Paper, report: Report, overlay: Overlay): void {
  const { toMeasure, findings } = report
  const waived = new Set(findings.filter((one) => isWaived(overlay, one)).map(({ requirement }) => requirement))
  paper.heading(2, 'To be measured')
  if (toMeasure.length === 0) return paper.paragraph('Nothing is left for a gauge or a tape.')
  paper.table(
    [
      { head: 'Requirement', share: 0.26 },
      { head: 'How to measure it', share: 0.34 },
      { head: 'Allowed', share: 0.22 },
      { head: 'Found', share: 0.18 },
    ],
    toMeasure.map((item) => [
      `${clauseOf(report, item)} ${item.title}${waived.has(item.requirement) ? ' (waived)' : ''}`,
      item.how,
      item.limit,
      '',
    ]),
    WRITING_HEIGHT,
  )
  for (const label of ['Measured with: ', 'By: ', 'On: ']) paper.paragraph(BLANK, label)
}

/** What passed in short: the clauses, and how many do not apply. */
export function passedInShort(paper: Paper, report: Report): void {
  const of = (verdict: Finding['verdict']) => report.findings.filter((finding) => finding.verdict === verdict)
  const [passed, outside] = [of('pass'), of('not-applicable')]
  paper.heading(2, 'What passed')
  if (passed.length === 0) paper.paragraph('Nothing passed.')
  else paper.paragraph(`${passed.map((finding) => named(report, finding)).join('; ')}.`, `✓ Passed, ${passed.length}: `)
  paper.paragraph(`${outside.length}.`, 'Do not apply to this sign: ')
}

/** What passed, with its evidence, and what does not apply, in short. */
export function passedSection(paper: Paper, report: Report): void {
  paper.heading(2, 'What passed and what does not apply')
  for (const { id, title } of report.standards) {
    if (report.standards.length > 1) paper.heading(3, title)
    const findings = findingsOf(report, id)
    const passed = findings.filter(({ verdict }) => verdict === 'pass')
    const outside = findings.filter(({ verdict }) => verdict === 'not-applicable')
    if (passed.length === 0) paper.paragraph('Nothing passed.')
    else
      paper.list(
        passed.map((finding) => ({
          label: `✓ ${named(report, finding)}:`,
          text: finding.measured
            ? `${lowerFirst(evidenceWords(finding.measured, finding.quantity))}.`
            : finding.message,
        })),
      )
    if (outside.length > 0)
      paper.paragraph(`${outside.map((finding) => named(report, finding)).join('; ')}.`, 'Not applicable: ')
  }
}
