import { promisify } from 'node:util'
import { gunzip } from 'node:zlib'
import { NotKept, type Actor, type Keeping } from './keeping.js'
import { ownSubmittal } from './create.js'
import type { MeasurementRow, NoteRow, ReportRow, SignRow, WaiverRow } from './store/tables.js'

/** One kept sign with all that lies beside it. */

const unpack = promisify(gunzip)

export interface KeptSignRows {
  sign: SignRow
  measurements: MeasurementRow[]
  /** Those that were not withdrawn. */
  waivers: WaiverRow[]
  notes: NoteRow[]
  /** Without their content, the latest first. */
  reports: Omit<ReportRow, 'body' | 'picture'>[]
}

/** @throws {NotKept} */
export async function keptSign(keeping: Keeping, actor: Actor, submittal: string, id: string): Promise<KeptSignRows> {
  const sign = await ownSign(keeping, actor, submittal, id)
  const { db } = keeping.store
  const [measurements, waivers, notes, reports] = await Promise.all([
    db.selectFrom('measurements').selectAll().where('sign', '=', id).orderBy('id').execute(),
    db
      .selectFrom('waivers')
      .selectAll()
      .where('sign', '=', id)
      .where('withdrawn_at', 'is', null)
      .orderBy('id')
      .execute(),
    db.selectFrom('notes').selectAll().where('sign', '=', id).orderBy('id').execute(),
    db
      .selectFrom('reports')
      .select(['sign', 'revision', 'id', 'verdict', 'standards', 'made_at'])
      .where('sign', '=', id)
      .orderBy('revision', 'desc')
      .execute(),
  ])
  return { sign, measurements, waivers, notes, reports }
}

/** @throws {NotKept} */
export async function ownSign(keeping: Keeping, actor: Actor, submittal: string, id: string): Promise<SignRow> {
  await ownSubmittal(keeping, actor, submittal)
  const sign = await keeping.store.db
    .selectFrom('signs')
    .selectAll()
    .where('id', '=', id)
    .where('submittal', '=', submittal)
    .executeTakeFirst()
  if (!sign) throw new NotKept()
  return sign
}

/** The text of a report and of its drawing. @param revision absent: the latest. @returns undefined when there is none */
export async function keptReport(
  { store }: Keeping,
  sign: string,
  revision?: number,
): Promise<{ revision: number; id: string; body: Buffer; picture: Buffer } | undefined> {
  const row = await store.db
    .selectFrom('reports')
    .select(['revision', 'id', 'body', 'picture'])
    .where('sign', '=', sign)
    .$if(revision !== undefined, (q) => q.where('revision', '=', revision ?? 0))
    .orderBy('revision', 'desc')
    .limit(1)
    .executeTakeFirst()
  if (!row) return undefined
  const [body, picture] = await Promise.all([unpack(row.body), unpack(row.picture)])
  return { revision: row.revision, id: row.id, body, picture }
}

/** The latest reports of several signs, as JSON texts by the id of the sign. */
export async function keptReports({ store }: Keeping, signs: readonly string[]): Promise<Map<string, string>> {
  const reports = new Map<string, string>()
  if (signs.length === 0) return reports
  const rows = await store.db
    .selectFrom('reports')
    .innerJoin(
      (e) =>
        e
          .selectFrom('reports')
          .select((of) => ['reports.sign as latest', of.fn.max('reports.revision').as('number')])
          .where('sign', 'in', signs)
          .groupBy('sign')
          .as('last'),
      (join) => join.onRef('last.latest', '=', 'reports.sign').onRef('last.number', '=', 'reports.revision'),
    )
    .select(['reports.sign', 'reports.body'])
    .execute()
  for (const { sign, body } of rows) reports.set(sign, (await unpack(body)).toString('utf8'))
  return reports
}
