import { NO_CERTIFICATION } from './caveats.js'
import { numbered } from './numbering.js'
import { NO_OVERLAY, outdatedWords, type Overlay } from './overlay.js'
import { passedSection, toMeasureSection, undecidedSection, wrongSection } from './pdf-findings.js'
import { overlaySection } from './pdf-overlay.js'
import { Paper } from './pdf-paper.js'
import { assumed, figure, reading, verdict } from './pdf-sign.js'
import { sourcesSection } from './pdf-sources.js'
import type { Report } from './schema.js'
import { signName, VERDICT_WORDS } from './words.js'

/**
 * The report on paper, for a file or a wall: a tagged PDF with its language, title and bookmarks, and a form to fill in. The
 * same report gives the same bytes.
 * @param drawing as `reportSvg` makes it of the same report @param overlay what was laid over it, when it is kept
 */
export function reportPdf(report: Report, drawing: string, overlay: Overlay = NO_OVERLAY): Buffer {
  const { failing, undecided } = numbered(report)
  const name = signName(report)
  const paper = new Paper(`${name}: ${VERDICT_WORDS[report.verdict]}`, `Report ${report.id}. ${NO_CERTIFICATION}`)
  paper.heading(1, name)
  paper.paragraph('Report on a tactile sign')
  paper.heading(2, 'Verdict')
  const outdated = outdatedWords(overlay)
  if (outdated !== undefined) paper.paragraph(outdated, 'Out of date. ')
  verdict(paper, report)
  figure(paper, drawing, 'alone')
  wrongSection(paper, report, failing, overlay)
  undecidedSection(paper, report, undecided, overlay)
  overlaySection(paper, report, overlay)
  toMeasureSection(paper, report, overlay)
  passedSection(paper, report)
  reading(paper, report)
  assumed(paper, report)
  paper.heading(2, 'Before you rely on this report')
  paper.list(report.caveats.map((text) => ({ text })))
  sourcesSection(paper, report)
  identity(paper, report)
  return paper.finish()
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
