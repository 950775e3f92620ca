import { readWritten, type WrittenDrawing } from '../../drawing/source-text.js'
import type { Finding } from '../../report/finding-schema.js'
import type { Report } from '../../report/schema.js'
import type { Sign } from '../../sign/sign.js'

/** A drawing as it stands at one step of its correction: its text, what it shows, and what the check says of it. */
export interface Sheet {
  bytes: Uint8Array
  written: WrittenDrawing
  sign: Sign
  report: Report
}

/** The service's own check of a drawing, with the sign that it judged. @throws {Refusal} when it cannot be judged. */
export type Examine = (drawing: Uint8Array) => { sign: Sign; report: Report }

/** @throws {Refusal} when the drawing cannot be judged */
export function sheetOf(bytes: Uint8Array, scale: number | undefined, examine: Examine): Sheet {
  const { sign, report } = examine(bytes)
  return { bytes, written: readWritten(bytes, scale === undefined ? {} : { scale }), sign, report }
}

/** Rows that decide a verdict and are in force for this sign, of some quantities. */
export const rowsInForce = (report: Report, quantities: readonly string[]): Finding[] =>
  report.findings.filter(
    ({ force, verdict, quantity }) =>
      force === 'shall' && verdict !== 'not-applicable' && quantities.includes(quantity),
  )

export const failing = (report: Report, quantities: readonly string[]): Finding[] =>
  rowsInForce(report, quantities).filter(({ verdict }) => verdict === 'fail')

/** The numbers of the parts of one kind that a failed row names; all of them when it names more places than it lists. */
export function offenders({ where, whereTotal }: Finding, kind: 'braille' | 'lettering', count: number): number[] {
  const all = Array.from({ length: count }, (_, n) => n)
  if (whereTotal > where.length) return all
  const named = where.flatMap(({ element }) => {
    const [first, number] = element.split('/')
    return first === kind && number !== undefined ? [Number(number)] : []
  })
  return named.length === 0 ? all : all.filter((n) => named.includes(n))
}
