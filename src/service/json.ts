import { parse } from 'secure-json-parse'
import { ServiceProblem } from './problems.js'

/** A body of JSON that takes too long to be read between other requests: a thread reads it. */
export class LongJson {
  constructor(readonly bytes: Uint8Array) {}

  /** @throws {ServiceProblem} `malformed-json` with the line and column. */
  read(): unknown {
    return readJson(new TextDecoder().decode(this.bytes))
  }
}

/**
 * Reads JSON text, refusing keys that would reach a prototype.
 * @throws {ServiceProblem} `malformed-json` with the line and column.
 */
export function readJson(text: string): unknown {
  try {
    return parse(text, { protoAction: 'error', constructorAction: 'error' }) as unknown
  } catch (error) {
    throw malformedJson(text.replace(/^\ufeff/u, ''), error instanceof Error ? error.message : '')
  }
}

/** The message of the reader for a key that it does not let pass; it is the one of V8 for a text that is no JSON. */
const FORBIDDEN = /forbidden prototype/u

function malformedJson(json: string, message: string): ServiceProblem {
  if (json.trim() === '') return new ServiceProblem('malformed-json', 'The body is empty; JSON was expected.')
  if (FORBIDDEN.test(message))
    return new ServiceProblem(
      'malformed-json',
      'The JSON holds a key that is not accepted: “__proto__”, or “constructor” with a prototype.',
    )
  const end = endsTooEarly(json, message)
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
function endsTooEarly(json: string, message: string): boolean {
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
    const message = stopsReading(beginning)
    if (message === undefined || endsTooEarly(beginning, message)) sound = middle
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
