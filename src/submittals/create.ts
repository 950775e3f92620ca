import { setImmediate } from 'node:timers/promises'
import type { CheckOptions } from '../check.js'
import { append, NO_EVENT, takeSubmittal, type Head } from './history.js'
import { AtLimit, NotKept, NotNow, type Actor, type Keeping } from './keeping.js'
import { newId, now } from './store/ids.js'
import type { InTransaction, SignRow, SubmittalRow } from './store/tables.js'
import type { Upload, UploadedFile, UploadedSign } from './upload.js'

/** Putting signs into a submittal: all of them or none, and only what outlives the process is acknowledged. */

export interface Received {
  /** The files as they came, kept as evidence. */
  files: UploadedFile[]
  upload: Upload
}

export interface NewSubmittal extends Received {
  name: string
  /** Each pinned to a revision, so that it is judged in a year by what it was judged by today. */
  standards: string[]
  options: Partial<CheckOptions>
}

/** Done in the same transaction, as the last thing. @param made the id of what was made */
export type Alongside = (transaction: InTransaction, made: string) => Promise<void>

const ROWS_A_STATEMENT = 400

/** Keeps a new submittal and queues its signs. @returns its id */
export async function createSubmittal(
  keeping: Keeping,
  actor: Actor,
  given: NewSubmittal,
  alongside?: Alongside,
): Promise<string> {
  await demandRoom(keeping, actor, given)
  const id = newId('sub')
  const { name, standards, options } = given
  const content = await keepContent(keeping, given)
  await keeping.store.db.transaction().execute(async (transaction) => {
    const row = emptySubmittal(id, actor, given)
    await transaction.insertInto('submittals').values(row).execute()
    await putIn(keeping, transaction, row, actor, content, { name, standards, options })
    await alongside?.(transaction, id)
  })
  keeping.awaken()
  return id
}

/**
 * Adds signs to a submittal, behind those that it has.
 * @throws {NotKept} @throws {NotNow} when it was cancelled
 */
export async function addSigns(
  keeping: Keeping,
  actor: Actor,
  id: string,
  received: Received,
  alongside?: Alongside,
): Promise<void> {
  await ownSubmittal(keeping, actor, id)
  await demandRoom(keeping, actor, received)
  const content = await keepContent(keeping, received)
  await keeping.store.db.transaction().execute(async (transaction) => {
    const row = await takeSubmittal(transaction, id)
    if (row?.organisation !== actor.organisation) throw new NotKept()
    if (row.state === 'cancelled') throw new NotNow('The submittal was cancelled; make a new one for further signs.')
    await putIn(keeping, transaction, row, actor, content)
    await alongside?.(transaction, id)
  })
  keeping.awaken()
}

/** @throws {NotKept} when it is not there or another organisation's */
export async function ownSubmittal({ store }: Keeping, { organisation }: Actor, id: string): Promise<SubmittalRow> {
  const row = await store.db.selectFrom('submittals').selectAll().where('id', '=', id).executeTakeFirst()
  if (row?.organisation !== organisation) throw new NotKept()
  return row
}

/** Uploads that come at the same moment are each held against what is there then. @throws {AtLimit} */
async function demandRoom({ store, mostOpen }: Keeping, { organisation }: Actor, { upload }: Received): Promise<void> {
  if (mostOpen === undefined) return
  const { open } = await store.db
    .selectFrom('submittals')
    .select((e) => e.fn.sum<number | null>('open').as('open'))
    .where('organisation', '=', organisation)
    .executeTakeFirstOrThrow()
  const after = Number(open ?? 0) + upload.signs.length
  if (after > mostOpen)
    throw new AtLimit('With this upload more signs would wait for their reports than may.', mostOpen, after)
}

interface Content {
  upload: Upload
  files: { name: string; size: number; digest: string }[]
  /** Digest of the drawing of each sign. */
  drawings: (string | null)[]
}

async function keepContent({ store }: Keeping, { files, upload }: Received): Promise<Content> {
  const drawn = upload.signs.flatMap(({ drawing }) => drawing ?? [])
  const digests = await store.files.keep([...files.map(({ bytes }) => bytes), ...drawn])
  let next = files.length
  return {
    upload,
    files: files.map(({ name, bytes }, i) => ({ name, size: bytes.length, digest: digests[i] })),
    drawings: upload.signs.map(({ drawing }) => (drawing ? digests[next++] : null)),
  }
}

function emptySubmittal(id: string, { organisation }: Actor, given: NewSubmittal): SubmittalRow {
  const time = now()
  return {
    id,
    organisation,
    name: given.name,
    standards: JSON.stringify(given.standards),
    options: JSON.stringify(given.options),
    doors: '[]',
    problems: '[]',
    set_findings: '[]',
    state: 'done',
    total: 0,
    open: 0,
    event_count: 0,
    event_head: NO_EVENT,
    created_at: time,
    updated_at: time,
  }
}

/** @param made what the history says of a new submittal; without it, signs are added to one that is there */
async function putIn(
  { queue }: Keeping,
  transaction: InTransaction,
  row: SubmittalRow & Head,
  actor: Actor,
  { upload, files, drawings }: Content,
  made?: object,
): Promise<void> {
  const at = now()
  for (const some of parts(files.map((file) => ({ id: newId('upl'), submittal: row.id, ...file, at }))))
    await transaction.insertInto('uploads').values(some).execute()
  const last = await transaction
    .selectFrom('signs')
    .select((e) => e.fn.max('position').as('position'))
    .where('submittal', '=', row.id)
    .executeTakeFirst()
  const first = (last?.position ?? -1) + 1
  const signs = upload.signs.map((sign, i) => signRow(row.id, first + i, sign, drawings[i] ?? null, at))
  for (const some of parts(signs)) {
    await transaction.insertInto('signs').values(some).execute()
    // Thousands of rows must not hold up what else this process answers.
    await setImmediate()
  }
  await queue.add(
    transaction,
    'checks',
    signs.map(({ id, revision }) => ({ sign: id, revision })),
  )
  const data = { ...made, signs: signs.length, files, problems: upload.problems.length }
  await append(transaction, row, actor.name, [{ kind: made ? 'submittal-created' : 'signs-added', data }])
  await transaction
    .updateTable('submittals')
    .set({
      ...(signs.length > 0 && { state: row.open < row.total ? 'running' : 'queued' }),
      total: row.total + signs.length,
      open: row.open + signs.length,
      doors: joined(row.doors, upload.doors),
      problems: joined(row.problems, upload.problems),
    })
    .where('id', '=', row.id)
    .execute()
}

const joined = (json: string, more: readonly unknown[]): string =>
  JSON.stringify([...(JSON.parse(json) as unknown[]), ...more])

function* parts<T>(rows: readonly T[]): Generator<T[]> {
  for (let from = 0; from < rows.length; from += ROWS_A_STATEMENT) yield rows.slice(from, from + ROWS_A_STATEMENT)
}

function signRow(submittal: string, position: number, sign: UploadedSign, drawing: string | null, at: string): SignRow {
  return {
    id: newId('sgn'),
    submittal,
    position,
    mark: sign.mark,
    location: sign.location,
    door: sign.door,
    files: JSON.stringify(sign.files),
    drawing,
    description: sign.sign ? JSON.stringify(sign.sign) : null,
    options: JSON.stringify(sign.options ?? {}),
    installation: null,
    revision: 1,
    state: 'queued',
    report: null,
    report_revision: null,
    verdict: null,
    summary: null,
    stages: null,
    problem: null,
    facts: null,
    updated_at: at,
  }
}
