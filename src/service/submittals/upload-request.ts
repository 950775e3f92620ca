import type { FastifyRequest } from 'fastify'
import type { UploadedFile } from '../../submittals/upload.js'
import { shownName } from '../../submittals/intake/names.js'
import { unsupported } from '../errors.js'
import { LongJson, readJson } from '../json.js'
import { ServiceProblem } from '../problems.js'
import { nameOf, rethrow } from '../read-form.js'
import { listOf } from '../read-request.js'
import { LIMITS } from '../settings.js'

/** The body of a request that uploads signs: a form of files, or JSON. */

export interface UploadRequest {
  files: UploadedFile[]
  json?: Uint8Array
  name?: unknown
  standards?: unknown
  options?: unknown
}

/** @throws {ServiceProblem} for what is no such body, or larger than is read here */
export async function readUploadRequest(request: FastifyRequest): Promise<UploadRequest> {
  if (request.isMultipart()) return readFormOfFiles(request)
  const { body } = request
  if (body instanceof LongJson) return { files: [], json: body.bytes }
  if (body === undefined || Buffer.isBuffer(body))
    throw unsupported(request, 'multipart/form-data and application/json')
  return { files: [], json: new TextEncoder().encode(JSON.stringify(body)) }
}

const FIELDS = ['name', 'standards', 'options'] as const

async function readFormOfFiles(request: FastifyRequest): Promise<UploadRequest> {
  const { files, texts } = await readFilesAndTexts(request, FIELDS, FIELDS.length)
  const read: UploadRequest = { files }
  for (const field of FIELDS) {
    const [text = '', ...more] = texts.get(field) ?? []
    if (more.length > 0) throw new ServiceProblem('malformed-request', `The form holds the part “${field}” twice.`)
    if (text !== '') read[field] = field === 'name' ? text : structured(field, text)
  }
  return read
}

/**
 * A form of files.
 * @param known the names of its other parts @param most how many of these there may be
 * @throws {ServiceProblem} for what is no such form, or larger than is read here
 */
export async function readFilesAndTexts(
  request: FastifyRequest,
  known: readonly string[],
  most: number,
): Promise<{ files: UploadedFile[]; texts: Map<string, string[]> }> {
  const files: UploadedFile[] = []
  const texts = new Map<string, string[]>()
  let left = LIMITS.upload
  const limits = {
    fileSize: LIMITS.upload,
    files: LIMITS.uploadFiles,
    fields: most,
    parts: LIMITS.uploadFiles + most,
  }
  for await (const part of partsOf(request, limits)) {
    if (part.type === 'file') {
      const bytes = await part.toBuffer().catch(rethrowOfUpload)
      left -= bytes.length
      if (left < 0) throw tooLarge()
      // A browser sends an empty, nameless file for a field that nothing was chosen in.
      const name = fileNameOf(part)
      if (bytes.length > 0 || name !== '') files.push({ name: shownName(name), bytes })
      continue
    }
    const name = nameOf(part)
    if (!known.includes(name)) throw new ServiceProblem('malformed-request', unknownField(name, known))
    const text = typeof part.value === 'string' ? part.value : JSON.stringify(part.value)
    texts.set(name, [...(texts.get(name) ?? []), text])
  }
  return { files, texts }
}

/** The multipart reader's types promise a file's own name; one that was sent as bytes without it has none. */
const fileNameOf = ({ filename }: { filename: string | undefined }): string => filename ?? ''

const unknownField = (name: string, known: readonly string[]): string =>
  `The form holds a part “${name}” that is not known here. Known parts are files, ${known.join(', ')}.`

/** Standards may be a list parted by commas; anything that begins like JSON is read as it. */
function structured(field: string, value: string): unknown {
  if (/^\s*[[{]/u.test(value)) return readJson(value)
  return field === 'standards' ? listOf(value) : value
}

async function* partsOf(
  request: FastifyRequest,
  limits: Parameters<FastifyRequest['parts']>[0] extends infer O ? (O extends { limits?: infer L } ? L : never) : never,
) {
  try {
    yield* request.parts({ limits })
  } catch (error) {
    rethrowOfUpload(error)
  }
}

function rethrowOfUpload(error: unknown): never {
  if (error instanceof Error && 'code' in error && error.code === 'FST_REQ_FILE_TOO_LARGE') throw tooLarge()
  rethrow(error)
}

const tooLarge = (): ServiceProblem =>
  new ServiceProblem('too-large', 'The files together are larger than is read here.', [], {
    limit: LIMITS.upload,
    actual: LIMITS.upload + 1,
  })
