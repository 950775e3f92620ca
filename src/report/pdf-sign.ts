import type { ReportStage } from './finding-schema.js'
import { counts } from './html-standards.js'
import { paintMarkup, signIn } from './pdf-figure.js'
import type { Paper } from './pdf-paper.js'
import { placeWords } from './place-words.js'
import type { Report } from './schema.js'
import { STAGE_WORDS, VERDICT_SYMBOLS, VERDICT_WORDS, verdictSentence } from './words.js'

/** The parts of the printed report that tell of the sign itself: its verdict, its picture, what it reads, what was assumed. */

/** Points to the millimetre. */
const POINTS = 72 / 25.4
/** The picture of a sign is no higher than this, so that what is wrong begins beside it; in a set, so that a sheet holds most of a sign. */
const MOST_PICTURE = { alone: 345, 'in-set': 170 }
/** And stands on one sheet with its heading and the line under it. */
const WORDS_ROUND_PICTURE = 90

export function verdict(paper: Paper, report: Report): void {
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

/** The redrawn sign with its marks. @param drawing as `reportSvg` makes it */
export function figure(paper: Paper, drawing: string, place: keyof typeof MOST_PICTURE): void {
  const sign = signIn(drawing)
  const heading = () => paper.heading(2, 'The sign with its numbers')
  if (!sign) {
    heading()
    return paper.paragraph('Nothing on this sign has a known place, so there is nothing to draw.')
  }
  const { box, markup, description } = sign
  const scale = Math.min(POINTS, paper.room.width / box.width, MOST_PICTURE[place] / box.height)
  paper.keep(box.height * scale + WORDS_ROUND_PICTURE)
  heading()
  paper.figure(box.height * scale, description, (doc, x, y) => {
    doc.save().translate(x, y).scale(scale).translate(-box.x, -box.y)
    paintMarkup(doc, markup)
    doc.restore()
  })
  const size = scale === POINTS ? 'At true scale where the sheet is printed at full size.' : 'Not at true scale.'
  const drawn = place === 'alone' ? 'Drawn from what was measured. ' : ''
  paper.paragraph(`${drawn}Solid frames fail; dashed frames with a question mark are undecided. ${size}`)
}

export function reading(paper: Paper, { reading }: Report): void {
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

export function assumed(paper: Paper, report: Report): void {
  const { assumptions } = report
  paper.heading(2, 'What was assumed')
  if (assumptions.length === 0) paper.paragraph('Nothing.')
  else paper.list(assumptions.map(({ about, text }) => ({ label: `${about}:`, text })))
  paper.heading(2, 'What was not looked at or not understood')
  const left = leftOut(report)
  if (left.length === 0) paper.paragraph('Nothing in the drawing was left out.')
  else paper.list(left.map((text) => ({ text })))
}

const leftOut = ({ ignored, unread }: Report): string[] => [
  ...ignored.map(({ source, why }) => `Line ${source.line}, column ${source.column}: ${why}`),
  ...unread.map(({ where, why }) => `${placeWords(where)}: ${why}`),
]

/** The same in one list with caveats of this sign, and nothing at all where there is nothing to tell. */
export function assumedInShort(paper: Paper, report: Report, caveats: readonly string[]): void {
  const told = [
    ...report.assumptions.map(({ about, text }) => ({ label: `Assumed, ${about}:`, text })),
    ...leftOut(report).map((text) => ({ label: 'Not looked at or not understood:', text })),
    ...caveats.map((text) => ({ label: 'To bear in mind:', text })),
  ]
  if (told.length === 0) return
  paper.heading(2, 'What this rests on')
  paper.list(told)
}

/** What it reads, in a line each for touch and sight. */
export function readingInShort(paper: Paper, { reading }: Report): void {
  const unread = 'could not be read'
  const lettering = reading.lettering.map(({ text }) => text ?? unread)
  const braille = reading.braille.flatMap(({ lines }) =>
    lines.map(({ cells, text }) => (cells === null ? unread : `${cells}${text === null ? '' : ` (${text})`}`)),
  )
  paper.paragraph(lettering.length === 0 ? 'none' : lettering.join(' / '), 'Lettering: ')
  paper.paragraph(braille.length === 0 ? 'none' : braille.join(' / '), 'Braille: ')
}
