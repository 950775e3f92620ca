import type { IntakeProblem } from '../../report/set/evidence.js'
import type { ListedDoor, Schedule, Upload, UploadedFile, UploadedSign } from '../upload.js'
import { claimOfRow, type Claim } from './claim.js'
import { claimsInJson } from './json-file.js'
import { UPLOAD_LIMITS } from './limits.js'
import { pair } from './pair.js'
import { unpack } from './unpack.js'

/**
 * The files of an upload as signs. What a file is, its bytes say. A file, a row or an entry that cannot be used is a problem and
 * loses no other; an upload of which nothing can be used has no signs, and problems that say why.
 * @param readSchedule reads a file that is CSV or a workbook
 * @param shown what a file is called from then on; without its folders, unless told otherwise
 */
export async function readUpload(
  uploaded: UploadedFile[],
  readSchedule: (file: UploadedFile) => Promise<Schedule>,
  shown?: (name: string) => string,
): Promise<Upload> {
  const { files, problems } = await unpack(uploaded, shown)
  const doors: ListedDoor[] = []
  const rows: Claim[] = []
  const entries: Claim[] = []
  for (const file of files) {
    if (file.kind === 'schedule') {
      const schedule = await readSchedule({ name: file.name, bytes: file.bytes })
      for (const row of schedule.rows) rows.push(claimOfRow(file.name, row))
      for (const door of schedule.doors) doors.push(door)
      for (const one of schedule.problems) problems.push(one)
    }
    if (file.kind === 'json') {
      const read = claimsInJson(file)
      for (const claim of read.claims) entries.push(claim)
      for (const one of read.problems) problems.push(one)
    }
  }
  const drawings = files.filter(({ kind }) => kind === 'drawing')
  const paired = pair(rows, entries, drawings)
  for (const one of paired.problems) problems.push(one)
  const signs = paired.signs.slice(0, UPLOAD_LIMITS.signs)
  const [left] = paired.signs.slice(UPLOAD_LIMITS.signs)
  if (left) problems.push(tooMany(left, paired.signs.length))
  if (signs.length === 0 && problems.length === 0) problems.push(NOTHING)
  return { signs, doors, problems }
}

/** @param left the first sign that is left out */
const tooMany = ({ files: [file = ''], mark }: UploadedSign, count: number): IntakeProblem => ({
  file,
  row: null,
  column: null,
  detail: `The upload has ${count} signs; ${UPLOAD_LIMITS.signs} are kept, those before “${mark}”. Send the others as a set of their own.`,
})

const NOTHING: IntakeProblem = { file: '', row: null, column: null, detail: 'The upload holds nothing to check.' }
