import { createHash } from 'node:crypto'
import type { CheckInput } from '../check.js'
import type { Options } from '../check-options.js'
import type { SetEvidence, SetSign } from '../report/set/evidence.js'
import { problem } from '../submittals/intake/problem.js'
import { questionOf } from '../submittals/question.js'
import { comparedSign } from '../submittals/set-findings/compared-sign.js'
import { setFindings } from '../submittals/set-findings/set-findings.js'
import type { Upload, UploadedSign } from '../submittals/upload.js'
import type { Checked, Task } from './worker.js'

/** Checks what files hold, as a set that is not kept. */

export interface Asked {
  name: string
  /** Each pinned to a revision. */
  standards: string[]
  options: Options
  /** When it is checked, ISO 8601 in UTC. */
  at: string
  /** Whether the signs are redrawn with their findings. */
  redraw: boolean
}

/** Signs of one run, since all their reports are held in memory: as many as one piece of the service's evidence has. */
export const MOST_SIGNS = 2000
/** Digits of a digest that tell signs and sets apart. */
const DIGITS = 16

/** @param atOnce checks that run at the same time */
export async function checkSet(
  upload: Upload,
  asked: Asked,
  check: (task: Task) => Promise<Checked>,
  atOnce: number,
): Promise<SetEvidence> {
  const { name, standards, options, at, redraw } = asked
  const taken = upload.signs.slice(0, MOST_SIGNS)
  const ids = idsOf(taken)
  const questions = taken.map((sign) => questionFor(sign, standards, options))
  const answers = await each(questions, atOnce, (input) => check({ input, redraw }))
  const signs = taken.map((sign, i) => setSign(ids[i] ?? '', sign, answers[i]))
  const compared = taken.map(({ mark, location, door }, i) => {
    const useAssumed = questions[i]?.options.useAssumed ?? false
    const description = questions[i]?.sign ?? null
    return comparedSign({ mark, location, door, description, useAssumed, report: signs[i]?.report ?? null })
  })
  const [left] = upload.signs.slice(MOST_SIGNS)
  return {
    id: `set_${digest([...standards, ...ids])}`,
    name,
    standards,
    state: 'done',
    createdAt: at,
    asOf: at,
    signs,
    setFindings: setFindings(compared, upload.doors),
    intakeProblems: left ? [...upload.problems, tooMany(left)] : upload.problems,
    history: null,
  }
}

const tooMany = ({ files: [file = ''], mark }: UploadedSign) =>
  problem(
    file,
    `holds signs that are left out, from “${mark}” on: one run checks ${MOST_SIGNS}. Check them in several runs.`,
  )

const questionFor = (
  { mark, drawing, sign, options }: UploadedSign,
  standards: string[],
  shared: Options,
): CheckInput =>
  questionOf(
    {
      mark,
      ...(drawing && { drawing }),
      description: sign ?? null,
      options: options ?? {},
      installation: null,
      measured: [],
    },
    standards,
    shared,
  )

const setSign = (id: string, sign: UploadedSign, answer: Checked | undefined): SetSign => ({
  id,
  mark: sign.mark,
  location: sign.location,
  door: sign.door,
  files: sign.files,
  report: answer && 'report' in answer ? answer.report : null,
  drawing: answer && 'report' in answer ? answer.drawing : null,
  problem: answer && 'problem' in answer ? answer.problem : null,
  waivers: [],
  notes: [],
  measurements: [],
})

/** The same sign has the same id in the next run, so that a pipeline knows its findings again. */
function idsOf(signs: readonly UploadedSign[]): string[] {
  const seen = new Map<string, number>()
  return signs.map(({ files, mark }) => {
    const id = `sgn_${digest([mark, ...files])}`
    const count = (seen.get(id) ?? 0) + 1
    seen.set(id, count)
    return count === 1 ? id : `${id}-${count}`
  })
}

const digest = (texts: readonly string[]): string =>
  createHash('sha256').update(JSON.stringify(texts)).digest('hex').slice(0, DIGITS)

/** Answers in the order of the questions, so many at a time. */
async function each<Q, A>(questions: readonly Q[], atOnce: number, answer: (question: Q) => Promise<A>): Promise<A[]> {
  const answers: A[] = []
  const left = questions.entries()
  const hand = async () => {
    for (const [i, question] of left) answers[i] = await answer(question)
  }
  await Promise.all(Array.from({ length: atOnce }, hand))
  return answers
}
