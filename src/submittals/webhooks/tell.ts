import type { Queue } from '../queue/queue.js'
import { newId } from '../store/ids.js'
import type { DeliveryRow, EndpointRow, InTransaction } from '../store/tables.js'
import type { EventKind, MessageKind } from './events.js'

/** Messages are kept, and their sending queued, in the transaction of what they tell: none is sent of what was not kept. */

/** Tells every address of the organisation that asked for such news. */
export async function tell(
  transaction: InTransaction,
  queue: Queue,
  organisation: string,
  kind: EventKind,
  data: object,
): Promise<void> {
  const all = await transaction
    .selectFrom('endpoints')
    .selectAll()
    .where('organisation', '=', organisation)
    .where('disabled_at', 'is', null)
    .execute()
  const asked = all.filter(({ events }) => events === null || (JSON.parse(events) as string[]).includes(kind))
  await put(transaction, queue, asked, kind, data)
}

/** Tells one address. */
export async function tellOne(
  transaction: InTransaction,
  queue: Queue,
  endpoint: EndpointRow,
  kind: MessageKind,
  data: object,
): Promise<DeliveryRow> {
  const [row] = await put(transaction, queue, [endpoint], kind, data)
  if (!row) throw new Error('a message to one address was not made')
  return row
}

async function put(
  transaction: InTransaction,
  queue: Queue,
  endpoints: readonly EndpointRow[],
  kind: MessageKind,
  data: object,
): Promise<DeliveryRow[]> {
  if (endpoints.length === 0) return []
  const time = new Date().toISOString()
  const body = JSON.stringify({ type: kind, timestamp: time, data })
  const rows = endpoints.map(({ id: endpoint }): DeliveryRow => ({
    id: newId('msg'),
    endpoint,
    kind,
    body,
    state: 'waiting',
    attempts: 0,
    last_status: null,
    last_error: null,
    created_at: time,
    updated_at: time,
  }))
  await transaction.insertInto('deliveries').values(rows).execute()
  await queue.add(
    transaction,
    'notifications',
    rows.map(({ id }) => ({ delivery: id })),
  )
  return rows
}
