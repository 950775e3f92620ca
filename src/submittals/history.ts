import { createHash } from 'node:crypto'
import { setImmediate } from 'node:timers/promises'
import { canonicalJson } from '../standards/load.js'
import { now } from './store/ids.js'
import type { Database, EventRow, InTransaction, SubmittalRow } from './store/tables.js'

/**
 * The history of a submittal: who did what, when. Events are only ever added, and each holds the hash of the one before, so that
 * a change of any of them shows. Hash: SHA-256 (FIPS 180-4) of the event as JSON with sorted keys and no blanks (the canonical
 * form of RFC 8785 for the texts and whole numbers that events hold).
 */

export interface Happening {
  kind: EventKind
  data: Record<string, unknown>
}

export const EVENT_KINDS = [
  'submittal-created',
  'signs-added',
  'sign-checked',
  'sign-not-checked',
  'sign-removed',
  'measurements-added',
  'installation-changed',
  'waiver-added',
  'waiver-withdrawn',
  'note-added',
  'submittal-checked',
  'submittal-cancelled',
] as const
export type EventKind = (typeof EVENT_KINDS)[number]

/** What stands before the first event. */
export const NO_EVENT = '0'.repeat(64)

/** What the hash is made of, in the words of the answer to GET …/history. */
export const hashOf = (
  event: Pick<EventRow, 'submittal' | 'number' | 'at' | 'actor' | 'kind' | 'previous'> & { data: unknown },
): string => createHash('sha256').update(canonicalJson(event)).digest('hex')

export type Head = Pick<SubmittalRow, 'id' | 'event_count' | 'event_head'>

/**
 * Takes the submittal for this transaction alone: its history has one end. To be done first in any transaction that changes it,
 * so that none waits for another that waits for it.
 */
export async function takeSubmittal(transaction: InTransaction, id: string): Promise<SubmittalRow | undefined> {
  return transaction
    .updateTable('submittals')
    .set({ updated_at: now() })
    .where('id', '=', id)
    .returningAll()
    .executeTakeFirst()
}

/** Adds events at the end. @param head as `takeSubmittal` gave it; it is brought up to date, so that more can follow */
export async function append(
  transaction: InTransaction,
  head: Head,
  actor: string,
  happenings: readonly Happening[],
): Promise<void> {
  const rows = happenings.map(({ kind, data }) => {
    const event = {
      submittal: head.id,
      number: head.event_count + 1,
      at: now(),
      actor,
      kind,
      data,
      previous: head.event_head,
    }
    const hash = hashOf(event)
    head.event_count = event.number
    head.event_head = hash
    return { ...event, data: canonicalJson(data), hash }
  })
  await transaction.insertInto('events').values(rows).execute()
  await transaction
    .updateTable('submittals')
    .set({ event_count: head.event_count, event_head: head.event_head })
    .where('id', '=', head.id)
    .execute()
}

export interface ProvedHistory {
  events: EventRow[]
  /** Whether every hash and the end are what they must be. */
  intact: boolean
  /** The first event that is not what it must be. */
  brokenAt: number | null
  head: string
}

/** Events that are read and proved in one go: a long history must not hold up what else this process answers. */
const EVENTS_A_GO = 500

/** Reads the history and computes every hash anew. */
export async function provedHistory(db: Database, submittal: Head): Promise<ProvedHistory> {
  const events: EventRow[] = []
  let previous = NO_EVENT
  let brokenAt: number | null = null
  for (let last = 0; last < submittal.event_count; last += EVENTS_A_GO) {
    const some = await db
      .selectFrom('events')
      .selectAll()
      .where('submittal', '=', submittal.id)
      .$if(last > 0, (q) => q.where('number', '>', last))
      .where('number', '<=', Math.min(last + EVENTS_A_GO, submittal.event_count))
      .orderBy('number')
      .execute()
    for (const event of some) {
      events.push(event)
      if (brokenAt !== null) continue
      if (isRight(event, events.length, previous)) previous = event.hash
      else brokenAt = events.length
    }
    await setImmediate()
  }
  if (brokenAt === null && (events.length !== submittal.event_count || previous !== submittal.event_head))
    brokenAt = events.length + 1
  return { events, intact: brokenAt === null, brokenAt, head: submittal.event_head }
}

/** The event as it lies there, to the last byte: data that say the same in other words are not what was written. */
function isRight({ hash, ...event }: EventRow, number: number, previous: string): boolean {
  const data = dataOf(event.data)
  return (
    event.number === number &&
    event.previous === previous &&
    data !== undefined &&
    canonicalJson(data) === event.data &&
    hash === hashOf({ ...event, data })
  )
}

/** What an event says; undefined where it is no JSON, so that somebody has changed it. */
export function dataOf(json: string): unknown {
  try {
    return JSON.parse(json) as unknown
  } catch {
    return undefined
  }
}
