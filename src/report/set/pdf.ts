import { NO_CERTIFICATION } from '../caveats.js'
import { Paper } from '../pdf-paper.js'
import { sourcesSection } from '../pdf-sources.js'
import { VERDICT_SYMBOLS, VERDICT_WORDS } from '../words.js'
import type { SetEvidence, SetSign } from './evidence.js'
import { inspectionOf } from './inspection.js'
import { inspectionSections } from './inspection-pdf.js'
import { SHEET_NAME } from './inspection-words.js'
import { makersOf, mergedReports } from './merged.js'
import { signPart } from './pdf-sign.js'
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

const SIGNS = 'The signs'

/**
 * A whole submittal on paper: cover, schedule, what is wrong with the set, each sign on sheets of its own, the inspection sheet, caveats
 * and the digest of the history. Tagged, with bookmarks for each sign. The same evidence gives the same bytes.
 */
export function setPdf(evidence: SetEvidence): Buffer {
  const { id, signs } = evidence
  const title = nameOf(evidence)
  const paper = new Paper(title, `Submittal ${id}. ${NO_CERTIFICATION}`)
  const shared = sharedCaveats(signs)
  cover(paper, evidence, title)
  schedule(paper, signs)
  aboutTheSet(paper, evidence)
  paper.heading(2, 'Before you rely on these reports')
  paper.list(shared.map((text) => ({ text })))
  for (const [i, sign] of signs.entries())
    paper.part({ name: signHeading(sign), head: markOf(sign), under: SIGNS, place: placeName(i) }, () =>
      signPart(paper, sign, shared),
    )
  paper.startSheet(SHEET_NAME)
  paper.heading(2, SHEET_NAME)
  paper.lower(() => inspectionSections(paper, inspectionOf(signs)))
  paper.startSheet('')
  sourcesSection(paper, mergedReports(signs))
  identity(paper, evidence)
  return paper.finish()
}

const placeName = (index: number): string => `sign-${index + 1}`

function signHeading(sign: SetSign): string {
  const { report } = sign
  return `${markOf(sign)}: ${report ? VERDICT_WORDS[report.verdict] : 'No report'}`
}

function cover(paper: Paper, evidence: SetEvidence, title: string): void {
  const { signs, state, standards, part } = evidence
  const verdict = setVerdict(evidence)
  paper.heading(1, title)
  paper.paragraph('Submittal of tactile signs')
  paper.heading(2, 'Verdict of the set')
  paper.paragraph(countWords(setCounts(signs)), `${VERDICT_SYMBOLS[verdict]} ${VERDICT_WORDS[verdict]}. `)
  if (part) paper.paragraph(partWords(part, signs))
  if (state !== 'done') paper.paragraph(STATE_WORDS[state], 'Checking: ')
  const waived = waivedIn(signs)
  if (waived > 0) paper.paragraph(`${waived}. They count as they were found.`, 'Findings that were waived: ')
  paper.paragraph(datesOf(evidence))
  const held = standardsHeld(signs)
  if (held.length === 0) return paper.paragraph(standards.join(', '), 'To be held against: ')
  paper.table(
    [
      { head: 'Standard', share: 0.46 },
      { head: 'Name and revision of our table', share: 0.24 },
      { head: 'Signs', share: 0.3 },
    ],
    held.map(({ standard, counts }) => [
      standard.title,
      `${standard.id}, revision ${standard.revision}`,
      countWords(counts),
    ]),
  )
}

function schedule(paper: Paper, signs: readonly SetSign[]): void {
  paper.heading(2, 'Schedule')
  if (signs.length === 0) return paper.paragraph('There is no sign in it.')
  paper.table(
    [
      { head: 'Mark', share: 0.22 },
      { head: 'Place', share: 0.28 },
      { head: 'Verdict', share: 0.17 },
      { head: 'Fails', share: 0.08 },
      { head: 'Undecided', share: 0.14 },
      { head: 'Waived', share: 0.11 },
    ],
    signs.map((sign, i) => {
      const { report } = sign
      const { fails, open, waived } = tally(sign)
      const counts = report ? [fails, open, waived].map(String) : ['–', '–', '–']
      return [{ text: markOf(sign), to: placeName(i) }, placeOf(sign) || '–', verdictOf(sign), ...counts]
    }),
  )
  paper.paragraph(COUNTED)
}

function aboutTheSet(paper: Paper, evidence: SetEvidence): void {
  const { setFindings, intakeProblems } = evidence
  paper.heading(2, 'The set as a whole')
  paper.paragraph(comparedWords(evidence))
  if (setFindings.length > 0)
    paper.list(
      setFindings.map((finding) => ({ label: `${FINDING_KINDS[finding.kind]}:`, text: findingWords(finding) })),
    )
  paper.heading(2, 'What could not be used of the upload')
  if (intakeProblems.length === 0) return paper.paragraph('Everything was used.')
  paper.paragraph(INTAKE_PROBLEMS_ARE)
  paper.list(intakeProblems.map((problem) => ({ label: `${problemPlace(problem)}:`, text: problem.detail })))
}

function identity(paper: Paper, evidence: SetEvidence): void {
  const { id, signs, history } = evidence
  const held = standardsHeld(signs)
  paper.heading(2, 'Identity of this evidence')
  paper.paragraph(id, 'Submittal: ')
  for (const { standard } of held) paper.paragraph(standard.digest, `${standard.id}, revision ${standard.revision}: `)
  for (const line of makersOf(signs)) paper.paragraph(line, 'Made by: ')
  if (history === null) return
  paper.heading(2, 'Digest of the history')
  paper.paragraph(historyWords(history))
  paper.paragraph(history.head)
}
