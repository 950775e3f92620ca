import { setImmediate } from 'node:timers/promises'
import { dataOf, type ProvedHistory } from '../../submittals/history.js'
import type { EventRow } from '../../submittals/store/tables.js'

const METHOD =
  'hash = SHA-256, in hexadecimal, of the JSON of { at, actor, data, kind, number, previous, submittal } with its keys sorted at every level and no blanks, in UTF-8; previous = the hash of the event before, 64 zeros for the first.'

/** Events that are written in one go: a long history must not hold up what else this process answers. */
const EVENTS_A_GO = 500

/** The history as JSON, piece by piece, as it is answered and put into evidence, with the way to prove it without this service. */
export async function* historyText(submittal: string, { events, ...proof }: ProvedHistory): AsyncGenerator<string> {
  yield `${JSON.stringify({ submittal, ...proof, method: METHOD }).slice(0, -1)},"events":[`
  for (let first = 0; first < events.length; first += EVENTS_A_GO) {
    const some = events.slice(first, first + EVENTS_A_GO).map(eventText)
    yield (first > 0 ? ',' : '') + some.join(',')
    await setImmediate()
  }
  yield ']}'
}

/** Data that somebody has changed into what is no JSON is shown as it lies there. */
const eventText = ({ submittal: _, data, ...event }: EventRow): string =>
  JSON.stringify({ ...event, data: dataOf(data) ?? { unreadable: data } })
