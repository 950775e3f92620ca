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
    if (failure) throw malformedJson(text)
    return value
  }
}

function malformedJson(text: string): ServiceProblem {
  if (text.trim() === '') return new ServiceProblem('malformed-json', 'The body is empty; JSON was expected.')
  const reason = syntaxErrorOf(text)
  if (reason === undefined)
    return new ServiceProblem(
      'malformed-json',
      'The JSON holds a key that is not accepted: “__proto__”, or “constructor” with a prototype.',
    )
  const tooShort = /end of JSON|Unterminated/u.test(reason)
  const position = /position (\d+)/u.exec(reason)?.[1]
  const offset = position === undefined ? (tooShort ? text.length : undefined) : Number(position)
  const detail = tooShort ? 'The JSON ends too early.' : 'Here the JSON breaks its grammar.'
  return new ServiceProblem('malformed-json', 'The text is not JSON.', [
    { detail, ...(offset !== undefined && placeOf(text, offset)) },
  ])
}

/** The framework's parser does not say where it stopped; V8's does. Undefined when the text is JSON after all. */
function syntaxErrorOf(text: string): string | undefined {
  try {
    JSON.parse(text.replace(/^\ufeff/u, ''))
    return undefined
  } catch (error) {
    return error instanceof Error ? error.message : ''
  }
}

/** Line and column of an offset, both from 1; the column counts UTF-16 units. */
function placeOf(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset)
  const lastBreak = before.lastIndexOf('\n')
  return { line: before.split('\n').length, column: offset - lastBreak }
}
