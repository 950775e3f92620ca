import { AtLimit, NotKept, NotNow, within, type Actor, type Keeping } from '../keeping.js'
import { newId, now } from '../store/ids.js'
import type { DeliveryRow, EndpointRow, InTransaction } from '../store/tables.js'
import { TEST_KIND, type EventKind } from './events.js'
import { newSecret, rotated, type Secret } from './signature.js'
import { tellOne } from './tell.js'

/** The addresses of an organisation that are told of what happens. */

export const MOST_ENDPOINTS = 20
/** Of each address, the last ones. */
const DELIVERIES_SHOWN = 20

/** Done in the same transaction, as the last thing. @param secret only where there is a new one */
export type WithEndpoint = (transaction: InTransaction, endpoint: EndpointRow, secret: string) => Promise<void>

/** @throws {AtLimit} when the organisation has as many as it may have */
export async function addEndpoint(
  { store }: Keeping,
  { organisation }: Actor,
  url: string,
  events: readonly EventKind[] | null,
  alongside: WithEndpoint,
): Promise<void> {
  await store.db.transaction().execute(async (transaction) => {
    const { count } = await transaction
      .selectFrom('endpoints')
      .select((e) => e.fn.countAll<number>().as('count'))
      .where('organisation', '=', organisation)
      .executeTakeFirstOrThrow()
    if (Number(count) >= MOST_ENDPOINTS)
      throw new AtLimit('There are as many addresses as there may be; delete one.', MOST_ENDPOINTS, Number(count) + 1)
    const secret = newSecret()
    const row: EndpointRow = {
      id: newId('end'),
      organisation,
      url,
      events: events && JSON.stringify(events),
      secrets: JSON.stringify([{ secret, until: null }] satisfies Secret[]),
      created_at: now(),
      failing_since: null,
      disabled_at: null,
      disabled_why: null,
    }
    await transaction.insertInto('endpoints').values(row).execute()
    await alongside(transaction, row, secret)
  })
}

/** The oldest first. */
export const listEndpoints = ({ store }: Keeping, { organisation }: Actor): Promise<EndpointRow[]> =>
  store.db.selectFrom('endpoints').selectAll().where('organisation', '=', organisation).orderBy('id').execute()

/** @throws {NotKept} */
export async function ownEndpoint({ store }: Keeping, { organisation }: Actor, id: string): Promise<EndpointRow> {
  const row = await store.db.selectFrom('endpoints').selectAll().where('id', '=', id).executeTakeFirst()
  if (row?.organisation !== organisation) throw new NotKept()
  return row
}

/** What was last sent to it, the latest first. */
export const lastDeliveries = ({ store }: Keeping, endpoint: string): Promise<DeliveryRow[]> =>
  store.db
    .selectFrom('deliveries')
    .selectAll()
    .where('endpoint', '=', endpoint)
    .orderBy('id', 'desc')
    .limit(DELIVERIES_SHOWN)
    .execute()

/** Gives it a new secret; the one before signs for a while too. @throws {NotKept} */
export async function rotateSecret(
  keeping: Keeping,
  { organisation }: Actor,
  id: string,
  alongside: WithEndpoint,
): Promise<void> {
  await keeping.store.db.transaction().execute(async (transaction) => {
    // Taken first, so that two rotations come one after the other.
    const row = await transaction
      .updateTable('endpoints')
      .set((e) => ({ id: e.ref('id') }))
      .where('id', '=', id)
      .where('organisation', '=', organisation)
      .returningAll()
      .executeTakeFirst()
    if (!row) throw new NotKept()
    const secret = newSecret()
    const secrets = JSON.stringify(rotated(JSON.parse(row.secrets) as Secret[], secret, new Date()))
    await transaction.updateTable('endpoints').set({ secrets }).where('id', '=', id).execute()
    await alongside(transaction, { ...row, secrets }, secret)
  })
}

/** Sends it a message to try it. @throws {NotKept} @throws {NotNow} when nothing is sent to it any more */
export async function testEndpoint(
  keeping: Keeping,
  actor: Actor,
  id: string,
  alongside: (transaction: InTransaction, delivery: DeliveryRow) => Promise<void>,
): Promise<void> {
  const { store, queue, awaken } = keeping
  await store.db.transaction().execute(async (transaction) => {
    const endpoint = await ownEndpoint(within(keeping, transaction), actor, id)
    if (endpoint.disabled_at !== null)
      throw new NotNow('Nothing is sent to this address any more; delete it and make it anew.')
    const delivery = await tellOne(transaction, queue, endpoint, TEST_KIND, { webhook: id })
    await alongside(transaction, delivery)
  })
  awaken()
}

/** With all that was sent to it. @throws {NotKept} */
export async function removeEndpoint(keeping: Keeping, actor: Actor, id: string): Promise<void> {
  await ownEndpoint(keeping, actor, id)
  await keeping.store.db.transaction().execute(async (transaction) => {
    await transaction.deleteFrom('endpoints').where('id', '=', id).execute()
    await transaction.deleteFrom('deliveries').where('endpoint', '=', id).execute()
  })
}
