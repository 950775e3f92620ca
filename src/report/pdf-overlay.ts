import {
  idleWaivers,
  isBare,
  readingsWords,
  STANDING_WORDS,
  timeWords,
  waiverTarget,
  waiverWords,
  WAIVERS_CHANGE_NOTHING,
  type Overlay,
} from './overlay.js'
import type { Paper } from './pdf-paper.js'
import type { Report } from './schema.js'

/** The parts of the printed report that show what people laid over it. */

/** Waivers under the finding that they are for. */
export function waiverLines(paper: Paper, waivers: Overlay['waivers']): void {
  for (const waiver of waivers) paper.paragraph(waiverWords(waiver), `${STANDING_WORDS[waiver.standing]}: `)
}

/** Notes, readings that were added, and waivers that hold nothing. Nothing at all where nothing was laid over the report. */
export function overlaySection(paper: Paper, report: Pick<Report, 'findings'>, overlay: Overlay): void {
  if (isBare(overlay)) return
  const idle = idleWaivers(overlay)
  const { notes, measurements } = overlay
  paper.heading(2, 'Waivers, notes and added readings')
  paper.paragraph(WAIVERS_CHANGE_NOTHING)
  if (idle.length > 0)
    paper.list(
      idle.map((waiver) => ({
        label: `${STANDING_WORDS[waiver.standing]}:`,
        text: `${waiverTarget(report, waiver)}. ${waiverWords(waiver)}`,
      })),
    )
  if (measurements.length > 0)
    paper.list(measurements.map((one) => ({ label: `Readings of ${one.quantity}:`, text: readingsWords(one) })))
  if (notes.length > 0)
    paper.list(notes.map(({ text, author, at }) => ({ label: 'Note:', text: `${text} (${author}, ${timeWords(at)})` })))
}
