import { examine, readSign } from '../check.js'
import type { Translator } from '../braille/translator.js'
import { Refusal } from '../refusal.js'
import { reportCsv } from '../report/csv.js'
import { reportHtml } from '../report/html.js'
import { reportJson } from '../report/json.js'
import { reportPdf } from '../report/pdf.js'
import { reportSarif } from '../report/sarif.js'
import { DRAWING, PROGRAM } from '../report/sarif-location.js'
import type { Report } from '../report/schema.js'
import { reportSvg } from '../report/svg.js'
import type { Sign } from '../sign/sign.js'
import { correctionAnswer } from './correction-answer.js'
import { planAnswer } from './dot-plan-answer.js'
import { planFromJson } from './dot-plan-request.js'
import { drawingAnswer } from './drawing-answer.js'
import { LongJson } from './json.js'
import { keptAnswer } from './kept-answer.js'
import { ServiceProblem } from './problems.js'
import { fromJson } from './read-request.js'
import { readingAnswer } from './reading-answer.js'
import type { Answer, AnsweredTask, CheckTask, RefusedAnswer, ReportType, UnreadTask } from './task.js'
import { StageClock } from './watching/stage-clock.js'

/**
 * What the core answers to a task, as text or as bytes of text, in the form asked for.
 * @throws {Refusal} when the input cannot be judged at all.
 */
export function answer(task: AnsweredTask, translator: Translator): Answer {
  const { watch, times } = new StageClock()
  if (task.kind === 'reading') {
    const sign = readSign(task.input, translator, watch)
    return { body: watch('write', () => JSON.stringify(readingAnswer(sign))), stages: times() }
  }
  if (task.kind === 'correction') return { body: correctionAnswer(task.input, translator) }
  if (task.kind === 'drawing') return { body: drawingAnswer(task.input, task.type, translator) }
  if (task.kind === 'dot-plan') return { body: planAnswer(task.input, task.type, translator) }
  const { report, sign } = examine(task.input, translator, watch)
  const { verdict, summary } = report
  const judged = { verdict, summary }
  if (task.kind === 'kept') {
    const made = watch('write', () => keptAnswer(task.input, report, sign))
    return { body: '', made, judged, stages: times() }
  }
  const body = watch('write', () => written(report, sign, task))
  return { body, tag: `${report.id}-${TAGS[task.type]}`, judged, stages: times() }
}

/** What each form adds to the name of a report's content. */
const TAGS: Record<ReportType, string> = {
  'application/json': 'json',
  'text/html': 'html',
  'image/svg+xml': 'svg',
  'text/csv': 'csv',
  'application/sarif+json': 'sarif',
  'application/pdf': 'pdf',
}

function written(report: Report, sign: Sign, { type, input }: CheckTask): string | Uint8Array {
  switch (type) {
    case 'application/json':
      return reportJson(report)
    case 'text/html':
      return reportHtml(report, reportSvg(report, sign))
    case 'image/svg+xml':
      return reportSvg(report, sign)
    case 'text/csv':
      return reportCsv(report)
    case 'application/sarif+json':
      return reportSarif(report, input.program ? PROGRAM : DRAWING)
    case 'application/pdf':
      return reportPdf(report, reportSvg(report, sign))
  }
}

/** The same across threads, where an error keeps its message only: a refusal is answered as plain data. */
export function answerOrRefusal(task: AnsweredTask | UnreadTask, translator: Translator): Answer | RefusedAnswer {
  try {
    const { body, ...beside } = answer('json' in task ? read(task) : task, translator)
    // Bytes cross with all the memory that they are a part of, so they get a small one of their own.
    const own = typeof body === 'string' ? body : new Uint8Array(body)
    return { body: own, ...beside }
  } catch (error) {
    return refusedAnswer(error)
  }
}

/** @throws the error, when it is no refusal */
export function refusedAnswer(error: unknown): RefusedAnswer {
  const known = error instanceof Refusal || (error instanceof ServiceProblem && error.type === 'malformed-json')
  if (!known) throw error
  const { type, detail, errors, excess, conflicts } = error as Refusal
  return { refused: { type, detail, errors, ...(excess && { excess }), ...(conflicts && { conflicts }) } }
}

function read(task: UnreadTask): AnsweredTask {
  const { json, ...question } = task
  const body = new LongJson(json).read()
  if (question.kind !== 'dot-plan') return { ...question, input: fromJson(body) }
  const { kind, type, form } = question
  return { kind, type, input: planFromJson(body, form) }
}
