import type { Translator } from '../braille/translator.js'
import { examine, type CheckInput } from '../check.js'
import { correct } from '../make/correct/correct.js'
import { reportJson } from '../report/json.js'

/**
 * A drawing put right, as JSON. The check that decides about each change is that of the service itself, with the same question.
 * @throws {Refusal} as a check does, and `invalid-description` when there is no drawing
 */
export function correctionAnswer(input: CheckInput, translator: Translator): string {
  const again = (drawing: Uint8Array) => examine({ ...input, drawing }, translator)
  const { report, ...rest } = correct(input, again, translator)
  return `${JSON.stringify(rest).slice(0, -1)},"report":${reportJson(report).toString('utf8')}}`
}
