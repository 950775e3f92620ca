import type { Translator } from '../../src/braille/translator.js'
import { check, type CheckOptions } from '../../src/check.js'
import { Refusal } from '../../src/refusal.js'
import type { Report } from '../../src/report/schema.js'
import { drawingOf, truths, type Truth } from '../end-to-end/truth.js'

/**
 * The drawings of tests/drawings, each a whole check against the truth that the program wrote which made it. A drawing
 * is wrong when anything false is said of it; undecided when nothing is, but something that its truth holds was left
 * open; else right.
 */
export interface CheckedDrawing {
  name: string
  wrong: string[]
  undecided: string[]
}

interface FullTruth extends Truth {
  /** What a reader finds who believes the size that CSS gives the drawing. */
  believing_css?: { violates: string[]; measured: Record<string, number>; scale: number }
}

const OPTIONS: CheckOptions = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' }

/** Millimetres; the truth is written with so much slack. */
const SPACING_TOLERANCE = 0.05
const HEIGHT_TOLERANCE = 0.15
const HEIGHT_SHARE = 0.015

export const checkDrawings = (translator: Translator): CheckedDrawing[] =>
  truths.map((t) => checkDrawing(t, translator))

function checkDrawing(truth: FullTruth, translator: Translator): CheckedDrawing {
  const { name, believing_css: believing } = truth
  const answer = ask(name, translator)
  if (typeof answer === 'string') {
    const wrong = answer === truth.expectProblem ? [] : [`refused as ${answer}`]
    return { name, wrong, undecided: [] }
  }
  const asIs = { name, ...compare(truth, answer) }
  if (!believing || asIs.wrong.length === 0) return asIs
  const { violates, measured, scale } = believing
  const raised = truth.raised_lines?.map((line) => ({ ...line, cap_height: line.cap_height * scale }))
  const believed = { name, ...compare({ ...truth, violates, measured, raised_lines: raised }, answer) }
  if (!answer.assumptions.some(({ about }) => about === 'scale'))
    believed.wrong.push('that the scale is in doubt is not said')
  return believed
}

/** The report, or the type of the problem. */
function ask(name: string, translator: Translator): Report | string {
  try {
    return check({ drawing: drawingOf(name), standards: ['us-ada-2010'], options: OPTIONS }, translator)
  } catch (error) {
    if (error instanceof Refusal) return error.type
    throw error
  }
}

type Compared = Pick<CheckedDrawing, 'wrong' | 'undecided'>

function compare(truth: FullTruth, report: Report): Compared {
  const all: Compared = { wrong: [], undecided: [] }
  if (truth.expectProblem !== undefined) all.wrong.push(`read, though it is ${truth.expectProblem}`)
  for (const part of [ofBraille(truth, report), ofLettering(truth, report), ofVerdicts(truth, report)]) {
    all.wrong.push(...part.wrong)
    all.undecided.push(...part.undecided)
  }
  return all
}

const trimmed = (cells: string) => cells.replace(/^\u2800+|\u2800+$/gu, '')

function ofBraille(truth: FullTruth, { reading }: Report): Compared {
  const wrong: string[] = []
  const undecided: string[] = []
  const want = (truth.braille_lines ?? []).map((line) => trimmed(line.unicode))
  const got = reading.braille.flatMap((b) => b.lines.flatMap(({ cells }) => (cells ? [trimmed(cells)] : [])))
  const missing = want.filter((line) => !got.includes(line))
  const extra = got.filter((line) => !want.includes(line))
  if (extra.length > 0) wrong.push(`braille read as ${extra.join(' | ')}`)
  else if (missing.length > 0) undecided.push('braille not read')
  const dots = reading.braille.reduce((sum, block) => sum + block.dots, 0)
  if (truth.dots_state !== 'match' || dots === 0) return { wrong, undecided }
  if (dots !== truth.dots?.length) wrong.push(`${dots} dots for ${truth.dots?.length ?? 0}`)
  for (const [quantity, value] of Object.entries(truth.measured ?? {}))
    for (const block of reading.braille) {
      const found = block[quantity as 'dotSpacing' | 'cellSpacing' | 'lineSpacing' | 'dotBaseDiameter']
      if (found === null) undecided.push(`${quantity} not measured`)
      else if (Math.abs(found - value) > SPACING_TOLERANCE) wrong.push(`${quantity} ${found} for ${value}`)
    }
  return { wrong, undecided }
}

function ofLettering(truth: FullTruth, { reading }: Report): Compared {
  const wrong: string[] = []
  const undecided: string[] = []
  const lines = truth.raised_lines ?? []
  for (const { text } of reading.lettering)
    if (text !== null && !lines.some((line) => line.text === text)) wrong.push(`letters read as ${text}`)
  for (const { text, cap_height } of lines) {
    const found = reading.lettering.find((line) => line.text === text)
    if (!found) undecided.push(`letters not read: ${text}`)
    else if (found.characterHeight === null) undecided.push('character height not measured')
    else if (Math.abs(found.characterHeight - cap_height) > Math.max(HEIGHT_TOLERANCE, HEIGHT_SHARE * cap_height))
      wrong.push(`character height ${found.characterHeight} for ${cap_height}`)
  }
  return { wrong, undecided }
}

function ofVerdicts(truth: FullTruth, report: Report): Compared {
  const wrong: string[] = []
  const undecided: string[] = []
  const shall = report.findings.filter(({ force }) => force === 'shall')
  const clauses = (verdict: string) => new Set(shall.filter((f) => f.verdict === verdict).map((f) => f.clause))
  const [failed, open] = [clauses('fail'), clauses('undetermined')]
  const [violates, also] = [truth.violates ?? [], truth.violates_also_acceptable ?? []]
  for (const clause of violates) {
    if (failed.has(clause) || also.some((c) => failed.has(c))) continue
    if (open.has(clause) || truth.violates_optional) undecided.push(`${clause} left open, which the sign violates`)
    else wrong.push(`${clause} passed, which the sign violates`)
  }
  for (const clause of failed)
    if (!violates.includes(clause) && !also.includes(clause)) wrong.push(`${clause} failed, which the sign satisfies`)
  return { wrong, undecided }
}
