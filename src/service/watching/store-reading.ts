import { setTimeout as wait } from 'node:timers/promises'
import type { Keeping } from '../../submittals/keeping.js'
import { openSigns } from '../../submittals/open-signs.js'
import { QUEUES, type QueueName } from '../../submittals/queue/queue.js'

/** What the store tells of the work that waits. */
export interface StoreReading {
  openSigns: number
  queues: Record<QueueName, { waiting: number; oldest: number }>
}

/** Milliseconds for which a reading is used again: whoever may ask for it may not so keep the database busy. */
const FRESH = 2000
/** Milliseconds after which a database that says nothing counts as one that is away. */
const PATIENCE = 2000

/** Reads at most once in a while. @returns what to ask; its answer is undefined while the database is away */
export function storeReader(keeping: Keeping): () => Promise<StoreReading | undefined> {
  let last: { at: number; reading: Promise<StoreReading | undefined> } | undefined
  return () => {
    const now = performance.now()
    if (!last || now - last.at > FRESH) last = { at: now, reading: readPatiently(keeping) }
    return last.reading
  }
}

const readPatiently = (keeping: Keeping): Promise<StoreReading | undefined> =>
  Promise.race([read(keeping).catch(() => undefined), wait(PATIENCE, undefined, { ref: false })])

async function read({ store, queue }: Keeping): Promise<StoreReading> {
  const queues = {} as StoreReading['queues']
  for (const name of QUEUES) queues[name] = await queue.depth(name)
  return { openSigns: await openSigns(store.db), queues }
}
