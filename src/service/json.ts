import type { FastifyInstance, FastifyRequest } from 'fastify'
import { ServiceProblem } from './problems.js'

/** Reads JSON text, refusing keys that would reach a prototype; what is wrong is named with its line and column. */
export type JsonReader = (request: FastifyRequest, text: string) => unknown

/** The framework's own safe parser as a function. */
export function jsonReader(app: FastifyInstance): JsonReader {
  const parse = app.getDefaultJsonParser('error', 'error')
  return (request, text) => {
    let value: unknown
    let failure: unknown
    // It answers before it returns.
    void parse(request, text, (error, result) => {
      failure = error
      value = result
    })
    if (failure) throw malformedJson(text, failure)
    return value
  }
}

function malformedJson(text: string, failure: unknown): ServiceProblem {
  if (text.trim() === '') return new ServiceProblem('malformed-json', 'The body is empty; JSON was expected.')
  const cause = failure instanceof Error && failure.cause instanceof Error ? failure.cause : failure
  const reason = cause instanceof Error ? cause.message : 'it cannot be parsed'
  const position = /position (\d+)/u.exec(reason)?.[1]
  const offset = position === undefined ? (/end of JSON/u.test(reason) ? text.length : undefined) : Number(position)
  const where = offset === undefined ? {} : placeOf(text, offset)
  return new ServiceProblem('malformed-json', 'The text is not JSON that is read here.', [
    { detail: describeReason(reason), ...where },
  ])
}

/** V8 quotes the text it stumbled over; only what it expected is passed on. */
function describeReason(reason: string): string {
  if (/prototype|forbidden/iu.test(reason))
    return 'A key “__proto__” or “constructor” with a prototype is not accepted.'
  if (/end of JSON|Unterminated/u.test(reason)) return 'The JSON ends too early.'
  return 'Here the JSON breaks its grammar.'
}

/** Line and column of an offset, both from 1; the column counts UTF-16 units. */
function placeOf(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset)
  const lastBreak = before.lastIndexOf('\n')
  return { line: before.split('\n').length, column: offset - lastBreak }
}
