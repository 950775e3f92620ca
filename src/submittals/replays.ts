import type { Actor, Keeping } from './keeping.js'
import { now } from './store/ids.js'
import type { Database, InTransaction } from './store/tables.js'

/**
 * Requests that create something once, however often they are sent (draft-ietf-httpapi-idempotency-key-header-07). A key is
 * claimed before the work begins, and the answer is kept in the transaction that creates: a process that dies before has created
 * nothing, one that dies after is answered for by another.
 */

/** Hours for which an answer is given again. */
export const REPLAY_HOURS = 24
/** Seconds after which a claim that came to nothing is another's: longer than any request takes. */
export const CLAIM_SECONDS = 120

const MILLISECONDS = 1000
const SECONDS_AN_HOUR = 3600

export interface KeptAnswer {
  status: number
  headers: Record<string, string>
  /** JSON. */
  body: string
}

export interface Claim {
  organisation: string
  key: string
  /** With the others the name of this claim: whoever took it over has another time. */
  at: string
}

export type Claimed =
  | { claim: Claim }
  | { answer: KeptAnswer }
  /** The key belongs to another request. */
  | 'reused'
  /** The same request is being answered. */
  | 'running'

/** @param digest of the request, so that another one under the same key is told apart */
export async function claimKey(
  { store: { db } }: Keeping,
  { organisation }: Actor,
  key: string,
  digest: string,
): Promise<Claimed> {
  const at = now()
  const row = { organisation, key, digest, status: null, headers: null, body: null, created_at: at }
  const made = await db
    .insertInto('replays')
    .values(row)
    .onConflict((c) => c.columns(['organisation', 'key']).doNothing())
    .returning('key')
    .executeTakeFirst()
  if (made) return { claim: { organisation, key, at } }
  const kept = await db
    .selectFrom('replays')
    .selectAll()
    .where('organisation', '=', organisation)
    .where('key', '=', key)
    .executeTakeFirst()
  // It was given back in between; whoever asks again finds it free.
  if (!kept) return 'running'
  const age = (Date.parse(at) - Date.parse(kept.created_at)) / MILLISECONDS
  if (age > (kept.status === null ? CLAIM_SECONDS : REPLAY_HOURS * SECONDS_AN_HOUR)) {
    const taken = await db
      .updateTable('replays')
      .set(row)
      .where('organisation', '=', organisation)
      .where('key', '=', key)
      .where('created_at', '=', kept.created_at)
      .returning('key')
      .executeTakeFirst()
    return taken ? { claim: { organisation, key, at } } : 'running'
  }
  if (kept.digest !== digest) return 'reused'
  if (kept.status === null) return 'running'
  const headers = JSON.parse(kept.headers ?? '{}') as Record<string, string>
  return { answer: { status: kept.status, headers, body: kept.body ?? 'null' } }
}

/** Keeps the answer with what is created. @returns false when another has taken the claim over: then nothing may be created */
export async function keepAnswer(transaction: InTransaction, claim: Claim, answer: KeptAnswer): Promise<boolean> {
  const { status, headers, body } = answer
  const kept = await transaction
    .updateTable('replays')
    .set({ status, headers: JSON.stringify(headers), body })
    .where('organisation', '=', claim.organisation)
    .where('key', '=', claim.key)
    .where('created_at', '=', claim.at)
    .where('status', 'is', null)
    .returning('key')
    .executeTakeFirst()
  return kept !== undefined
}

/** The request was refused and created nothing: the key is free again. */
export async function giveBack({ store: { db } }: Keeping, claim: Claim): Promise<void> {
  await db
    .deleteFrom('replays')
    .where('organisation', '=', claim.organisation)
    .where('key', '=', claim.key)
    .where('created_at', '=', claim.at)
    .where('status', 'is', null)
    .execute()
}

/** For a store of one process alone, when it starts: whoever claimed is gone. */
export async function forgetClaims(db: Database): Promise<void> {
  await db.deleteFrom('replays').where('status', 'is', null).execute()
}
