import { afterAll, beforeAll, beforeEach, describe } from 'vitest'
import { createSubmittal } from '../../src/submittals/create.js'
import { NOBODY, type Actor, type Keeping } from '../../src/submittals/keeping.js'
import type { MadeReport } from '../../src/submittals/outcome.js'
import { BossQueue } from '../../src/submittals/queue/boss-queue.js'
import { TableQueue } from '../../src/submittals/queue/table-queue.js'
import type { ComparedSign } from '../../src/submittals/set-findings/compared-sign.js'
import { openStore, type Place } from '../../src/submittals/store/connect.js'
import { now } from '../../src/submittals/store/ids.js'
import type { UploadedSign } from '../../src/submittals/upload.js'
import { Postgres, WITHOUT_POSTGRES } from './postgres.js'

/** The same tests over both stores: SQLite in memory, and a PostgreSQL of the tests' own. */

/** @param tests asked once for each store; the function gives what is kept, new for each test */
export function onEachStore(title: string, tests: (kept: () => Keeping) => void): void {
  describe(`${title} (SQLite)`, () => {
    withStore(() => Promise.resolve(undefined), tests)
  })
  describe.skipIf(WITHOUT_POSTGRES)(`${title} (PostgreSQL)`, () => {
    let postgres: Postgres
    beforeAll(async () => {
      postgres = await Postgres.make()
    })
    withStore(async () => ({ url: await postgres.database() }), tests)
    afterAll(() => postgres.remove())
  })
}

function withStore(place: () => Promise<Place | undefined>, tests: (kept: () => Keeping) => void): void {
  let keeping: Keeping | undefined
  beforeEach(async () => {
    const made = await openKept(await place())
    keeping = made
    return async () => {
      await made.queue.close()
      await made.store.close()
    }
  })
  tests(() => {
    if (!keeping) throw new Error('asked for before a test began')
    return keeping
  })
}

export const OTHER: Actor = { organisation: 'other', name: 'someone else' }

/** @param place none: in memory */
export async function openKept(place: Place | undefined): Promise<Keeping> {
  const store = await openStore(place, () => undefined)
  const queue = store.pool ? new BossQueue(store.pool, () => undefined) : new TableQueue(store.db)
  await queue.start()
  const organisations = [NOBODY.organisation, OTHER.organisation].map((id) => ({ id, name: id, created_at: now() }))
  await store.db.insertInto('organisations').values(organisations).execute()
  return { store, queue, awaken: () => undefined }
}

const encoder = new TextEncoder()

/** An invented sign. @param drawn what stands for its drawing; none: it is described only */
export const uploadedSign = (mark: string, drawn?: string): UploadedSign => ({
  mark,
  location: `Studio ${mark}`,
  door: null,
  files: ['set.json'],
  sign: { use: 'permanent-room' },
  ...(drawn !== undefined && { drawing: encoder.encode(drawn) }),
})

export const receivedSigns = (signs: UploadedSign[]) => ({
  files: [{ name: 'set.json', bytes: encoder.encode(JSON.stringify(signs.map(({ mark }) => mark))) }],
  upload: { signs, doors: [], problems: [] },
})

/** @returns the id of a new submittal with signs of these marks */
export const submittalOf = (keeping: Keeping, marks: string[], actor: Actor = NOBODY): Promise<string> =>
  createSubmittal(keeping, actor, {
    name: 'Pottery studio',
    standards: ['us-ada-2010@1'],
    options: {},
    ...receivedSigns(marks.map((mark) => uploadedSign(mark))),
  })

/** What a sign of which nothing is known is compared by. */
const NOTHING_KNOWN: ComparedSign = {
  mark: '',
  location: null,
  door: null,
  use: null,
  wording: null,
  families: [],
  styles: [],
  dotSpacings: [],
  cellSpacings: [],
}

/** An invented report: what is tested is how it is kept, not what it says. */
export const madeReport = (id: string): MadeReport => ({
  id,
  digest: '0'.repeat(64),
  verdict: 'pass',
  stages: { drawing: 'pass' },
  summary: { pass: 1 },
  standards: [{ id: 'us-ada-2010', revision: 1, digest: 'sha256-x' }],
  facts: NOTHING_KNOWN,
  body: encoder.encode(`body of ${id}`),
  picture: encoder.encode(`picture of ${id}`),
})

export const signsIn = ({ store }: Keeping, submittal: string) =>
  store.db.selectFrom('signs').selectAll().where('submittal', '=', submittal).orderBy('position').execute()
