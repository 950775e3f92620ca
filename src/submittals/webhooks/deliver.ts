import type { TakenJob } from '../queue/queue.js'
import type { Store } from '../store/connect.js'
import type { DeliveryRow, EndpointRow } from '../store/tables.js'
import { nextAfter } from './schedule.js'
import type { Message, Sent } from './send.js'
import { signed, type Secret } from './signature.js'

/** One job of the queue `notifications`: a message to one address. It is sent until it is taken, or its schedule ends. */

const GONE = 410
const MILLISECONDS_A_DAY = 86_400_000
/** An address that has taken nothing for so many days is not asked any more. */
export const DAYS_OF_FAILING = 3

export interface DeliveringParts {
  store: Store
  send: (message: Message) => Promise<Sent>
}

/** @returns seconds until it is to be sent again; undefined when nothing is left to do */
export async function deliver(
  job: TakenJob,
  { store: { db }, send }: DeliveringParts,
  clock = () => new Date(),
): Promise<number | undefined> {
  const id = String(job.data.delivery)
  const delivery = await db.selectFrom('deliveries').selectAll().where('id', '=', id).executeTakeFirst()
  if (delivery?.state !== 'waiting') return undefined
  const endpoint = await db.selectFrom('endpoints').selectAll().where('id', '=', delivery.endpoint).executeTakeFirst()
  if (!endpoint) {
    await db.deleteFrom('deliveries').where('id', '=', id).execute()
    return undefined
  }
  const keep = (now: Date, changes: Partial<DeliveryRow>) =>
    db
      .updateTable('deliveries')
      .set({ ...changes, updated_at: now.toISOString() })
      .where('id', '=', id)
      .where('state', '=', 'waiting')
      .execute()
  if (endpoint.disabled_at !== null) {
    await keep(clock(), { state: 'given-up', last_error: 'The address was not asked any more.' })
    return undefined
  }
  const { body } = delivery
  const headers = signed(id, body, JSON.parse(endpoint.secrets) as Secret[], clock())
  const sent = await send({ url: endpoint.url, headers, body })
  const now = clock()
  const attempts = delivery.attempts + 1
  const answered = 'error' in sent ? { last_status: null, last_error: sent.error } : answerOf(sent.status)
  const disabled = await standing({ db }, endpoint, sent, now)
  const again = disabled || isTaken(sent) ? undefined : nextAfter(attempts, 'error' in sent ? 0 : sent.retryAfter)
  const state = isTaken(sent) ? 'delivered' : again === undefined ? 'given-up' : 'waiting'
  await keep(now, { ...answered, attempts, state })
  return again
}

/** Any 2xx. */
export const isTaken = (sent: Sent): boolean => 'status' in sent && sent.status >= 200 && sent.status < 300

const answerOf = (status: number) => ({
  last_status: status,
  last_error: status >= 300 && status < 400 ? 'The address answered with a redirect, which is not followed.' : null,
})

/** Notes whether the address takes what is sent. @returns whether it is not to be asked any more */
async function standing({ db }: Pick<Store, 'db'>, endpoint: EndpointRow, sent: Sent, now: Date): Promise<boolean> {
  const set = (changes: Partial<EndpointRow>) =>
    db.updateTable('endpoints').set(changes).where('id', '=', endpoint.id).execute()
  if (isTaken(sent)) {
    if (endpoint.failing_since !== null) await set({ failing_since: null })
    return false
  }
  const at = now.toISOString()
  const since = endpoint.failing_since ?? at
  if (endpoint.failing_since === null) await set({ failing_since: at })
  const why = whyDisabled(sent, since, now)
  if (why !== undefined) await set({ disabled_at: at, disabled_why: why })
  return why !== undefined
}

function whyDisabled(sent: Sent, since: string, now: Date): string | undefined {
  if ('status' in sent && sent.status === GONE) return 'It answered with 410 (Gone).'
  const days = (now.getTime() - Date.parse(since)) / MILLISECONDS_A_DAY
  return days >= DAYS_OF_FAILING ? `It has taken nothing since ${since}.` : undefined
}
