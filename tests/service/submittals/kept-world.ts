import type { FastifyInstance } from 'fastify'
import type { KyselyPlugin } from 'kysely'
import type { Settings } from '../../../src/service/settings.js'
import { POTTERY_ROOM } from '../../../src/sign/examples.js'
import { createSubmittal } from '../../../src/submittals/create.js'
import { NOBODY, type Keeping } from '../../../src/submittals/keeping.js'
import { TableQueue } from '../../../src/submittals/queue/table-queue.js'
import { openStore, type Store } from '../../../src/submittals/store/connect.js'
import { Files } from '../../../src/submittals/store/files.js'
import { SignDescription } from '../../../src/sign/description.js'
import { runningService } from '../running.js'

/** A service with things kept in it, whose store can be made to fail. It does not listen, so that nothing is checked. */
export interface KeptWorld {
  app: FastifyInstance
  store: Store
  /** `away`: no statement is answered; `full`: nothing can be added. */
  trouble: { is: 'none' | 'away' | 'full' }
  submittal: string
  sign: string
  /** One that was cancelled, and a sign of it. */
  cancelled: string
  cancelledSign: string
  /** One with more signs than one piece of evidence covers. */
  huge: string
}

export async function keptWorld(settings: Partial<Settings> = {}): Promise<KeptWorld> {
  const trouble: KeptWorld['trouble'] = { is: 'none' }
  const opened: Store[] = []
  const app = await runningService(settings, async (place, onError) => {
    const store = await openStore(place, onError)
    const db = store.db.withPlugin(failing(trouble))
    const kept = { ...store, db, files: new Files(db) }
    opened.push(kept)
    return kept
  })
  const [store] = opened
  if (!store) throw new Error('no store was opened')
  const keeping: Keeping = { store, queue: new TableQueue(store.db), awaken: () => undefined }
  const sign = { mark: 'A-1', location: null, door: null, files: [], sign: SignDescription.parse(POTTERY_ROOM) }
  const make = () =>
    createSubmittal(keeping, NOBODY, {
      name: 'x',
      standards: ['us-ada-2010'],
      options: {},
      files: [],
      upload: { signs: [sign], doors: [], problems: [] },
    })
  const [submittal, cancelled, huge] = [await make(), await make(), await make()]
  const signOf = async (id: string) =>
    (await store.db.selectFrom('signs').select('id').where('submittal', '=', id).executeTakeFirstOrThrow()).id
  await store.db.updateTable('submittals').set({ state: 'cancelled' }).where('id', '=', cancelled).execute()
  await store.db.updateTable('submittals').set({ total: 1_000_000 }).where('id', '=', huge).execute()
  return {
    app,
    store,
    trouble,
    submittal,
    cancelled,
    huge,
    sign: await signOf(submittal),
    cancelledSign: await signOf(cancelled),
  }
}

/** What the databases throw: errno(3) where none answers, the result codes of SQLite where there is no room. */
const failing = (trouble: KeptWorld['trouble']): KyselyPlugin => ({
  transformQuery: ({ node }) => {
    if (trouble.is === 'away') throw Object.assign(new Error('connect'), { code: 'ECONNREFUSED' })
    if (trouble.is === 'full' && node.kind === 'InsertQueryNode')
      throw Object.assign(new Error('database or disk is full'), { code: 'SQLITE_FULL' })
    return node
  },
  transformResult: ({ result }) => Promise.resolve(result),
})
