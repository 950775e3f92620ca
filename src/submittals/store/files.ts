import { createHash, randomUUID } from 'node:crypto'
import { existsSync, rmSync, statSync } from 'node:fs'
import { mkdir, open, readdir, readFile, rename, rm } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { setImmediate } from 'node:timers/promises'
import { now } from './ids.js'
import type { Database } from './tables.js'

/**
 * Files by the digest of their content (SHA-256, FIPS 180-4): a file that is sent twice is kept once, and none is ever changed.
 * All of them lie in the database where several processes share it. Beside the embedded one, large files lie in a folder:
 * SQLite holds small ones faster than a file system does (sqlite.org, “35% Faster Than The Filesystem”).
 */
export class Files {
  constructor(
    private readonly db: Database,
    /** Where large files lie; none: in the database. */
    private readonly folder?: string,
  ) {}

  /**
   * Keeps the contents; when this is done they outlive the process.
   * @returns their digests, hexadecimal, in the same order
   */
  async keep(contents: readonly Uint8Array[]): Promise<string[]> {
    const digests = await digestsOf(contents)
    const release = this.hold(digests)
    try {
      await this.keepMissing(new Map(digests.map((digest, i) => [digest, contents[i]])))
    } finally {
      release()
    }
    return digests
  }

  private async keepMissing(missing: Map<string, Uint8Array>): Promise<void> {
    for (const known of await this.known([...missing.keys()])) missing.delete(known)
    let rows: { digest: string; size: number; content: Buffer | null; created_at: string }[] = []
    let bytes = 0
    for (const [digest, content] of missing) {
      const large = this.folder !== undefined && content.length > LARGEST_IN_DATABASE
      if (large) await write(this.pathOf(digest), content)
      rows.push({ digest, size: content.length, content: large ? null : Buffer.from(content), created_at: now() })
      bytes += large ? 0 : content.length
      if (rows.length < ROWS_A_STATEMENT && bytes < BYTES_A_STATEMENT) continue
      await this.insert(rows)
      rows = []
      bytes = 0
    }
    if (rows.length > 0) await this.insert(rows)
  }

  /** Files that are on their way into the database, and how often. */
  private readonly beingKept = new Map<string, number>()

  private hold(digests: readonly string[]): () => void {
    for (const digest of digests) this.beingKept.set(digest, (this.beingKept.get(digest) ?? 0) + 1)
    return () => {
      for (const digest of digests) {
        const others = (this.beingKept.get(digest) ?? 1) - 1
        if (others > 0) this.beingKept.set(digest, others)
        else this.beingKept.delete(digest)
      }
    }
  }

  /** @returns the content, or undefined when none has this digest */
  async read(digest: string): Promise<Uint8Array | undefined> {
    const row = await this.db.selectFrom('files').select('content').where('digest', '=', digest).executeTakeFirst()
    if (!row) return undefined
    return row.content ?? readFile(this.pathOf(digest))
  }

  /**
   * Takes files off the disk that the database does not know, and what a process left half written.
   * @param before files younger than this stay: they may be on their way into the database @returns how many
   */
  async removeOrphans(before: Date): Promise<number> {
    if (this.folder === undefined || !existsSync(this.folder)) return 0
    let count = 0
    for (const two of await readdir(this.folder)) {
      const names = (await readdir(join(this.folder, two))).filter((name) => this.isOld(join(two, name), before))
      const digests = names.filter((name) => !name.endsWith(UNFINISHED)).map((name) => two + name)
      const known = new Set(await this.among(digests))
      // No other step of this process comes between the look and the deed.
      for (const name of names)
        if (!known.has(two + name) && !this.beingKept.has(two + name) && this.isOld(join(two, name), before)) {
          rmSync(join(this.folder, two, name), { force: true })
          count++
        }
    }
    return count
  }

  private isOld(name: string, before: Date): boolean {
    const found = statSync(join(this.folder ?? '', name), { throwIfNoEntry: false })
    return found !== undefined && found.mtime < before
  }

  private async among(digests: string[]): Promise<string[]> {
    if (digests.length === 0) return []
    const rows = await this.db.selectFrom('files').select('digest').where('digest', 'in', digests).execute()
    return rows.map(({ digest }) => digest)
  }

  private async known(digests: string[]): Promise<string[]> {
    const found: string[] = []
    for (let from = 0; from < digests.length; from += ROWS_A_STATEMENT) {
      const some = digests.slice(from, from + ROWS_A_STATEMENT)
      // As new again, so that it is not swept away before something refers to it.
      const rows = await this.db
        .updateTable('files')
        .set({ created_at: now() })
        .where('digest', 'in', some)
        .returning('digest')
        .execute()
      found.push(...rows.map(({ digest }) => digest))
    }
    return found
  }

  private async insert(rows: { digest: string; size: number; content: Buffer | null; created_at: string }[]) {
    await this.db
      .insertInto('files')
      .values(rows)
      .onConflict((c) => c.column('digest').doNothing())
      .execute()
  }

  private pathOf(digest: string): string {
    return pathOfFile(this.folder ?? '', digest)
  }
}

export const pathOfFile = (folder: string, digest: string): string => join(folder, digest.slice(0, 2), digest.slice(2))

const LARGEST_IN_DATABASE = 64 * 1024
const ROWS_A_STATEMENT = 200
const BYTES_A_STATEMENT = 4 * 1024 * 1024

/** What is not whole yet. */
const UNFINISHED = '.part'
/** Bytes that are hashed in one go. */
const BYTES_A_GO = 4 * 1024 * 1024

/** A large upload must not hold up what else this process answers. */
async function digestsOf(contents: readonly Uint8Array[]): Promise<string[]> {
  const digests: string[] = []
  let bytes = 0
  for (const content of contents) {
    digests.push(createHash('sha256').update(content).digest('hex'))
    bytes += content.length
    if (bytes < BYTES_A_GO) continue
    bytes = 0
    await setImmediate()
  }
  return digests
}

/** Whole or not at all, and on the disk before it has its name. */
async function write(path: string, content: Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true })
  const unnamed = `${path}.${randomUUID()}${UNFINISHED}`
  try {
    const file = await open(unnamed, 'wx')
    try {
      await file.writeFile(content)
      await file.datasync()
    } finally {
      await file.close()
    }
    await rename(unnamed, path)
    await syncFolder(dirname(path))
  } catch (error) {
    await rm(unnamed, { force: true })
    throw error
  }
}

async function syncFolder(path: string): Promise<void> {
  const folder = await open(path)
  try {
    await folder.sync()
  } finally {
    await folder.close()
  }
}
