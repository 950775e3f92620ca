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
  const json = text.replace(/^\ufeff/u, '')
  if (json.trim() === '') return new ServiceProblem('malformed-json', 'The body is empty; JSON was expected.')
  if (!stopsReading(json))
    return new ServiceProblem(
      'malformed-json',
      'The JSON holds a key that is not accepted: “__proto__”, or “constructor” with a prototype.',
    )
  const end = endsTooEarly(json)
  const offset = end ? json.length : offsetOfError(json)
  return new ServiceProblem('malformed-json', 'The text is not JSON.', [
    {
      detail: end ? 'The JSON ends too early.' : 'Here the JSON breaks its grammar.',
      ...(offset !== undefined && placeOf(json, offset)),
    },
  ])
}

/** V8's message for a text that is no JSON; undefined for one that is. */
function stopsReading(json: string): string | undefined {
  try {
    JSON.parse(json)
    return undefined
  } catch (error) {
    return error instanceof Error ? error.message : 'unknown'
  }
}

/** Whether more text could make it JSON: the reader stopped at the end, not before. */
function endsTooEarly(json: string): boolean {
  const message = stopsReading(json) ?? ''
  if (/end of JSON|Unterminated/u.test(message)) return true
  return Number(/position (\d+)/u.exec(message)?.[1]) >= json.length
}

/** The search below reads the text a dozen times and more; a longer one is not searched. */
const LONGEST_SEARCHED = 64 * 1024

/** Where the grammar breaks: every shorter beginning of the text could still become JSON, no longer one can. */
function offsetOfError(json: string): number | undefined {
  if (json.length > LONGEST_SEARCHED) return undefined
  let sound = 0
  let broken = json.length
  while (broken - sound > 1) {
    const middle = (sound + broken) >> 1
    const beginning = json.slice(0, middle)
    if (stopsReading(beginning) === undefined || endsTooEarly(beginning)) sound = middle
    else broken = middle
  }
  return sound
}

/** Line and column of an offset, both from 1; the column counts UTF-16 units. */
function placeOf(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset)
  const lastBreak = before.lastIndexOf('\n')
  return { line: before.split('\n').length, column: offset - lastBreak }
}
