import { sql } from 'kysely'
import { whenCancelled } from './ended.js'
import { append, takeSubmittal } from './history.js'
import { NotKept, NotNow, type Actor, type Keeping } from './keeping.js'
import type { Database, SignRow, SubmittalRow } from './store/tables.js'

/** Reading, cancelling and deleting whole submittals. */

export { verdictsOf } from './verdicts.js'

export interface SubmittalPage {
  rows: SubmittalRow[]
  /** What to ask for next; null at the end. */
  next: string | null
}

/** The organisation's submittals, the newest first. @param before a cursor of an earlier page */
export async function listSubmittals(
  { store }: Keeping,
  { organisation }: Actor,
  most: number,
  before?: string,
): Promise<SubmittalPage> {
  const rows = await store.db
    .selectFrom('submittals')
    .selectAll()
    .where('organisation', '=', organisation)
    // Ids begin with the time at which they were made.
    .$if(before !== undefined, (q) => q.where('id', '<', before ?? ''))
    .orderBy('id', 'desc')
    .limit(most + 1)
    .execute()
  const shown = rows.slice(0, most)
  return { rows: shown, next: rows.length > most ? (shown.at(-1)?.id ?? null) : null }
}

export interface SignFilter {
  verdict?: 'pass' | 'fail' | 'undetermined' | 'not-applicable' | 'none'
  state?: SignRow['state']
  /** Part of a mark, a location or a door. */
  text?: string
}

export interface SignPage {
  rows: SignRow[]
  next: string | null
}

/** Signs of a submittal in the order of the upload. @param after a cursor of an earlier page */
export async function listSigns(
  { store }: Keeping,
  submittal: string,
  most: number,
  after: string | undefined,
  filter: SignFilter,
): Promise<SignPage> {
  const rows = await matching(store.db, submittal, filter)
    .selectAll()
    .$if(after !== undefined, (q) => q.where('position', '>', Number(after)))
    .orderBy('position')
    .limit(most + 1)
    .execute()
  const shown = rows.slice(0, most)
  return { rows: shown, next: rows.length > most ? String(shown.at(-1)?.position) : null }
}

/** The same by the number of the page, with how many signs there are in all. @param page counted from 1 */
export async function numberedSigns(
  { store }: Keeping,
  submittal: string,
  most: number,
  page: number,
  filter: SignFilter,
): Promise<{ rows: SignRow[]; total: number }> {
  const counted = await matching(store.db, submittal, filter)
    .select((e) => e.fn.countAll<number>().as('count'))
    .executeTakeFirst()
  const rows = await matching(store.db, submittal, filter)
    .selectAll()
    .orderBy('position')
    .limit(most)
    .offset((page - 1) * most)
    .execute()
  return { rows, total: Number(counted?.count ?? 0) }
}

function matching(db: Database, submittal: string, { verdict, state, text }: SignFilter) {
  const like = `%${(text ?? '').replace(/[\\%_]/g, '\\$&')}%`
  return db
    .selectFrom('signs')
    .where('submittal', '=', submittal)
    .$if(verdict === 'none', (q) => q.where('verdict', 'is', null))
    .$if(verdict !== undefined && verdict !== 'none', (q) => q.where('verdict', '=', verdict ?? ''))
    .$if(state !== undefined, (q) => q.where('state', '=', state ?? 'done'))
    .$if(text !== undefined && text !== '', (q) =>
      q.where(
        sql<boolean>`(lower(mark) like lower(${like}) escape '\\' or lower(coalesce(location, '')) like lower(${like}) escape '\\'
          or lower(coalesce(door, '')) like lower(${like}) escape '\\')`,
      ),
    )
}

/** Stops what has not been checked yet; reports that are there stay. @throws {NotKept} @throws {NotNow} when all is done */
export async function cancelSubmittal(keeping: Keeping, actor: Actor, id: string): Promise<SubmittalRow> {
  const cancelled = await keeping.store.db.transaction().execute(async (transaction) => {
    const row = await takeSubmittal(transaction, id)
    if (row?.organisation !== actor.organisation) throw new NotKept()
    if (row.state === 'cancelled') return row
    if (row.open === 0) throw new NotNow('Every sign has been checked; there is nothing left to cancel.')
    await transaction
      .updateTable('signs')
      .set({ state: 'cancelled' })
      .where('submittal', '=', id)
      .where('state', '=', 'queued')
      .execute()
    await append(transaction, row, actor.name, [{ kind: 'submittal-cancelled', data: { notChecked: row.open } }])
    const now = await transaction
      .updateTable('submittals')
      .set({ state: 'cancelled', open: 0 })
      .where('id', '=', id)
      .returningAll()
      .executeTakeFirstOrThrow()
    await whenCancelled(keeping, transaction, now)
    return now
  })
  keeping.awaken()
  return cancelled
}

/** Deletes a submittal with all that belongs to it, its history included. @throws {NotKept} */
export async function deleteSubmittal({ store }: Keeping, { organisation }: Actor, id: string): Promise<void> {
  const { numDeletedRows } = await store.db
    .deleteFrom('submittals')
    .where('id', '=', id)
    .where('organisation', '=', organisation)
    .executeTakeFirst()
  if (numDeletedRows === 0n) throw new NotKept()
}
