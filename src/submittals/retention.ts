import { REPLAY_HOURS } from './replays.js'
import type { Store } from './store/connect.js'

/** What is kept no longer: by the settings of whoever runs the service, and what nothing refers to any more. */

export interface Retention {
  /** Days after its last change for which a submittal is kept with all that belongs to it; absent: until it is deleted. */
  submittals?: number | undefined
  /** Days for which the files of an upload are kept as they came; absent: as long as the submittal. */
  uploads?: number | undefined
}

export interface Swept {
  submittals: number
  uploads: number
  files: number
}

/** Hours for which content stays that nothing refers to: an upload that is just being kept has no other hold on it. */
const UNREFERENCED_HOURS = 24
/** Days for which it can be seen what became of a notification. */
const DELIVERY_DAYS = 30
/** Rows that one statement deletes, so that none holds up the others for long. */
const A_STATEMENT = 200
const HOUR = 3_600_000
const DAY = 24 * HOUR
/** The number of the lock under which one process sweeps a shared database. */
const SWEEPING = 6_011_967

/**
 * Deletes what need not be kept at this time. Submittals that wait for reports stay.
 * @returns how many went; undefined when another process is at it
 */
export async function sweep(store: Store, retention: Retention, time: Date): Promise<Swept | undefined> {
  return alone(store, async () => {
    const before = (milliseconds: number) => new Date(time.getTime() - milliseconds).toISOString()
    const { db } = store
    const submittals =
      retention.submittals === undefined ? 0 : await sweepSubmittals(store, before(retention.submittals * DAY))
    const uploads = retention.uploads === undefined ? 0 : await sweepUploads(store, before(retention.uploads * DAY))
    await db
      .deleteFrom('replays')
      .where('created_at', '<', before(REPLAY_HOURS * HOUR))
      .execute()
    await db
      .deleteFrom('deliveries')
      .where('state', '<>', 'waiting')
      .where('updated_at', '<', before(DELIVERY_DAYS * DAY))
      .execute()
    await db.deleteFrom('sessions').where('expires_at', '<', before(0)).execute()
    const unreferenced = new Date(time.getTime() - UNREFERENCED_HOURS * HOUR)
    const rows = await sweepFiles(store, unreferenced.toISOString())
    return { submittals, uploads, files: rows + (await store.files.removeOrphans(unreferenced)) }
  })
}

/** One after the other, each as it is then: one that was changed a moment ago stays. */
async function sweepSubmittals({ db }: Store, before: string): Promise<number> {
  const old = await db
    .selectFrom('submittals')
    .select('id')
    .where('updated_at', '<', before)
    .where('open', '=', 0)
    .execute()
  let count = 0
  for (const { id } of old) {
    const { numDeletedRows } = await db
      .deleteFrom('submittals')
      .where('id', '=', id)
      .where('updated_at', '<', before)
      .where('open', '=', 0)
      .executeTakeFirst()
    count += Number(numDeletedRows)
  }
  return count
}

/** Names, sizes and digests of what was uploaded stay in the history. */
async function sweepUploads({ db }: Store, before: string): Promise<number> {
  const { numDeletedRows } = await db.deleteFrom('uploads').where('at', '<', before).executeTakeFirst()
  return Number(numDeletedRows)
}

async function sweepFiles({ db }: Store, before: string): Promise<number> {
  const unreferenced = db
    .selectFrom('files as old')
    .leftJoin('uploads', 'uploads.digest', 'old.digest')
    .leftJoin('signs', 'signs.drawing', 'old.digest')
    .select('old.digest')
    .where('old.created_at', '<', before)
    .where('uploads.id', 'is', null)
    .where('signs.id', 'is', null)
    .limit(A_STATEMENT)
  let count = 0
  for (;;) {
    const { numDeletedRows } = await db
      .deleteFrom('files')
      .where('digest', 'in', unreferenced)
      // As it is when it is deleted: content that is sent again in this moment is as new.
      .where('created_at', '<', before)
      .executeTakeFirst()
    count += Number(numDeletedRows)
    if (numDeletedRows === 0n) return count
  }
}

/** In one process at a time. The lock of a shared database ends with its connection, however the process ends. */
async function alone<T>({ pool }: Store, work: () => Promise<T>): Promise<T | undefined> {
  if (!pool) return work()
  const connection = await pool.connect()
  try {
    const { rows } = await connection.query<{ mine: boolean }>('SELECT pg_try_advisory_lock($1) AS mine', [SWEEPING])
    return rows[0]?.mine ? await work() : undefined
  } finally {
    connection.release(true)
  }
}
