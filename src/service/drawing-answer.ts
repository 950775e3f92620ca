import { z } from 'zod'
import type { Translator } from '../braille/translator.js'
import { check, type CheckInput } from '../check.js'
import { cannotSatisfy } from '../make/draw/cannot.js'
import { draw } from '../make/draw/draw.js'
import type { Exclusion } from '../refusal.js'
import { reportJson } from '../report/json.js'
import { Report } from '../report/schema.js'
import { SignDescription } from '../sign/description.js'
import { findStandards } from '../standards/catalogue.js'
import type { DrawingTaskInput } from './drawing-request.js'

/** A drawing that was held against the standards before it is handed out: the check reads the very file. */

export const DRAWING_TYPES = ['application/json', 'image/svg+xml'] as const
export type DrawingType = (typeof DRAWING_TYPES)[number]

export const DrawingAnswer = z
  .strictObject({
    drawing: z.string().describe('The SVG document, at true scale.'),
    sign: SignDescription.describe('What belongs to the drawing and no drawing shows: send both to a check.'),
    report: Report.describe('The check of this drawing with this description.'),
  })
  .meta({ id: 'DrawingAnswer', description: 'A drawing that passes its own check at the drawing stage.' })

export interface CheckedDrawing {
  drawing: string
  sign: SignDescription
  report: Report
}

/** @throws {Refusal} `cannot-satisfy` when the drawing does not pass at the drawing stage; and those of `draw`. */
export function drawChecked(
  { standards, order, leaveToPerson }: DrawingTaskInput,
  translator: Translator,
): CheckedDrawing {
  const { drawing, sign, opposites } = draw(order, findStandards(standards), translator)
  const report = check(asChecked(drawing, sign, standards), translator)
  const verdict = report.stages.drawing
  if (verdict === 'pass' || verdict === 'not-applicable') return { drawing, sign, report }
  const open = report.findings.filter(
    ({ force, stage, verdict: own }) =>
      force === 'shall' && stage === 'drawing' && (own === 'fail' || own === 'undetermined'),
  )
  if (leaveToPerson && open.every(({ reason }) => reason === 'needs-judgement')) return { drawing, sign, report }
  const found = open.map(({ quantity, requirement, message }): Exclusion => ({
    quantity,
    requirements: [requirement],
    text: message,
  }))
  throw cannotSatisfy('No drawing was found of which all that the standards ask can be told to pass.', [
    ...opposites,
    ...found,
  ])
}

/** The question that a client asks who sends the answer back to be checked. */
const asChecked = (drawing: string, sign: SignDescription, standards: string[]): CheckInput => ({
  drawing: new TextEncoder().encode(drawing),
  sign,
  standards,
  options: {
    use: sign.use,
    ...(sign.properNames && { properNames: sign.properNames }),
    decisionRule: 'simple',
    unitSystem: 'printed',
    language: 'en',
  },
})

export function drawingAnswer(input: DrawingTaskInput, type: DrawingType, translator: Translator): string {
  const { drawing, sign, report } = drawChecked(input, translator)
  if (type === 'image/svg+xml') return drawing
  return `${JSON.stringify({ drawing, sign }).slice(0, -1)},"report":${reportJson(report).toString('utf8')}}`
}
