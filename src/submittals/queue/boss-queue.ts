import { CompiledQuery } from 'kysely'
import type pg from 'pg'
import PgBoss from 'pg-boss'
import type { InTransaction } from '../store/tables.js'
import { LEASE, QUEUES, type JobData, type Queue, type QueueName, type TakenJob } from './queue.js'

/** The queue of PostgreSQL, which any number of processes share: pg-boss, in a schema of its own beside our tables. */

/** Seconds between two looks for jobs whose takers are gone. */
const MAINTENANCE = 5
/** How often a job may be lost with the process that took it; what stops processes is given up by who takes it, long before. */
const MOST_LOSSES = 100
const RETENTION_DAYS = 60
const MILLISECONDS = 1000
const JOBS_A_STATEMENT = 2000
const SCHEMA = 'pgboss'
/** The number of the lock under which the queues are made; any that nobody else uses in this database. */
const START = 6_011_966

/** A job that comes again is a new one to the library; it says itself how often it was taken. */
const TAKEN = 'taken'

export class BossQueue implements Queue {
  private readonly boss: PgBoss

  constructor(
    private readonly pool: pg.Pool,
    onError: (error: Error) => void,
  ) {
    this.boss = new PgBoss({
      db: { executeSql: (text, values) => pool.query(text, values as unknown[]) },
      schema: SCHEMA,
      schedule: false,
      maintenanceIntervalSeconds: MAINTENANCE,
      retentionDays: RETENTION_DAYS,
    })
    this.boss.on('error', onError)
  }

  /** One process after the other: the library's own tables for two queues are made in a way that can block two processes for good. */
  async start(): Promise<void> {
    const alone = await this.pool.connect()
    try {
      await alone.query('SELECT pg_advisory_lock($1)', [START])
      await this.boss.start()
      for (const name of QUEUES)
        await this.boss.createQueue(name, { name, retryLimit: MOST_LOSSES, retryDelay: 0, expireInSeconds: LEASE })
    } finally {
      // The lock ends with the connection.
      alone.release(true)
    }
  }

  async add(transaction: InTransaction, name: QueueName, jobs: readonly JobData[], after = 0): Promise<void> {
    const executeSql = async (text: string, values: unknown[]) => {
      const { rows } = await transaction.executeQuery(CompiledQuery.raw(text, values))
      return { rows }
    }
    const startAfter = after > 0 ? { startAfter: dueIn(after) } : {}
    for (let from = 0; from < jobs.length; from += JOBS_A_STATEMENT)
      await this.boss.insert(
        jobs.slice(from, from + JOBS_A_STATEMENT).map((data) => ({ name, data, ...startAfter })),
        { db: { executeSql } },
      )
  }

  async take(name: QueueName, most: number): Promise<TakenJob[]> {
    const jobs = await this.boss.fetch<JobData>(name, { batchSize: most, includeMetadata: true, priority: false })
    return jobs.map(({ id, data: { [TAKEN]: taken, ...data }, retryCount }) => ({
      id,
      data,
      attempt: Number(taken ?? 0) + retryCount + 1,
    }))
  }

  async done(name: QueueName, ids: readonly string[]): Promise<void> {
    await this.boss.deleteJob(name, [...ids])
  }

  async again(name: QueueName, { id, data, attempt }: TakenJob, after: number): Promise<void> {
    await this.boss.insert([{ name, data: { ...data, [TAKEN]: attempt }, startAfter: dueIn(after) }])
    await this.boss.deleteJob(name, [id])
  }

  async depth(name: QueueName): Promise<{ waiting: number; oldest: number }> {
    const { rows } = await this.pool.query<{ waiting: string; oldest: string | null }>(
      `SELECT count(*) AS waiting, extract(epoch FROM now() - min(start_after)) AS oldest
       FROM ${SCHEMA}.job WHERE name = $1 AND state < 'active' AND start_after <= now()`,
      [name],
    )
    return { waiting: Number(rows[0]?.waiting ?? 0), oldest: Number(rows[0]?.oldest ?? 0) }
  }

  async close(): Promise<void> {
    await this.boss.stop({ graceful: false, close: false })
  }
}

const dueIn = (seconds: number): string => new Date(Date.now() + seconds * MILLISECONDS).toISOString()
