import type { CheckInput, CheckOptions } from '../check.js'
import type { SignDescription } from '../sign/description.js'
import type { InstallationDescription } from '../sign/installation-description.js'
import type { MeasuredDescription } from '../sign/measured-description.js'
import type { Keeping } from './keeping.js'
import { keepOutcome, type Outcome, type WhenChecked } from './outcome.js'
import { questionOf } from './question.js'
import type { TakenJob } from './queue/queue.js'

/** One job of the queue `checks`: a sign at one of its revisions. */

/** A sign that could not be checked this often, for a reason that is not its own, gets a problem instead of a report. */
const MOST_ATTEMPTS = 6

export interface CheckingParts {
  keeping: Keeping
  /** Has the question answered, away from the event loop. @throws when it is to be tried again */
  check: (question: CheckInput) => Promise<Outcome>
  /** What is said of a sign that was tried too often. */
  givenUp: () => Record<string, unknown>
  whenChecked: WhenChecked
}

/** Does nothing when the sign has gone, has changed or has been checked by another process. */
export async function checkSign(
  job: TakenJob,
  { keeping, check, givenUp, whenChecked }: CheckingParts,
): Promise<undefined> {
  const asked = { sign: String(job.data.sign), revision: Number(job.data.revision) }
  const question = await questionFor(keeping, asked)
  if (!question) return
  const outcome = job.attempt > MOST_ATTEMPTS ? { problem: givenUp() } : await check(question)
  await keepOutcome(keeping, asked, outcome, whenChecked)
}

async function questionFor(
  { store }: Keeping,
  asked: { sign: string; revision: number },
): Promise<CheckInput | undefined> {
  const sign = await store.db
    .selectFrom('signs')
    .innerJoin('submittals', 'submittals.id', 'signs.submittal')
    .select(['signs.mark', 'signs.drawing', 'signs.description', 'signs.installation', 'signs.options'])
    .select(['submittals.standards', 'submittals.options as shared'])
    .where('signs.id', '=', asked.sign)
    .where('signs.revision', '=', asked.revision)
    .where('signs.state', '=', 'queued')
    .executeTakeFirst()
  if (!sign) return undefined
  const measured = await store.db
    .selectFrom('measurements')
    .select('measured')
    .where('sign', '=', asked.sign)
    .orderBy('id')
    .execute()
  const drawing = sign.drawing === null ? undefined : await store.files.read(sign.drawing)
  if (sign.drawing !== null && !drawing) throw new Error(`the file ${sign.drawing} of a kept drawing is missing`)
  const kept = {
    mark: sign.mark,
    ...(drawing && { drawing }),
    description: parsed<SignDescription | null>(sign.description),
    options: parsed<Partial<CheckOptions>>(sign.options),
    installation: parsed<InstallationDescription | null>(sign.installation),
    measured: measured.map((row) => parsed<MeasuredDescription>(row.measured)),
  }
  return questionOf(kept, parsed<string[]>(sign.standards), parsed<Partial<CheckOptions>>(sign.shared))
}

/** What we wrote ourselves, as it was written. */
const parsed = <T>(json: string | null): T => JSON.parse(json ?? 'null') as T
