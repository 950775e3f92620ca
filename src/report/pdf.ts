import type { Sign } from '../sign/sign.js'
import { NO_CERTIFICATION } from './caveats.js'
import type { ReportStage } from './finding-schema.js'
import { counts } from './html-standards.js'
import { numbered } from './numbering.js'
import { paintMarkup } from './pdf-figure.js'
import { failure, passedSection, toMeasureSection, undecidedSection } from './pdf-findings.js'
import { Paper } from './pdf-paper.js'
import { placeWords } from './place-words.js'
import type { Report } from './schema.js'
import { sourcesOf } from './sources.js'
import { description, markedSign } from './svg.js'
import { signName, STAGE_WORDS, VERDICT_SYMBOLS, VERDICT_WORDS, verdictSentence } from './words.js'

/** Points to the millimetre. */
const POINTS = 72 / 25.4
/** The picture of a sign is no higher than this, so that what is wrong begins beside it. */
const MOST_PICTURE = 345
/** And stands on one sheet with its heading and the line under it. */
const WORDS_ROUND_PICTURE = 90

/**
 * The report on paper, for a file or a wall: a tagged PDF with its language, title and bookmarks, and a form to fill in. The
 * same report gives the same bytes.
 */
export function reportPdf(report: Report, sign: Sign): Buffer {
  const { failing, undecided } = numbered(report)
  const name = signName(report)
  const paper = new Paper(`${name}: ${VERDICT_WORDS[report.verdict]}`, `Report ${report.id}. ${NO_CERTIFICATION}`)
  paper.heading(1, name)
  paper.paragraph('Report on a tactile sign')
  paper.heading(2, 'Verdict')
  verdict(paper, report)
  figure(paper, report, sign)
  paper.heading(2, 'What is wrong')
  if (failing.length === 0) paper.paragraph('Nothing that was looked at fails.')
  for (const item of failing) failure(paper, report, item)
  undecidedSection(paper, report, undecided)
  toMeasureSection(paper, report)
  passedSection(paper, report)
  reading(paper, report)
  assumed(paper, report)
  paper.heading(2, 'Before you rely on this report')
  paper.list(report.caveats.map((text) => ({ text })))
  sources(paper, report)
  identity(paper, report)
  return paper.finish()
}

function verdict(paper: Paper, report: Report): void {
  const words = (found: Report['verdict']) => `${VERDICT_SYMBOLS[found]} ${VERDICT_WORDS[found]}`
  paper.paragraph(verdictSentence(report), `${words(report.verdict)}. `)
  if (report.mark !== null) paper.paragraph(report.mark, 'Mark of the sign: ')
  paper.paragraph(report.use, 'Use of the sign: ')
  paper.paragraph(`${counts(report.summary)}, advice included.`, 'Findings: ')
  paper.heading(3, 'The verdict for each stage of evidence')
  const stages: ReportStage[] = ['drawing', 'product', 'site']
  paper.table(
    [
      { head: 'Stage', share: 0.5 },
      { head: 'Verdict', share: 0.5 },
    ],
    stages.map((stage) => [STAGE_WORDS[stage], words(report.stages[stage])]),
  )
  paper.heading(3, 'The verdict for each standard')
  paper.table(
    [
      { head: 'Standard', share: 0.5 },
      { head: 'Revision of our table', share: 0.15 },
      { head: 'Verdict', share: 0.35 },
    ],
    report.standards.map((standard) => [standard.title, String(standard.revision), words(standard.verdict)]),
  )
}

function figure(paper: Paper, report: Report, sign: Sign): void {
  const picture = markedSign(report, sign)
  const heading = () => paper.heading(2, 'The sign with its numbers')
  if (!picture) {
    heading()
    return paper.paragraph('Nothing on this sign has a known place, so there is nothing to draw.')
  }
  const { box, markup } = picture
  const scale = Math.min(POINTS, paper.room.width / box.width, MOST_PICTURE / box.height)
  paper.keep(box.height * scale + WORDS_ROUND_PICTURE)
  heading()
  const { failing, undecided } = numbered(report)
  paper.figure(box.height * scale, description(report, failing, undecided), (doc, x, y) => {
    doc.save().translate(x, y).scale(scale).translate(-box.x, -box.y)
    paintMarkup(doc, markup)
    doc.restore()
  })
  const size = scale === POINTS ? 'At true scale where the sheet is printed at full size.' : 'Not at true scale.'
  paper.paragraph(
    `Drawn from what was measured. Solid frames fail; dashed frames with a question mark are undecided. ${size}`,
  )
}

function reading(paper: Paper, { reading }: Report): void {
  paper.heading(2, 'What the sign reads')
  const lettering = reading.lettering.map(({ text }) => ({ label: 'Lettering:', text: text ?? 'could not be read' }))
  const braille = reading.braille.flatMap(({ lines }) =>
    lines.map(({ cells, text }) => ({
      label: 'Braille:',
      text: cells === null ? 'could not be read' : `${cells}${text === null ? '' : `, in print: ${text}`}`,
    })),
  )
  const all = [...lettering, ...braille]
  if (all.length === 0) paper.paragraph('No lettering and no braille.')
  else paper.list(all)
}

function assumed(paper: Paper, { assumptions, ignored, unread }: Report): void {
  paper.heading(2, 'What was assumed')
  if (assumptions.length === 0) paper.paragraph('Nothing.')
  else paper.list(assumptions.map(({ about, text }) => ({ label: `${about}:`, text })))
  paper.heading(2, 'What was not looked at or not understood')
  const left = [
    ...ignored.map(({ source, why }) => `Line ${source.line}, column ${source.column}: ${why}`),
    ...unread.map(({ where, why }) => `${placeWords(where)}: ${why}`),
  ]
  if (left.length === 0) paper.paragraph('Nothing in the drawing was left out.')
  else paper.list(left.map((text) => ({ text })))
}

function sources(paper: Paper, report: Report): void {
  const { documents, notes } = sourcesOf(report)
  paper.heading(2, 'Sources')
  if (documents.length === 0) return paper.paragraph('No clause applied.')
  paper.list(
    documents.map(({ document, where, clauses, confidence }) => ({
      label: `${document}, ${confidence}:`,
      text: `clauses ${clauses.join(', ')}.${where === '' ? '' : ` Published at ${where}`}`,
    })),
  )
  if (notes.length > 0) paper.list(notes.map((text) => ({ text })))
}

function identity(paper: Paper, { id, engine, standards, decisionRule, unitSystem }: Report): void {
  const { braille } = engine
  paper.heading(2, 'Identity of this report')
  paper.paragraph(id, 'Report: ')
  for (const standard of standards) paper.paragraph(standard.digest, `${standard.id}, revision ${standard.revision}: `)
  paper.paragraph(`version ${engine.version}`, 'Service: ')
  paper.paragraph(`${braille.name} ${braille.version}, tables ${Object.values(braille.tables).join(', ')}`, 'Braille: ')
  paper.paragraph(`${decisionRule}; unit system: ${unitSystem}`, 'Decision rule: ')
}
