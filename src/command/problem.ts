import type { Fault, Refusal } from '../refusal.js'
import type { SetSign } from '../report/set/evidence.js'
import { PROBLEMS } from '../service/problem-table.js'

/** Faults of one sign that are written out; more of them help nobody. */
const FAULTS_SHOWN = 5

/** A refusal in the words that the service has for it, with the places of what is wrong. */
export function problemOf({
  type,
  detail,
  errors,
}: Pick<Refusal, 'type' | 'detail' | 'errors'>): NonNullable<SetSign['problem']> {
  const more = errors.length - FAULTS_SHOWN
  const sentences = [
    detail,
    ...errors.slice(0, FAULTS_SHOWN).map(placed),
    ...(more > 0 ? [`There are ${more} more faults.`] : []),
  ]
  return { title: PROBLEMS[type].title, detail: sentences.join(' ') }
}

function placed({ detail, pointer, line, column }: Fault): string {
  if (line !== undefined) return `Line ${line}${column === undefined ? '' : `, column ${column}`}: ${detail}`
  return pointer ? `At ${pointer}: ${detail}` : detail
}
