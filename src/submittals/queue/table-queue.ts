import { setImmediate } from 'node:timers/promises'
import { sql } from 'kysely'
import { newId } from '../store/ids.js'
import type { Database, InTransaction } from '../store/tables.js'
import { LEASE, type JobData, type Queue, type QueueName, type TakenJob } from './queue.js'

/** The queue of the embedded store: a table of it. One process takes from it; PostgreSQL has a queue of its own. */

const MILLISECONDS = 1000
const ROWS_A_STATEMENT = 500

const later = (seconds: number): string => new Date(Date.now() + seconds * MILLISECONDS).toISOString()

export class TableQueue implements Queue {
  constructor(private readonly db: Database) {}

  /** The process that took jobs and did not finish them is gone, or this one would not start. */
  async start(): Promise<void> {
    await this.db.updateTable('jobs').set({ taken_until: null }).where('taken_until', 'is not', null).execute()
  }

  async add(transaction: InTransaction, queue: QueueName, jobs: readonly JobData[], after = 0): Promise<void> {
    const run_at = later(after)
    const rows = jobs.map((data) => ({
      id: newId('job'),
      queue,
      data: JSON.stringify(data),
      attempts: 0,
      run_at,
      taken_until: null,
    }))
    for (let from = 0; from < rows.length; from += ROWS_A_STATEMENT) {
      await transaction
        .insertInto('jobs')
        .values(rows.slice(from, from + ROWS_A_STATEMENT))
        .execute()
      // SQLite answers at once; thousands of rows must not hold up what else this process answers.
      await setImmediate()
    }
  }

  async take(queue: QueueName, most: number): Promise<TakenJob[]> {
    const time = later(0)
    const due = this.db
      .selectFrom('jobs')
      .select('id')
      .where('queue', '=', queue)
      .where('run_at', '<=', time)
      .where((e) => e.or([e('taken_until', 'is', null), e('taken_until', '<', time)]))
      .orderBy('run_at')
      .orderBy('id')
      .limit(most)
    const rows = await this.db
      .updateTable('jobs')
      .set({ taken_until: later(LEASE), attempts: sql`attempts + 1` })
      .where('id', 'in', due)
      .returning(['id', 'data', 'attempts'])
      .execute()
    return rows.map(({ id, data, attempts }) => ({ id, data: JSON.parse(data) as JobData, attempt: attempts }))
  }

  async done(_queue: QueueName, ids: readonly string[]): Promise<void> {
    await this.db.deleteFrom('jobs').where('id', 'in', ids).execute()
  }

  async again(_queue: QueueName, { id, attempt }: TakenJob, after: number): Promise<void> {
    await this.db
      .updateTable('jobs')
      .set({ taken_until: null, run_at: later(after), attempts: attempt })
      .where('id', '=', id)
      .execute()
  }

  async depth(queue: QueueName): Promise<{ waiting: number; oldest: number }> {
    const time = later(0)
    const found = await this.db
      .selectFrom('jobs')
      .select((e) => [e.fn.countAll<number>().as('waiting'), e.fn.min('run_at').as('oldest')])
      .where('queue', '=', queue)
      .where('run_at', '<=', time)
      .where((e) => e.or([e('taken_until', 'is', null), e('taken_until', '<', time)]))
      .executeTakeFirstOrThrow()
    const oldest = found.oldest ? (Date.parse(time) - Date.parse(found.oldest)) / MILLISECONDS : 0
    return { waiting: Number(found.waiting), oldest }
  }

  close(): Promise<void> {
    return Promise.resolve()
  }
}
