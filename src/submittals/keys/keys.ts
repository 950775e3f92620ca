import { AtLimit, NotKept } from '../keeping.js'
import { now } from '../store/ids.js'
import type { Database, KeyRow } from '../store/tables.js'
import { SCOPES, type Scope } from './scopes.js'
import { digestOf, newKeyId, newSecret, tokenOf } from './token.js'

/** Making, listing and revoking the API keys of an organisation. Rotation is a second key beside the first. */

export interface NewKey {
  label: string
  scopes: readonly Scope[]
  /** The last day in UTC on which it works, as YYYY-MM-DD; null: until it is revoked. */
  expires: string | null
  /** Requests a minute; null: as the service is set. */
  rate: number | null
}

/** Keys of one organisation that work at the same time. */
export const MOST_KEYS = 100

const END_OF_DAY = 'T23:59:59.999Z'

/**
 * @returns the row, and the key itself, which is nowhere kept and cannot be shown again
 * @throws {AtLimit} when the organisation has as many keys as it may
 */
export async function createKey(
  db: Database,
  organisation: string,
  { label, scopes, expires, rate }: NewKey,
): Promise<{ row: KeyRow; token: string }> {
  const secret = newSecret()
  const row: KeyRow = {
    id: newKeyId(),
    organisation,
    label: label.trim(),
    digest: digestOf(secret),
    scopes: JSON.stringify(SCOPES.filter((scope) => scopes.includes(scope))),
    rate,
    created_at: now(),
    expires_at: expires === null ? null : `${expires}${END_OF_DAY}`,
    revoked_at: null,
    last_used_at: null,
  }
  const live = await liveKeys(db, organisation)
  if (live >= MOST_KEYS) throw new AtLimit('The organisation has as many keys as it may.', MOST_KEYS, live + 1)
  await db.insertInto('keys').values(row).execute()
  return { row, token: tokenOf(row.id, secret) }
}

async function liveKeys(db: Database, organisation: string): Promise<number> {
  const { count } = await db
    .selectFrom('keys')
    .select((e) => e.fn.countAll<number>().as('count'))
    .where('organisation', '=', organisation)
    .where('revoked_at', 'is', null)
    .where((e) => e.or([e('expires_at', 'is', null), e('expires_at', '>', now())]))
    .executeTakeFirstOrThrow()
  return Number(count)
}

/** All keys of an organisation, or of all of them, the oldest first; revoked and ended ones too. */
export const listKeys = (db: Database, organisation?: string): Promise<KeyRow[]> =>
  db
    .selectFrom('keys')
    .selectAll()
    .$if(organisation !== undefined, (q) => q.where('organisation', '=', organisation ?? ''))
    .orderBy('created_at')
    .orderBy('id')
    .execute()

/**
 * Ends a key; sessions that were opened with it end too. Doing it twice changes nothing.
 * @param organisation whose key it must be; without one, anybody's
 * @throws {NotKept}
 */
export async function revokeKey(db: Database, id: string, organisation?: string): Promise<void> {
  const known = await db.selectFrom('keys').select('organisation').where('id', '=', id).executeTakeFirst()
  if (!known || (organisation !== undefined && known.organisation !== organisation)) throw new NotKept()
  await db.updateTable('keys').set({ revoked_at: now() }).where('id', '=', id).where('revoked_at', 'is', null).execute()
}
