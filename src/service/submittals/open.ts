import type { FastifyBaseLogger } from 'fastify'
import type { CheckInput } from '../../check.js'
import { Refusal } from '../../refusal.js'
import { checkSign } from '../../submittals/check-sign.js'
import { whenChecked } from '../../submittals/ended.js'
import { NOBODY, type Keeping } from '../../submittals/keeping.js'
import type { Outcome } from '../../submittals/outcome.js'
import type { Queue } from '../../submittals/queue/queue.js'
import { TableQueue } from '../../submittals/queue/table-queue.js'
import { forgetClaims } from '../../submittals/replays.js'
import { now } from '../../submittals/store/ids.js'
import type { openStore, Store } from '../../submittals/store/connect.js'
import { deliver, isTaken } from '../../submittals/webhooks/deliver.js'
import { send } from '../../submittals/webhooks/send.js'
import { Sweeping } from '../../submittals/sweeping.js'
import { NoHand, Worker } from '../../submittals/work.js'
import { KEPT } from '../admission/asker.js'
import type { Pool } from '../pool.js'
import { PROBLEMS } from '../problem-table.js'
import { problemAddress, ServiceProblem } from '../problems.js'
import type { Settings } from '../settings.js'
import type { Watching } from '../watching/watching.js'

/** Opens what submittals are kept in, and starts the work on them. */

/** Messages that one process sends at the same time. */
const MESSAGES_AT_ONCE = 16

export interface KeepingService {
  keeping: Keeping
  start(): void
  /** Finishes what is being checked. */
  close(): Promise<void>
}

export async function openKeeping(
  settings: Settings,
  pool: Pool,
  log: FastifyBaseLogger,
  watching: Watching,
  open: typeof openStore,
): Promise<KeepingService> {
  const store = await open(settings.place, (err) => log.error({ err }, 'the database reports a fault'))
  const queue = await queueOf(store, log)
  try {
    await queue.start()
    await makeLocal(store)
    if (!store.pool) await forgetClaims(store.db)
  } catch (error) {
    await store.close()
    throw error
  }
  const { openSigns } = settings
  const keeping: Keeping = {
    store,
    queue,
    awaken: () => {
      worker.awaken()
      messenger.awaken()
    },
    ...(openSigns !== undefined && { mostOpen: openSigns }),
  }
  const worker = new Worker({
    queue,
    name: 'checks',
    // One thread is left for those who wait for an answer.
    atOnce: settings.role === 'worker' ? settings.threads : Math.max(1, settings.threads - 1),
    perform: (job) =>
      checkSign(job, {
        keeping,
        check: (question) => checkInThread(pool, question, watching),
        givenUp: () => {
          watching.meters?.rejected('sign', 'internal-error')
          return problemOf('internal-error', 'The sign could not be checked, although it was tried several times.')
        },
        whenChecked: (transaction, submittal) => whenChecked(keeping, transaction, submittal),
      }),
    onError: (err) => log.error({ err }, 'work on a submittal failed; it will be tried again'),
  })
  const messenger = new Worker({
    queue,
    name: 'notifications',
    atOnce: MESSAGES_AT_ONCE,
    // An address that does not answer must not keep the next message longer than it is lent to this process.
    ahead: 1,
    perform: (job) =>
      deliver(job, {
        store,
        send: async (message) => {
          const sent = await send(message, { privateAllowed: settings.webhooksPrivate })
          watching.meters?.sent('error' in sent ? 'unanswered' : isTaken(sent) ? 'taken' : 'refused')
          return sent
        },
      }),
    onError: (err) => log.error({ err }, 'a notification was not sent; it will be tried again'),
  })
  const sweeping = new Sweeping(store, settings.retention ?? {}, {
    onSwept: (swept) => log.info({ swept }, 'what need not be kept any more was deleted'),
    onError: (err) => log.error({ err }, 'what need not be kept any more was not deleted; it will be tried again'),
  })
  return {
    keeping,
    start: () => {
      if (settings.role === 'api') return
      worker.start()
      messenger.start()
      sweeping.start()
    },
    close: async () => {
      await Promise.all([worker.stop(), messenger.stop(), sweeping.stop()])
      await queue.close()
      await store.close()
    },
  }
}

/** The library of the shared queue is loaded only where it is used. */
async function queueOf({ db, pool }: Store, log: FastifyBaseLogger): Promise<Queue> {
  if (!pool) return new TableQueue(db)
  const { BossQueue } = await import('../../submittals/queue/boss-queue.js')
  return new BossQueue(pool, (err) => log.error({ err }, 'the queue reports a fault'))
}

/** The organisation of those who need no key. */
async function makeLocal({ db }: Store): Promise<void> {
  const id = NOBODY.organisation
  await db
    .insertInto('organisations')
    .values({ id, name: id, created_at: now() })
    .onConflict((c) => c.column('id').doNothing())
    .execute()
}

/** @throws when it is to be tried again: all threads are taken, or something unforeseen happened */
async function checkInThread(pool: Pool, input: CheckInput, watching: Watching): Promise<Outcome> {
  const span = watching.traces?.work('check of a kept sign')
  try {
    const answer = await pool.run({ kind: 'kept', input }, KEPT)
    watching.answered(answer, span)
    const { made } = answer
    if (!made) throw new Error('a kept sign was answered without a report')
    return { made }
  } catch (error) {
    if (error instanceof ServiceProblem && error.type === 'busy') throw new NoHand()
    if (!(error instanceof Refusal)) throw error
    const { type, detail, errors, excess } = error
    watching.meters?.rejected('sign', type)
    return { problem: { ...problemOf(type, detail), ...(errors.length > 0 && { errors }), ...excess } }
  } finally {
    span?.end()
  }
}

/** A problem document that belongs to a sign, not to a request, and so has no instance. */
function problemOf(type: keyof typeof PROBLEMS, detail: string): Record<string, unknown> {
  const { title, status } = PROBLEMS[type]
  return { type: problemAddress(type), title, status, detail }
}
