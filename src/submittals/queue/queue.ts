import type { InTransaction } from '../store/tables.js'

/**
 * Work that waits. A job is added in the transaction that makes it needed, so that there is never one without the other; it is
 * done at least once, and whoever does it makes sure that doing it twice changes nothing.
 */
export interface Queue {
  /** Adds jobs; they can be taken when the transaction has ended, or `after` so many seconds. */
  add(transaction: InTransaction, queue: QueueName, jobs: readonly JobData[], after?: number): Promise<void>
  /** Takes up to so many jobs for `LEASE` seconds. Whoever takes a job and is never heard of again loses it to another. */
  take(queue: QueueName, most: number): Promise<TakenJob[]>
  /** These are done. */
  done(queue: QueueName, ids: readonly string[]): Promise<void>
  /** This one could not be done; it comes again after so many seconds. It has been taken as often as it says, which the next count goes on from. */
  again(queue: QueueName, job: TakenJob, after: number): Promise<void>
  /** How many wait, and for how many seconds the oldest has been due. */
  depth(queue: QueueName): Promise<{ waiting: number; oldest: number }>
  start(): Promise<void>
  close(): Promise<void>
}

/** Checks of signs; notifications that go out. */
export const QUEUES = ['checks', 'notifications'] as const
export type QueueName = (typeof QUEUES)[number]

export type JobData = Record<string, string | number>

export interface TakenJob {
  id: string
  data: JobData
  /** How often it has been taken, this time included. */
  attempt: number
}

/** Seconds: several times what the longest check may take, and short enough that nobody waits long for a dead process. */
export const LEASE = 30
