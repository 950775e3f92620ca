import type { Keeping } from '../keeping.js'
import { now } from '../store/ids.js'
import { holderOf, isLive, type Holder } from './holder.js'
import { digestOf, isSecretOf, newSecret, readToken } from './token.js'

/** Sessions of people who signed in to the page with a key. Like keys, they are kept as digests only. */

/** Milliseconds: a working day. */
export const SESSION_LENGTH = 12 * 60 * 60 * 1000

/** @returns the token of a new session, which is shown to the browser alone; undefined when the key does not work */
export async function openSession({ store }: Keeping, key: string): Promise<string | undefined> {
  const read = readToken(key)
  const row = read && (await store.db.selectFrom('keys').selectAll().where('id', '=', read.id).executeTakeFirst())
  if (!row || !isSecretOf(read.secret, row.digest) || !isLive(row)) return undefined
  const token = newSecret()
  const expires_at = new Date(Date.now() + SESSION_LENGTH).toISOString()
  await store.db.deleteFrom('sessions').where('expires_at', '<=', now()).execute()
  await store.db
    .insertInto('sessions')
    .values({ digest: digestOf(token), key: row.id, created_at: now(), expires_at })
    .execute()
  return token
}

/** @returns undefined when there is no such session any more, or its key no longer works */
export async function sessionHolder({ store }: Keeping, token: string): Promise<Holder | undefined> {
  const row = await store.db
    .selectFrom('sessions')
    .innerJoin('keys', 'keys.id', 'sessions.key')
    .select(['keys.id', 'keys.organisation', 'keys.label', 'keys.scopes', 'keys.rate'])
    .select(['keys.revoked_at', 'keys.expires_at'])
    .where('sessions.digest', '=', digestOf(token))
    .where('sessions.expires_at', '>', now())
    .executeTakeFirst()
  return row && isLive(row) ? holderOf(row) : undefined
}

export async function closeSession({ store }: Keeping, token: string): Promise<void> {
  await store.db.deleteFrom('sessions').where('digest', '=', digestOf(token)).execute()
}
