import type { InstallationDescription } from '../sign/installation-description.js'
import type { MeasuredDescription } from '../sign/measured-description.js'
import type { Alongside } from './create.js'
import { whenChecked } from './ended.js'
import { append, takeSubmittal, type Happening } from './history.js'
import { NotKept, NotNow, type Actor, type Keeping } from './keeping.js'
import { keepSetFindings } from './set-facts.js'
import { newId, now } from './store/ids.js'
import type { InTransaction, SignRow, SubmittalRow } from './store/tables.js'

/** What is added to a kept sign after its upload. Each change is an event; what can change a verdict asks for a new report. */

export interface NewWaiver {
  fingerprint: string
  reason: string
  author: string
  /** The authority's own number or letter. */
  authority: string
  /** The last day on which it holds, as YYYY-MM-DD; null: until withdrawn. */
  expires: string | null
}

/** @throws {NotKept} @throws {NotNow} when the submittal was cancelled */
export function addMeasurements(
  keeping: Keeping,
  actor: Actor,
  at: SignAddress,
  measured: readonly MeasuredDescription[],
  author: string,
  alongside?: (transaction: InTransaction, sign: SignRow) => Promise<void>,
): Promise<SignRow> {
  const make = async (transaction: InTransaction, sign: SignRow) => {
    const rows = measured.map((one) => ({
      id: newId('mea'),
      sign: sign.id,
      measured: JSON.stringify(one),
      author,
      at: now(),
    }))
    await transaction.insertInto('measurements').values(rows).execute()
    return { kind: 'measurements-added' as const, data: { measured, author }, recheck: {} }
  }
  return change(keeping, actor, at, make, alongside)
}

/** Takes the place of the facts given before. @param installation with a unit at every length */
export function setInstallation(
  keeping: Keeping,
  actor: Actor,
  at: SignAddress,
  installation: InstallationDescription,
): Promise<SignRow> {
  return change(keeping, actor, at, () =>
    Promise.resolve({
      kind: 'installation-changed',
      data: { installation },
      recheck: { installation: JSON.stringify(installation) },
    }),
  )
}

/** @returns the waiver's id */
export async function addWaiver(
  keeping: Keeping,
  actor: Actor,
  at: SignAddress,
  waiver: NewWaiver,
  alongside?: Alongside,
): Promise<string> {
  const id = newId('wav')
  const make = async (transaction: InTransaction, sign: SignRow) => {
    await transaction
      .insertInto('waivers')
      .values({ id, sign: sign.id, ...waiver, at: now(), withdrawn_at: null })
      .execute()
    return { kind: 'waiver-added' as const, data: { waiver: id, ...waiver } }
  }
  await change(keeping, actor, at, make, (transaction) => alongside?.(transaction, id))
  return id
}

/** @throws {NotKept} also when it was withdrawn before */
export async function withdrawWaiver(keeping: Keeping, actor: Actor, at: SignAddress, waiver: string): Promise<void> {
  await change(keeping, actor, at, async (transaction, sign) => {
    const taken = await transaction
      .updateTable('waivers')
      .set({ withdrawn_at: now() })
      .where('id', '=', waiver)
      .where('sign', '=', sign.id)
      .where('withdrawn_at', 'is', null)
      .returning('fingerprint')
      .executeTakeFirst()
    if (!taken) throw new NotKept()
    return { kind: 'waiver-withdrawn', data: { waiver, fingerprint: taken.fingerprint } }
  })
}

/** @returns the note's id */
export async function addNote(
  keeping: Keeping,
  actor: Actor,
  at: SignAddress,
  text: string,
  author: string,
  alongside?: Alongside,
): Promise<string> {
  const id = newId('not')
  const make = async (transaction: InTransaction, sign: SignRow) => {
    await transaction.insertInto('notes').values({ id, sign: sign.id, text, author, at: now() }).execute()
    return { kind: 'note-added' as const, data: { note: id, text, author } }
  }
  await change(keeping, actor, at, make, (transaction) => alongside?.(transaction, id))
  return id
}

/** Takes a sign out of its submittal; the history says that it was there. */
export async function removeSign(keeping: Keeping, actor: Actor, at: SignAddress): Promise<void> {
  await keeping.store.db.transaction().execute(async (transaction) => {
    const { submittal, sign } = await take(transaction, actor, at)
    await transaction.deleteFrom('signs').where('id', '=', sign.id).execute()
    const open = submittal.open - (sign.state === 'queued' ? 1 : 0)
    const total = submittal.total - 1
    const ended = open === 0 && submittal.state !== 'cancelled'
    await transaction
      .updateTable('submittals')
      .set({ open, total, ...(ended && { state: 'done' }) })
      .where('id', '=', submittal.id)
      .execute()
    const { id, mark, revision, report, verdict } = sign
    const happenings: Happening[] = [{ kind: 'sign-removed', data: { sign: id, mark, revision, report, verdict } }]
    if (ended && submittal.open > 0)
      happenings.push({
        kind: 'submittal-checked',
        data: await whenChecked(keeping, transaction, { ...submittal, total }),
      })
    else if (ended) await keepSetFindings(transaction, submittal)
    await append(transaction, submittal, actor.name, happenings)
  })
  keeping.awaken()
}

export interface SignAddress {
  submittal: string
  sign: string
}

interface Change extends Happening {
  /** Columns of the sign that change with it, where the sign is to be checked again. */
  recheck?: Partial<SignRow>
}

async function change(
  keeping: Keeping,
  actor: Actor,
  at: SignAddress,
  make: (transaction: InTransaction, sign: SignRow) => Promise<Change>,
  alongside?: (transaction: InTransaction, sign: SignRow) => Promise<void> | undefined,
): Promise<SignRow> {
  const { store, queue, awaken } = keeping
  const changed = await store.db.transaction().execute(async (transaction) => {
    const { submittal, sign } = await take(transaction, actor, at)
    const { kind, data, recheck } = await make(transaction, sign)
    if (recheck && submittal.state === 'cancelled')
      throw new NotNow('The submittal was cancelled; its signs are not checked any more.')
    const revision = recheck ? sign.revision + 1 : sign.revision
    await append(transaction, submittal, actor.name, [
      { kind, data: { sign: sign.id, mark: sign.mark, revision, ...data } },
    ])
    if (!recheck) {
      await alongside?.(transaction, sign)
      return sign
    }
    await queue.add(transaction, 'checks', [{ sign: sign.id, revision }])
    await transaction
      .updateTable('submittals')
      .set({ state: 'running', open: submittal.open + (sign.state === 'queued' ? 0 : 1) })
      .where('id', '=', submittal.id)
      .execute()
    const waiting = await transaction
      .updateTable('signs')
      .set({ ...recheck, revision, state: 'queued', updated_at: now() })
      .where('id', '=', sign.id)
      .returningAll()
      .executeTakeFirstOrThrow()
    await alongside?.(transaction, waiting)
    return waiting
  })
  awaken()
  return changed
}

async function take(
  transaction: InTransaction,
  { organisation }: Actor,
  at: SignAddress,
): Promise<{ submittal: SubmittalRow; sign: SignRow }> {
  const submittal = await takeSubmittal(transaction, at.submittal)
  if (submittal?.organisation !== organisation) throw new NotKept()
  const sign = await transaction
    .selectFrom('signs')
    .selectAll()
    .where('id', '=', at.sign)
    .where('submittal', '=', at.submittal)
    .executeTakeFirst()
  if (!sign) throw new NotKept()
  return { submittal, sign }
}
