import type { CheckInput } from '../../check.js'
import type { Translator } from '../../braille/translator.js'
import { Refusal } from '../../refusal.js'
import type { Bench } from './bench.js'
import { brailleStep } from './braille-step.js'
import { changesOf } from './changes.js'
import { colourStep } from './colour-step.js'
import { letterStep } from './letter-step.js'
import type { CorrectionContent } from './schema.js'
import { sheetOf, type Examine, type Sheet } from './sheet.js'
import { whyNot } from './why-not.js'

/** A failing drawing put right: only what failed, and only where the service's own check of the result bears it out. */

/**
 * @param examine the service's check of the same question with another drawing
 * @throws {Refusal} as a check does, and `invalid-description` when there is no drawing
 */
export function correct(input: CheckInput, examine: Examine, translator: Translator): CorrectionContent {
  if (!input.drawing)
    throw new Refusal('invalid-description', NO_DRAWING, [{ detail: NO_DRAWING, pointer: '/drawing' }])
  const { scale } = input.options
  const bench: Bench = { examine, scale, translator, reasons: new Map() }
  const before = sheetOf(input.drawing, scale, examine)
  const after = STEPS.reduce((sheet: Sheet, step) => step(sheet, bench), before)
  return {
    drawing: after.written.text,
    changes: changesOf(before, after),
    notCorrected: whyNot(after.report, bench.reasons),
    report: after.report,
  }
}

const STEPS: readonly ((sheet: Sheet, bench: Bench) => Sheet)[] = [colourStep, letterStep, brailleStep]

const NO_DRAWING = 'A correction changes a drawing: send one, in SVG.'
