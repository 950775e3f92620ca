import { now } from '../store/ids.js'
import type { Database, KeyRow } from '../store/tables.js'
import { holderOf, isLive, type Holder } from './holder.js'
import { isSecretOf, readToken } from './token.js'

/** Seconds for which a process remembers the row of a key: after so long at most, a key revoked elsewhere no longer works. */
export const REMEMBERED_SECONDS = 5

/** Milliseconds between two notes of when a key was last used. */
const NOTED_EVERY = 60_000

/** Tells whose key a token is. Rows are remembered for a moment, so that a busy key is not read anew for each request. */
export class KeyRing {
  private readonly remembered = new Map<string, { row: KeyRow; until: number }>()

  /** @param onError told when the time of last use could not be noted, which must not keep the key from working */
  constructor(
    private readonly db: Database,
    private readonly onError: (error: unknown) => void,
  ) {}

  /** @returns undefined for a token that is none, or is unknown, revoked or past its end: nobody is told which */
  async holder(token: string): Promise<Holder | undefined> {
    const read = readToken(token)
    const row = read && (await this.row(read.id))
    if (!row || !isSecretOf(read.secret, row.digest) || !isLive(row)) return undefined
    await this.noteUse(row)
    return holderOf(row)
  }

  /** From now on the row is read anew: it was changed in this process. */
  forget(id: string): void {
    this.remembered.delete(id)
  }

  private async row(id: string): Promise<KeyRow | undefined> {
    const known = this.remembered.get(id)
    if (known && known.until > performance.now()) return known.row
    const row = await this.db.selectFrom('keys').selectAll().where('id', '=', id).executeTakeFirst()
    if (row) this.remembered.set(id, { row, until: performance.now() + REMEMBERED_SECONDS * 1000 })
    else this.remembered.delete(id)
    return row
  }

  private async noteUse(row: KeyRow): Promise<void> {
    const before = new Date(Date.now() - NOTED_EVERY).toISOString()
    if (row.last_used_at !== null && row.last_used_at > before) return
    row.last_used_at = now()
    await this.db
      .updateTable('keys')
      .set({ last_used_at: row.last_used_at })
      .where('id', '=', row.id)
      .where((e) => e.or([e('last_used_at', 'is', null), e('last_used_at', '<', before)]))
      .execute()
      .catch(this.onError)
  }
}
