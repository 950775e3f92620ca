import { setTimeout as wait } from 'node:timers/promises'
import { sql } from 'kysely'
import type { Store } from './connect.js'

/** Milliseconds after which a database that says nothing counts as one that is away. */
const PATIENCE = 2000

/** Whether the store answers now. */
export async function answers({ db }: Store): Promise<boolean> {
  const asked = sql`SELECT 1`.execute(db).then(
    () => true,
    () => false,
  )
  return Promise.race([asked, wait(PATIENCE, false, { ref: false })])
}
