import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import BetterSqlite from 'better-sqlite3'
import { Kysely, SqliteDialect, SqliteDriver, type DatabaseConnection, type Driver } from 'kysely'
import type { Tables } from './tables.js'

/** The embedded store: one SQLite file, and a folder of large files beside it. One process serves it. */

export const FILE_NAME = 'fingertrue.sqlite'
export const FILES_FOLDER = 'files'
const LOCK_NAME = 'in-use.sqlite'
/** Milliseconds for which a statement waits while another process (a command, a backup) writes. */
const BUSY_TIMEOUT = 5000

/** @param folder absent: in memory, gone with the process @throws when it cannot be written */
export function openFile(folder: string | undefined): BetterSqlite.Database {
  if (folder !== undefined) mkdirSync(folder, { recursive: true })
  const file = new BetterSqlite(folder === undefined ? ':memory:' : join(folder, FILE_NAME), { timeout: BUSY_TIMEOUT })
  file.pragma('journal_mode = WAL')
  // What is acknowledged is on the disk, a power cut included.
  file.pragma('synchronous = FULL')
  file.pragma('foreign_keys = ON')
  return file
}

/** Thrown where a second process would serve the same folder. */
export class InUse extends Error {
  constructor(folder: string) {
    super(`The folder ${folder} is in use by another process; several processes share a PostgreSQL (DATABASE_URL).`)
  }
}

/**
 * Holds the folder for this process, by a lock of the operating system, which ends with the process however that ends.
 * @returns what gives it back @throws {InUse}
 */
export function holdFolder(folder: string): () => void {
  mkdirSync(folder, { recursive: true })
  const lock = new BetterSqlite(join(folder, LOCK_NAME), { timeout: 0 })
  try {
    lock.exec('BEGIN EXCLUSIVE')
  } catch (error) {
    lock.close()
    throw error instanceof BetterSqlite.SqliteError && error.code === 'SQLITE_BUSY' ? new InUse(folder) : error
  }
  return () => lock.close()
}

export const databaseOf = (file: BetterSqlite.Database): Kysely<Tables> =>
  new Kysely<Tables>({ dialect: new OwnDialect(file) })

class OwnDialect extends SqliteDialect {
  constructor(private readonly file: BetterSqlite.Database) {
    super({ database: file })
  }

  override createDriver(): Driver {
    return new OwnDriver(this.file)
  }
}

/**
 * SQLite takes a transaction back by itself when the disk is full or cannot be written (sqlite.org, “Transactions”, 2.1). To
 * take it back a second time is an error, which would hide what was wrong.
 */
class OwnDriver extends SqliteDriver {
  constructor(private readonly file: BetterSqlite.Database) {
    super({ database: file })
  }

  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.file.inTransaction) await super.rollbackTransaction(connection)
  }
}
