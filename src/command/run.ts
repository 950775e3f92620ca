import { writeFile } from 'node:fs/promises'
import { availableParallelism } from 'node:os'
import type { SetEvidence } from '../report/set/evidence.js'
import { setCsv } from '../report/set/csv.js'
import { setHtml } from '../report/set/html.js'
import { setJson } from '../report/set/json.js'
import { setJunit } from '../report/set/junit.js'
import { setSarif } from '../report/set/sarif.js'
import { setText } from '../report/set/text.js'
import { countWords, setCounts } from '../report/set/verdict.js'
import { readUpload } from '../submittals/intake/read-upload.js'
import { shownName } from '../submittals/intake/names.js'
import { readSchedule } from '../submittals/schedule/read.js'
import { VERSION } from '../version.js'
import { readArguments, UsageError, type CheckCommand } from './arguments.js'
import { checkSet } from './check-set.js'
import { codeOf, readFiles } from './files.js'
import { describeSign, Unusable } from './sign-file.js'
import { STATUS, statusOf, type Status } from './status.js'
import { Threads } from './threads.js'
import { USAGE, type Format } from './usage.js'

/** What the command says: `out` is the result, `error` is told beside it. */
export interface Said {
  out: string
  error: string
  status: Status
}

/** @param args what stands behind the name of the program @param at the time, ISO 8601 in UTC */
export async function run(args: string[], at: string): Promise<Said> {
  try {
    const asked = readArguments(args)
    if (asked.kind === 'help') return { out: USAGE, error: '', status: STATUS.pass }
    if (asked.kind === 'version') return { out: `${VERSION}\n`, error: '', status: STATUS.pass }
    return await runCheck(asked.command, at)
  } catch (error) {
    if (error instanceof UsageError)
      return {
        out: '',
        error: `${error.message}\n“fingertrue --help” tells what can be asked.\n`,
        status: STATUS.usage,
      }
    if (error instanceof Unusable) return { out: '', error: `${error.message}\n`, status: STATUS.unchecked }
    throw error
  }
}

async function runCheck(command: CheckCommand, at: string): Promise<Said> {
  const evidence = await evidenceOf(command, at)
  const status = statusOf(evidence, command)
  const text = WRITERS[command.format](evidence, command)
  if (command.output === undefined) return { out: text, error: '', status }
  try {
    await writeFile(command.output, text)
  } catch (error) {
    return { out: '', error: `${command.output} cannot be written: ${codeOf(error)}.\n`, status: STATUS.output }
  }
  return { out: '', error: `${countWords(setCounts(evidence.signs))} Written to ${command.output}.\n`, status }
}

async function evidenceOf(command: CheckCommand, at: string): Promise<SetEvidence> {
  const { name, standards, options, format } = command
  const { files, problems } = await readFiles(command.files)
  const read = files.length === 0 ? NOTHING : await readUpload(files, readSchedule, shownName)
  const upload = command.sign === undefined ? read : await describeSign(read, command.sign)
  const whole = { ...upload, problems: [...problems, ...upload.problems] }
  const count = Math.max(1, Math.min(availableParallelism(), whole.signs.length))
  const threads = new Threads(count)
  try {
    const asked = { name, standards, options, at, redraw: format === 'html' }
    return await checkSet(whole, asked, (task) => threads.check(task), count)
  } finally {
    await threads.close()
  }
}

const NOTHING = { signs: [], doors: [], problems: [] }

const WRITERS: Record<Format, (evidence: SetEvidence, command: CheckCommand) => string> = {
  text: setText,
  json: setJson,
  sarif: (evidence, { results }) => `${setSarif(evidence, { results })}\n`,
  junit: (evidence, { undetermined }) =>
    setJunit(evidence, { undetermined: undetermined === 'fail' ? 'failure' : 'skipped' }),
  csv: setCsv,
  html: setHtml,
}
