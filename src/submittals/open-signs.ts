import type { Database } from './store/tables.js'

/** Signs that wait for their reports, of all organisations. */
export async function openSigns(db: Database): Promise<number> {
  const { open } = await db
    .selectFrom('submittals')
    .select((e) => e.fn.sum<number | string | null>('open').as('open'))
    .where('open', '>', 0)
    .executeTakeFirstOrThrow()
  return Number(open ?? 0)
}
