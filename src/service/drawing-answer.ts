import type { Translator } from '../braille/translator.js'
import { check, type CheckInput } from '../check.js'
import { cannotSatisfy } from '../make/draw/cannot.js'
import { draw, LEADINGS, type Drawn } from '../make/draw/draw.js'
import type { Exclusion } from '../refusal.js'
import type { Finding } from '../report/finding-schema.js'
import { reportJson } from '../report/json.js'
import { Report } from '../report/schema.js'
import { SignDescription } from '../sign/description.js'
import { findStandards } from '../standards/catalogue.js'
import type { DrawingTaskInput } from './drawing-request.js'
import type { DrawingType } from './task.js'

/** A drawing that was held against the standards before it is handed out: the check reads the very file. */

/**
 * Lines are set at other distances where something of the drawing cannot be read at the first.
 * @throws {Refusal} `cannot-satisfy` when no drawing passes at the drawing stage; and those of `draw`.
 */
export function drawChecked({ standards, order, leaveToPerson }: DrawingTaskInput, translator: Translator) {
  let first: { drawn: Drawn; open: Finding[] } | undefined
  for (const leading of LEADINGS) {
    const drawn = draw(order, findStandards(standards), translator, leading)
    const { drawing, sign } = drawn
    const report: Report = check(asChecked(drawing, sign, standards), translator)
    const open = openOf(report)
    const left = leaveToPerson ? open.filter(({ reason }) => reason !== 'needs-judgement') : open
    if (left.length === 0) return { drawing, sign, report }
    first ??= { drawn, open }
    if (!open.some(({ reason }) => reason === 'unreadable')) break
  }
  const { drawn, open } = first ?? { drawn: undefined, open: [] }
  throw cannotSatisfy(NONE_FOUND, [...(drawn?.opposites ?? []), ...exclusionsOf(open)])
}

const NONE_FOUND = 'No drawing was found of which all that the standards ask can be told to pass.'

/** What of the drawing does not pass. */
const openOf = ({ findings }: Report): Finding[] =>
  findings.filter(
    ({ force, stage, verdict }) =>
      force === 'shall' && stage === 'drawing' && (verdict === 'fail' || verdict === 'undetermined'),
  )

/** Findings that say the same are told once. */
function exclusionsOf(open: readonly Finding[]): Exclusion[] {
  const byText = new Map<string, Exclusion>()
  for (const { quantity, requirement, message } of open) {
    const told = byText.get(message)
    if (told) told.requirements.push(requirement)
    else byText.set(message, { quantity, requirements: [requirement], text: message })
  }
  return [...byText.values()]
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
