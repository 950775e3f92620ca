import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { Kysely, Migrator, PostgresDialect } from 'kysely'
import type pg from 'pg'
import { Files } from './files.js'
import { createTables } from './first-migration.js'
import { troubleOf } from './outage.js'
import { databaseOf, FILES_FOLDER, holdFolder, openFile } from './sqlite.js'
import type { Database, Tables } from './tables.js'

/** The two places in which submittals can be kept: one SQLite file with a folder of files, or a PostgreSQL database. */

export type Place = { folder: string } | { url: string }

export interface Store {
  db: Database
  files: Files
  /** PostgreSQL: the connections, which the queue shares. */
  pool: pg.Pool | undefined
  close(): Promise<void>
}

const MOST_CONNECTIONS = 10
/** Milliseconds after which a database that does not answer counts as gone. */
const CONNECTION_TIMEOUT = 3000
/**
 * Milliseconds after which a transaction is taken back whose process says nothing more: a process that was stopped in the middle
 * of one would hold up everybody else for as long as it stands still.
 */
const LONGEST_SILENCE = 10_000
/** Milliseconds for which a statement waits for a row that another transaction holds. */
const LONGEST_WAIT_FOR_A_ROW = 20_000
/** Milliseconds for which a start waits for a database that is not up yet, and between two looks. */
const LONGEST_START = 30_000
const PAUSE = 500

/**
 * Opens the place and brings its tables up to date. A PostgreSQL that cannot be reached is waited for.
 * @param place none: everything is in memory and gone with the process
 * @param beside by a command that writes a row or two while another process serves the same folder
 * @throws when it cannot be reached or written
 */
export async function openStore(
  place: Place | undefined,
  onError: (error: Error) => void,
  beside = false,
): Promise<Store> {
  const inPostgres = place !== undefined && 'url' in place
  const store = inPostgres ? await openPostgres(place.url, onError) : openSqlite(place?.folder, beside)
  const end = Date.now() + LONGEST_START
  for (;;)
    try {
      await migrate(store.db, inPostgres ? 'bytea' : 'blob')
      return store
    } catch (error) {
      if (inPostgres && troubleOf(error) === 'unreachable' && Date.now() < end) {
        await wait(PAUSE)
        continue
      }
      await store.close()
      throw error
    }
}

function openSqlite(folder: string | undefined, beside: boolean): Store {
  const letGo = folder === undefined || beside ? undefined : holdFolder(folder)
  const db = databaseOf(openFile(folder))
  return {
    db,
    files: new Files(db, folder === undefined ? undefined : join(folder, FILES_FOLDER)),
    pool: undefined,
    close: async () => {
      await db.destroy()
      letGo?.()
    },
  }
}

/** Its library is loaded only where it is used. */
async function openPostgres(url: string, onError: (error: Error) => void): Promise<Store> {
  const { default: pg } = await import('pg')
  const pool = new pg.Pool({
    connectionString: url,
    max: MOST_CONNECTIONS,
    connectionTimeoutMillis: CONNECTION_TIMEOUT,
    idle_in_transaction_session_timeout: LONGEST_SILENCE,
    lock_timeout: LONGEST_WAIT_FOR_A_ROW,
    keepAlive: true,
  })
  // A connection that breaks is replaced, whether it is idle or in use; without a listener it would end the process.
  pool.on('error', onError)
  pool.on('connect', (client) => client.on('error', onError))
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) })
  return { db, files: new Files(db), pool, close: () => db.destroy() }
}

/** Forward only: each migration once, in the order of the names. Processes that start together wait for each other. */
async function migrate(db: Database, bytes: 'blob' | 'bytea'): Promise<void> {
  const migrations = { '0001-submittals': { up: (tables: Kysely<unknown>) => createTables(tables, bytes) } }
  const migrator = new Migrator({ db, provider: { getMigrations: () => Promise.resolve(migrations) } })
  const { error } = await migrator.migrateToLatest()
  if (error) throw error instanceof Error ? error : new Error('the tables could not be brought up to date')
}
