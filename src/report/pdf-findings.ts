import { standardOfRequirement } from '../standards/requirement-id.js'
import { evidenceWords } from './evidence.js'
import type { Finding } from './finding-schema.js'
import { coordinate } from './markup.js'
import { findingsOf, type Numbered } from './numbering.js'
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

/** A clause with its standard before it where a sign is held against several. */
const clauseOf = ({ standards }: Report, { requirement, clause }: Pick<Finding, 'requirement' | 'clause'>): string =>
  standards.length === 1 ? clause : `${standardOfRequirement(requirement)} ${clause}`

const named = (report: Report, finding: Finding): string => {
  const force = finding.force === 'shall' ? '' : ` (${FORCE_WORDS[finding.force]})`
  return `${clauseOf(report, finding)} ${finding.title}${force}`
}

/** One failure: what was found, what is allowed, by how much, what to change it to, where. */
export function failure(paper: Paper, report: Report, { number, finding }: Numbered): void {
  const { message, limit, margin, remedy, where, whereTotal, measured, quantity, asks, requirement, citation } = finding
  paper.heading(3, `${number}. ${named(report, finding)}: ${finding.force === 'shall' ? 'fails' : 'not met'}`)
  paper.paragraph(message, 'Found: ')
  paper.paragraph(limit.printed, 'Allowed: ')
  if (margin !== null) paper.paragraph(`${coordinate(margin)} ${limit.unit}`, 'Margin: ')
  if (remedy) paper.paragraph(remedy.text, 'Change: ')
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

export function undecidedSection(paper: Paper, report: Report, undecided: readonly Numbered[]): void {
  paper.heading(2, 'What is undecided')
  if (undecided.length === 0) return paper.paragraph('Nothing is left undecided.')
  paper.list(
    undecided.map(({ number, finding }) => ({
      label: `? ${number}. ${named(report, finding)}:`,
      text: `${finding.reason ? REASON_WORDS[finding.reason] : ''}. ${finding.message}`,
    })),
  )
}

/** What a gauge or a tape would decide, as a form to fill in by hand. */
export function toMeasureSection(paper: Paper, report: Report): void {
  const { toMeasure } = report
  paper.heading(2, 'To be measured')
  if (toMeasure.length === 0) return paper.paragraph('Nothing is left for a gauge or a tape.')
  paper.table(
    [
      { head: 'Requirement', share: 0.26 },
      { head: 'How to measure it', share: 0.34 },
      { head: 'Allowed', share: 0.22 },
      { head: 'Found', share: 0.18 },
    ],
    toMeasure.map((item) => [`${clauseOf(report, item)} ${item.title}`, item.how, item.limit, '']),
    WRITING_HEIGHT,
  )
  for (const label of ['Measured with: ', 'By: ', 'On: ']) paper.paragraph(BLANK, label)
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
