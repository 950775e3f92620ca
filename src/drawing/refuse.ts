import { Refusal } from '../refusal.js'

/** A place in the drawing's text; lines and columns count from 1. */
export interface Spot {
  line: number
  column: number
}

export const START: Spot = { line: 1, column: 1 }

/** The text is no drawing that can be read. `detail` is one sentence that says what is wrong and what to do. */
export const malformed = (detail: string, { line, column }: Spot = START): Refusal =>
  new Refusal('malformed-drawing', detail, [{ detail, line: Math.max(1, line), column: Math.max(1, column) }])

export const entitiesNotAccepted = (detail: string, { line, column }: Spot = START): Refusal =>
  new Refusal('entities-not-accepted', detail, [{ detail, line: Math.max(1, line), column: Math.max(1, column) }])

/** More than a limit allows; `what` names what is counted, in the plural. */
export function tooComplex(what: string, limit: number, actual: number, spot?: Spot): Refusal {
  const detail = `The drawing has too many ${what}: at most ${limit} are read. Send the sign alone, without what is not part of it.`
  const errors = spot ? [{ detail, line: Math.max(1, spot.line), column: Math.max(1, spot.column) }] : []
  return new Refusal('too-complex', detail, errors, { limit, actual })
}

export const scaleUnknown = (detail: string, { line, column }: Spot = START): Refusal =>
  new Refusal('scale-unknown', detail, [{ detail, line: Math.max(1, line), column: Math.max(1, column) }])

/** Text of the client's that is quoted in a message: one line, and not the whole of it. */
export function quote(text: string, length = 40): string {
  const line = text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]+/gu, ' ').trim()
  return `"${line.length > length ? `${line.slice(0, length)}…` : line}"`
}
