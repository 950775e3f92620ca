import { NO_CERTIFICATION, GENERAL_CAVEATS } from '../caveats.js'
import { markup } from '../html-tag.js'
import { Paper } from '../pdf-paper.js'
import type { SetEvidence } from './evidence.js'
import { page } from './html-page.js'
import { inspectionOf } from './inspection.js'
import { inspectionMarkup } from './inspection-html.js'
import { inspectionSections } from './inspection-pdf.js'
import { SHEET_NAME } from './inspection-words.js'
import { datesOf, nameOf } from './words.js'

/**
 * The inspection sheet of a set, or of one sign of it, on paper: what gauge, tape and eye must decide, place by place in the order of one
 * walk, with room to write. The same evidence gives the same bytes.
 * @param signs of the evidence, those to go to
 */
export function inspectionPdf(evidence: SetEvidence, signs = evidence.signs): Buffer {
  const title = `${SHEET_NAME}: ${nameOf(evidence)}`
  const paper = new Paper(title, `Submittal ${evidence.id}. ${NO_CERTIFICATION}`)
  paper.heading(1, title)
  paper.paragraph(datesOf(evidence))
  paper.list(GENERAL_CAVEATS.map((text) => ({ text })))
  inspectionSections(paper, inspectionOf(signs))
  return paper.finish()
}

/** The same as a page to print, under the same policy as the page of the set. */
export function inspectionHtml(evidence: SetEvidence, signs = evidence.signs): string {
  const title = `${SHEET_NAME}: ${nameOf(evidence)}`
  return page({
    title,
    kind: `Submittal ${evidence.id}`,
    name: title,
    skip: { to: 'sheet', text: 'Skip to the sheet' },
    main: markup`<p>${datesOf(evidence)}</p>
      <ul>
        ${GENERAL_CAVEATS.map((text) => markup`<li>${text}</li>`)}
      </ul>
      <div class="sheet" id="sheet">${inspectionMarkup(inspectionOf(signs), 2)}</div>`,
    foot: NO_CERTIFICATION,
  })
}
