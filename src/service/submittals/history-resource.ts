import type { ProvedHistory } from '../../submittals/history.js'
import { parsed } from './rows.js'

const METHOD =
  'hash = SHA-256, in hexadecimal, of the JSON of { at, actor, data, kind, number, previous, submittal } with its keys sorted at every level and no blanks, in UTF-8; previous = the hash of the event before, 64 zeros for the first.'

/** The history as it is answered and put into evidence, with the way to prove it without this service. */
export function historyResource(submittal: string, { events, ...proof }: ProvedHistory) {
  const shown = events.map(({ submittal: _, data, ...event }) => ({ ...event, data: parsed<object>(data) }))
  return { submittal, ...proof, method: METHOD, events: shown }
}
