import { z } from 'zod'
import { Refusal } from '../../refusal.js'
import { faultsOf } from '../../sign/faults.js'
import { readUpload } from '../../submittals/intake/read-upload.js'
import { SubmittalRequest } from '../../submittals/intake/submittal-json.js'
import { readSchedule } from '../../submittals/schedule/read.js'
import type { Upload } from '../../submittals/upload.js'
import { LongJson } from '../json.js'
import type { UploadTask } from '../task.js'

/** What an upload holds, read in a thread. */

/** What a body of JSON says beside its signs. */
const Head = z.strictObject({
  ...SubmittalRequest.shape,
  signs: z.array(z.unknown(), 'is missing: give a list of signs').min(1, 'is empty: give at least one sign'),
})
export type UploadHead = Pick<SubmittalRequest, 'name' | 'standards' | 'options'>

export interface ReadUpload {
  upload: Upload
  head: UploadHead
}

/** What problems call a body that is no file. */
const BODY = 'the request'

/** @throws {Refusal} `invalid-description` @throws {ServiceProblem} `malformed-json` */
export async function uploadAnswer({ files, json }: UploadTask): Promise<ReadUpload> {
  if (!json) return { upload: await readUpload(files, readSchedule), head: {} }
  const parsed = Head.safeParse(new LongJson(json).read())
  if (!parsed.success) {
    const faults = faultsOf(parsed.error, Head, '')
    throw new Refusal('invalid-description', 'The submittal cannot be read.', faults)
  }
  const { signs, ...head } = parsed.data
  const bytes = new TextEncoder().encode(JSON.stringify({ signs }))
  return { upload: await readUpload([{ name: BODY, bytes }], readSchedule), head }
}
