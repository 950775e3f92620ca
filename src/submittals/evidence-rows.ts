import { NotKept, type Keeping } from './keeping.js'
import type { Database, SignRow, SubmittalRow } from './store/tables.js'

/** Everything that the evidence of a submittal is made of, as it lies in the store: plain data that crosses threads. */

export interface EvidenceRows {
  submittal: SubmittalRow
  /** Time of the last event. */
  asOf: string
  /** Signs that come before these; null where one sign was asked for. */
  from: number | null
  signs: SignRow[]
  /** Gzipped report and drawing of a sign, by its id. */
  reports: Map<string, { body: Uint8Array; picture: Uint8Array }>
  waivers: EvidenceWaiver[]
  notes: { sign: string; text: string; author: string; at: string }[]
  measurements: { sign: string; measured: string; author: string; at: string }[]
}

export interface EvidenceWaiver {
  sign: string
  fingerprint: string
  reason: string
  author: string
  authority: string
  expires: string | null
  at: string
}

/** Which signs: so many from a place in the order of the upload, or one. */
export type SignChoice = { from: number; count: number } | { sign: string }

/** Ids of one statement. */
const IDS_A_STATEMENT = 500

/**
 * All of it as it is at one moment: what is changed meanwhile is not in it, nor in the end of the history that it names.
 * @param known the submittal as it was found for whoever asks @throws {NotKept} when it has been deleted since
 */
export async function evidenceRows({ store }: Keeping, known: SubmittalRow, choice: SignChoice): Promise<EvidenceRows> {
  const reading = store.db.transaction()
  const atOnce = store.pool ? reading.setIsolationLevel('repeatable read').setAccessMode('read only') : reading
  return atOnce.execute(async (db) => {
    const submittal = await db.selectFrom('submittals').selectAll().where('id', '=', known.id).executeTakeFirst()
    if (!submittal) throw new NotKept()
    return rowsOf(db, submittal, choice)
  })
}

async function rowsOf(db: Database, submittal: SubmittalRow, choice: SignChoice): Promise<EvidenceRows> {
  const last = await db
    .selectFrom('events')
    .select('at')
    .where('submittal', '=', submittal.id)
    .where('number', '=', submittal.event_count)
    .executeTakeFirst()
  const signs = await db
    .selectFrom('signs')
    .selectAll()
    .where('submittal', '=', submittal.id)
    .$if('sign' in choice, (q) => q.where('id', '=', 'sign' in choice ? choice.sign : ''))
    .orderBy('position')
    .$if('from' in choice, (q) =>
      q.offset('from' in choice ? choice.from : 0).limit('count' in choice ? choice.count : 0),
    )
    .execute()
  const rows: EvidenceRows = {
    submittal,
    asOf: last?.at ?? submittal.created_at,
    from: 'from' in choice ? choice.from : null,
    signs,
    reports: new Map(),
    waivers: [],
    notes: [],
    measurements: [],
  }
  for (let from = 0; from < signs.length; from += IDS_A_STATEMENT)
    await addBeside(
      db,
      rows,
      signs.slice(from, from + IDS_A_STATEMENT).map(({ id }) => id),
    )
  return rows
}

async function addBeside(db: Database, rows: EvidenceRows, ids: string[]): Promise<void> {
  const reports = await db
    .selectFrom('reports')
    .innerJoin('signs', (join) =>
      join.onRef('signs.id', '=', 'reports.sign').onRef('signs.report_revision', '=', 'reports.revision'),
    )
    .select(['reports.sign', 'reports.body', 'reports.picture'])
    .where('reports.sign', 'in', ids)
    .execute()
  for (const { sign, body, picture } of reports) rows.reports.set(sign, { body, picture })
  const waivers = await db
    .selectFrom('waivers')
    .select(['sign', 'fingerprint', 'reason', 'author', 'authority', 'expires', 'at'])
    .where('sign', 'in', ids)
    .where('withdrawn_at', 'is', null)
    .orderBy('id')
    .execute()
  const notes = await db
    .selectFrom('notes')
    .select(['sign', 'text', 'author', 'at'])
    .where('sign', 'in', ids)
    .orderBy('id')
    .execute()
  const measurements = await db
    .selectFrom('measurements')
    .select(['sign', 'measured', 'author', 'at'])
    .where('sign', 'in', ids)
    .orderBy('id')
    .execute()
  rows.waivers.push(...waivers)
  rows.notes.push(...notes)
  rows.measurements.push(...measurements)
}
