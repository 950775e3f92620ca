import type { Translator } from './braille/translator.js'
import { readDrawing } from './drawing/read.js'
import { holdAgainst, judgeHeld } from './judge/judge.js'
import { signOfProgram } from './make/gcode/sign.js'
import { measurer } from './measure/measurer.js'
import { recognise, type RecogniseOptions } from './recognise/recognise.js'
import { makeReport } from './report/make.js'
import type { Report } from './report/schema.js'
import { combine } from './sign/combine.js'
import type { SignDescription } from './sign/description.js'
import { describe } from './sign/describe.js'
import type { Sign } from './sign/sign.js'
import { unwatched, type Watch } from './stages.js'
import { findStandards } from './standards/catalogue.js'

/** One question: a drawing or a drilling program, a description or both, and the standards to hold the sign against. */
export interface CheckInput {
  drawing?: Uint8Array
  /** Instead of a drawing: the moves that will make the dots. */
  program?: Uint8Array
  sign?: SignDescription
  /** Ids, optionally pinned to a revision: `us-ada-2010` or `us-ada-2010@1`. */
  standards: string[]
  options: CheckOptions
}

export interface CheckOptions extends RecogniseOptions {
  /** Millimetres, of the dots that a program makes. */
  dotBaseDiameter?: number
  /** Millimetres per user unit, for a drawing that has no scale. */
  scale?: number
  decisionRule: 'simple' | 'guarded'
  unitSystem: 'printed' | 'both'
  language: 'en'
  /** Nobody said what the sign is for; `use` is the service's guess. */
  useAssumed?: boolean
}

/**
 * The whole way of the data. Pure: the same input, standards and translator give the same report.
 * @throws {Refusal} when the input cannot be judged at all.
 */
export const check = (input: CheckInput, translator: Translator): Report => examine(input, translator).report

/** The same, with the sign that was judged, for forms of the report that draw it. @param watch told of each stage */
export function examine(input: CheckInput, translator: Translator, watch = unwatched): { sign: Sign; report: Report } {
  const standards = findStandards(input.standards)
  const sign = readSign(input, translator, watch)
  const rows = watch('measure', () => {
    const measure = measurer(sign, translator)
    return standards.map((standard) => holdAgainst(standard, sign, measure))
  })
  const judgements = watch('judge', () => rows.map((held) => judgeHeld(held, sign, input.options)))
  const report = watch('report', () => makeReport({ input, sign, standards, judgements, translator }))
  return { sign, report }
}

/** The first half of the way: one sign from what was given, nothing judged. */
export function readSign(input: CheckInput, translator: Translator, watch = unwatched): Sign {
  const drawn = readDrawn(input, translator, watch)
  const described = input.sign && describe(input.sign, translator)
  const sign = combine(drawn, described)
  if (!input.options.useAssumed) return sign
  const text = `No use was given; the sign is taken as one for use “${sign.use}”.`
  return { ...sign, assumptions: [{ about: 'use', text }, ...sign.assumptions] }
}

function readDrawn({ program, drawing, sign, options }: CheckInput, translator: Translator, watch: Watch) {
  if (program) return watch('read', () => signOfProgram(program, options, sign !== undefined, translator))
  const shapes = drawing && watch('read', () => readDrawing(drawing, options))
  return shapes && watch('recognise', () => recognise(shapes, options, translator))
}
