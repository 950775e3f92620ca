import { createTranslator } from '../braille/engine.js'
import { examine, type CheckInput } from '../check.js'
import { Refusal } from '../refusal.js'
import { reportSvg } from '../report/svg.js'
import type { Report } from '../report/schema.js'
import type { SetSign } from '../report/set/evidence.js'
import { problemOf } from './problem.js'

/** The module that threads of the command run: one question at a time, answered as plain data. */

export interface Task {
  input: CheckInput
  /** Whether the sign is redrawn with its findings. */
  redraw: boolean
}

export type Checked = { report: Report; drawing: string | null } | { problem: NonNullable<SetSign['problem']> }

const translator = createTranslator()

export default function work({ input, redraw }: Task): Checked {
  try {
    const { report, sign } = examine(input, translator)
    return { report, drawing: redraw ? reportSvg(report, sign) : null }
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return { problem: problemOf(error) }
  }
}
