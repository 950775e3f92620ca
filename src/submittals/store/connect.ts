import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import BetterSqlite from 'better-sqlite3'
import { Kysely, Migrator, PostgresDialect, SqliteDialect } from 'kysely'
import pg from 'pg'
import { Files } from './files.js'
import { createTables } from './first-migration.js'
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

const FILE_NAME = 'fingertrue.sqlite'
const FILES_FOLDER = 'files'
/** Milliseconds for which a statement waits while another process (a command, a backup) writes. */
const BUSY_TIMEOUT = 5000
const MOST_CONNECTIONS = 10
/** Milliseconds after which a database that does not answer counts as gone. */
const CONNECTION_TIMEOUT = 3000

/**
 * Opens the place and brings its tables up to date.
 * @param place none: everything is in memory and gone with the process
 * @throws when it cannot be reached or written
 */
export async function openStore(place: Place | undefined, onError: (error: Error) => void): Promise<Store> {
  const inPostgres = place !== undefined && 'url' in place
  const store = inPostgres ? openPostgres(place.url, onError) : openSqlite(place?.folder)
  try {
    await migrate(store.db, inPostgres ? 'bytea' : 'blob')
  } catch (error) {
    await store.close()
    throw error
  }
  return store
}

function openSqlite(folder: string | undefined): Store {
  const files = folder === undefined ? undefined : join(folder, FILES_FOLDER)
  if (files !== undefined) mkdirSync(files, { recursive: true })
  const file = new BetterSqlite(folder === undefined ? ':memory:' : join(folder, FILE_NAME), { timeout: BUSY_TIMEOUT })
  file.pragma('journal_mode = WAL')
  // What is acknowledged is on the disk, a power cut included.
  file.pragma('synchronous = FULL')
  file.pragma('foreign_keys = ON')
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: file }) })
  return { db, files: new Files(db, files), pool: undefined, close: () => db.destroy() }
}

function openPostgres(url: string, onError: (error: Error) => void): Store {
  const pool = new pg.Pool({
    connectionString: url,
    max: MOST_CONNECTIONS,
    connectionTimeoutMillis: CONNECTION_TIMEOUT,
    keepAlive: true,
  })
  // A connection that breaks while idle is replaced; without a listener it would end the process.
  pool.on('error', onError)
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
