import { createHash } from 'node:crypto'
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  openSync,
  closeSync,
  fsyncSync,
  readFileSync,
  renameSync,
  rmSync,
} from 'node:fs'
import { dirname, join } from 'node:path'
import BetterSqlite from 'better-sqlite3'
import { provedHistory } from '../history.js'
import { pathOfFile } from './files.js'
import { databaseOf, FILE_NAME, FILES_FOLDER, holdFolder } from './sqlite.js'

/**
 * Backups of the embedded store. A backup is one SQLite file: a copy of the database as it was at one moment, made while the
 * service runs (sqlite.org, “SQLite Backup API”), with the files that lie beside the database taken into it.
 */

/** Thrown where a backup is not made or not put back; the message says why. */
export class BackupRefused extends Error {}

export interface BackedUp {
  submittals: number
  files: number
}

/**
 * @param folder where the service keeps what it keeps
 * @param target is written whole or not at all
 * @throws {BackupRefused} when the target is there already, the folder holds nothing, or what it holds is damaged
 */
export async function backUp(folder: string, target: string): Promise<BackedUp> {
  const source = join(folder, FILE_NAME)
  if (!existsSync(source)) throw new BackupRefused(`There is nothing to back up in ${folder}.`)
  if (existsSync(target)) throw new BackupRefused(`${target} is there already and is not overwritten.`)
  return written(target, async (unfinished) => {
    const from = new BetterSqlite(source, { readonly: true })
    try {
      await from.backup(unfinished)
    } finally {
      from.close()
    }
    const to = new BetterSqlite(unfinished)
    try {
      to.pragma('journal_mode = DELETE')
      takeFilesIn(to, join(folder, FILES_FOLDER))
      return await verify(to, unfinished)
    } finally {
      to.close()
    }
  })
}

/**
 * Puts a backup into a folder in which nothing is kept, and where no service runs.
 * @throws {BackupRefused} when something is kept there, or the backup is damaged @throws {InUse}
 */
export async function restore(folder: string, backup: string): Promise<BackedUp> {
  const target = join(folder, FILE_NAME)
  if (!existsSync(backup)) throw new BackupRefused(`There is no ${backup}.`)
  const letGo = holdFolder(folder)
  try {
    if (existsSync(target)) throw new BackupRefused(`Something is kept in ${folder} already; it is not overwritten.`)
    return await written(target, async (unfinished) => {
      copyFileSync(backup, unfinished)
      const copy = open(unfinished, backup)
      try {
        return await verify(copy, backup)
      } finally {
        copy.close()
      }
    })
  } finally {
    letGo()
  }
}

/** Under another name until it is whole and on the disk. */
async function written<T>(target: string, write: (unfinished: string) => Promise<T>): Promise<T> {
  const unfinished = `${target}.part`
  mkdirSync(dirname(target), { recursive: true })
  rmSync(unfinished, { force: true })
  try {
    const done = await write(unfinished)
    sync(unfinished)
    renameSync(unfinished, target)
    sync(dirname(target))
    return done
  } catch (error) {
    rmSync(unfinished, { force: true })
    throw error
  }
}

function sync(path: string): void {
  const opened = openSync(path, 'r')
  fsyncSync(opened)
  closeSync(opened)
}

function open(path: string, name: string): BetterSqlite.Database {
  try {
    return new BetterSqlite(path)
  } catch {
    throw new BackupRefused(`${name} is no backup.`)
  }
}

/** What nothing refers to may have been swept from the disk since the copy was made; it is left out. */
function takeFilesIn(copy: BetterSqlite.Database, files: string): void {
  const put = copy.prepare('UPDATE files SET content = ? WHERE digest = ?')
  const drop = copy.prepare(
    'DELETE FROM files WHERE digest = ? AND digest NOT IN (SELECT digest FROM uploads) AND digest NOT IN (SELECT drawing FROM signs WHERE drawing IS NOT NULL)',
  )
  const outside = copy.prepare<[], { digest: string }>('SELECT digest FROM files WHERE content IS NULL').all()
  for (const { digest } of outside) {
    const path = pathOfFile(files, digest)
    if (existsSync(path)) put.run(readFileSync(path), digest)
    else if (drop.run(digest).changes === 0) throw new BackupRefused(`The file ${digest} of a submittal is missing.`)
  }
}

/** Everything that can be computed anew: the database's own check, the digest of every file, every history. */
async function verify(file: BetterSqlite.Database, name: string): Promise<BackedUp> {
  if (!isWhole(file)) throw new BackupRefused(`${name} is damaged, or is no backup.`)
  let files = 0
  const all = file.prepare<[], { digest: string; content: Buffer | null }>('SELECT digest, content FROM files')
  for (const { digest, content } of all.iterate()) {
    if (content === null || createHash('sha256').update(content).digest('hex') !== digest)
      throw new BackupRefused(`${name} is damaged: the file ${digest} is not what it was.`)
    files++
  }
  const db = databaseOf(file)
  const submittals = await db.selectFrom('submittals').select(['id', 'event_count', 'event_head']).execute()
  for (const submittal of submittals) {
    const { intact, brokenAt } = await provedHistory(db, submittal)
    if (!intact)
      throw new BackupRefused(
        `${name} is damaged: event ${brokenAt} of the submittal ${submittal.id} is not what it was.`,
      )
  }
  return { submittals: submittals.length, files }
}

function isWhole(file: BetterSqlite.Database): boolean {
  try {
    const rows = file.pragma('foreign_key_check') as unknown[]
    return (
      file.pragma('integrity_check', { simple: true }) === 'ok' &&
      rows.length === 0 &&
      file.prepare('SELECT id FROM submittals').all().length >= 0
    )
  } catch (error) {
    if (error instanceof BetterSqlite.SqliteError) return false
    throw error
  }
}
