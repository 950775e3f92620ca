import { append, takeSubmittal, type Happening } from './history.js'
import type { Keeping } from './keeping.js'
import type { ComparedSign } from './set-findings/compared-sign.js'
import { now } from './store/ids.js'
import type { InTransaction, SignRow, SubmittalRow } from './store/tables.js'

/** What came of the check of one sign, and how it becomes the one report that is seen. */

export type Outcome = { made: MadeReport } | { problem: Record<string, unknown> }

export interface MadeReport {
  id: string
  verdict: 'pass' | 'fail' | 'undetermined' | 'not-applicable'
  stages: object
  summary: object
  standards: { id: string; revision: number; digest: string }[]
  /** What the set is compared by. */
  facts: ComparedSign
  /** SHA-256 of the JSON of the report, hexadecimal. */
  digest: string
  /** Gzipped JSON and SVG. */
  body: Uint8Array
  picture: Uint8Array
}

/** The name under which the service itself stands in the history. */
export const SERVICE = 'fingertrue'

/** Done in the same transaction when the last sign of a submittal has its report. */
export type WhenChecked = (transaction: InTransaction, submittal: SubmittalRow) => Promise<Happening['data']>

/**
 * Keeps an outcome, unless the sign has changed since or another process was first: then nothing happens.
 * @returns whether it was kept
 */
export async function keepOutcome(
  { store }: Keeping,
  asked: { sign: string; revision: number },
  outcome: Outcome,
  whenChecked: WhenChecked,
): Promise<boolean> {
  const known = await store.db.selectFrom('signs').select('submittal').where('id', '=', asked.sign).executeTakeFirst()
  if (!known) return false
  return store.db.transaction().execute(async (transaction) => {
    const submittal = await takeSubmittal(transaction, known.submittal)
    if (!submittal || submittal.state === 'cancelled') return false
    const sign = await transaction
      .updateTable('signs')
      .set(
        'made' in outcome
          ? {
              state: 'done',
              report: outcome.made.id,
              report_revision: asked.revision,
              verdict: outcome.made.verdict,
              stages: JSON.stringify(outcome.made.stages),
              summary: JSON.stringify(outcome.made.summary),
              facts: JSON.stringify(outcome.made.facts),
              problem: null,
              updated_at: now(),
            }
          : {
              state: 'done',
              report: null,
              report_revision: null,
              verdict: null,
              stages: null,
              summary: null,
              facts: null,
              problem: JSON.stringify(outcome.problem),
              updated_at: now(),
            },
      )
      .where('id', '=', asked.sign)
      .where('revision', '=', asked.revision)
      .where('state', '=', 'queued')
      .returningAll()
      .executeTakeFirst()
    if (!sign) return false
    if ('made' in outcome) await keepReport(transaction, sign, outcome.made)
    const open = submittal.open - 1
    const happenings = [happeningOf(sign, outcome)]
    await transaction
      .updateTable('submittals')
      .set({ open, state: open === 0 ? 'done' : 'running' })
      .where('id', '=', submittal.id)
      .execute()
    if (open === 0) happenings.push({ kind: 'submittal-checked', data: await whenChecked(transaction, submittal) })
    await append(transaction, submittal, SERVICE, happenings)
    return true
  })
}

async function keepReport(transaction: InTransaction, { id: sign, revision }: SignRow, made: MadeReport) {
  await transaction
    .insertInto('reports')
    .values({
      sign,
      revision,
      id: made.id,
      verdict: made.verdict,
      standards: JSON.stringify(made.standards),
      made_at: now(),
      body: Buffer.from(made.body),
      picture: Buffer.from(made.picture),
    })
    .execute()
}

function happeningOf({ id, mark, revision }: SignRow, outcome: Outcome): Happening {
  if ('problem' in outcome)
    return { kind: 'sign-not-checked', data: { sign: id, mark, revision, problem: outcome.problem } }
  const { id: report, digest, verdict, standards } = outcome.made
  return { kind: 'sign-checked', data: { sign: id, mark, revision, report, digest, verdict, standards } }
}
