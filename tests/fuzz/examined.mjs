// What counts as a finding of a reader: anything thrown that is no refusal, and a report that is not what it says it is.
import { createTranslator } from '../../dist/braille/engine.js'
import { examine } from '../../dist/check.js'
import { Refusal } from '../../dist/refusal.js'
import { reportJson } from '../../dist/report/json.js'
import { reportSvg } from '../../dist/report/svg.js'
import { Report } from '../../dist/report/schema.js'
import { ServiceProblem } from '../../dist/service/problems.js'

export const translator = createTranslator()

export const OPTIONS = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' }
export const STANDARDS = ['us-ada-2010']

/**
 * Checks one input as the service does.
 * @returns the sign and its report; undefined when it was refused
 * @throws what is a finding
 */
export function examined(input) {
  const answer = foreseen(() => examine(input, translator))
  if (answer) lookAt(answer)
  return answer
}

/** What the work gives; undefined when it refuses in the way that is promised. */
export function foreseen(work) {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof Refusal || error instanceof ServiceProblem)) throw error
    lookAtRefusal(error)
    return undefined
  }
}

function lookAtRefusal({ type, detail, errors, excess }) {
  if (!/^\P{Ll}.*\.$/su.test(detail)) throw new Error(`the refusal ${type} is no sentence: ${detail}`)
  for (const { detail: what, line, column } of errors) {
    if (what === '') throw new Error(`an error of ${type} says nothing`)
    for (const place of [line, column])
      if (place !== undefined && !(Number.isInteger(place) && place >= 1))
        throw new Error(`an error of ${type} stands at ${line}:${column}`)
  }
  if (excess && !(excess.actual > excess.limit))
    throw new Error(`${type} at ${excess.actual}, which is within ${excess.limit}`)
}

function lookAt({ sign, report }) {
  everyNumberIsFinite(report, 'report')
  // As a client reads it.
  Report.parse(JSON.parse(reportJson(report).toString()))
  const { pass, fail, undetermined, notApplicable } = report.summary
  if (pass + fail + undetermined + notApplicable !== report.findings.length)
    throw new Error('the summary counts other findings than there are')
  reportSvg(report, sign)
}

function everyNumberIsFinite(value, path) {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`${path} is ${value}`)
  } else if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value)) everyNumberIsFinite(inner, `${path}.${key}`)
}
