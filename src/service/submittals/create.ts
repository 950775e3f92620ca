import { askerOf } from '../admission/asker.js'
import type { Asker } from '../admission/fair-line.js'
import type { FastifyInstance } from 'fastify'
import type { z } from 'zod'
import { DEFAULT_STANDARDS, Options, Standards, type Options as CheckOptions } from '../../check-options.js'
import { Refusal } from '../../refusal.js'
import { findStandards } from '../../standards/catalogue.js'
import { LONGEST_NAME, text } from '../../sign/text.js'
import { addSigns, createSubmittal, ownSubmittal, type Received } from '../../submittals/create.js'
import { SubmittalRequest } from '../../submittals/intake/submittal-json.js'
import { within, type Actor, type Keeping } from '../../submittals/keeping.js'
import type { IntakeProblem } from '../../report/set/evidence.js'
import { problemPlace } from '../../report/set/words.js'
import { actorOf } from '../actor.js'
import type { Pool } from '../pool.js'
import { ServiceProblem } from '../problems.js'
import { invalid } from '../read-request.js'
import { LIMITS } from '../settings.js'
import { once, type Answer } from './once.js'
import { SubmittalResource } from './resources.js'
import type { ProblemType } from '../problem-table.js'
import { route, SubmittalParams, submittalOf, type Described } from './route.js'
import { addressOf } from './rows.js'
import { resourceOf } from './submittals.js'
import { UploadForm } from './upload-form.js'
import { readUploadRequest, type UploadRequest } from './upload-request.js'

/** POST /v1/submittals and POST /v1/submittals/{id}/signs: what is acknowledged here is kept. */

const REQUESTS = {
  'multipart/form-data': { schema: UploadForm },
  'application/json': { schema: SubmittalRequest },
}
const PROBLEMS: ProblemType[] = [
  'malformed-json',
  'malformed-request',
  'invalid-description',
  'no-signs',
  'too-large',
  'too-complex',
  'unknown-standard',
  'unsupported-media-type',
  'storage-full',
  'busy',
]

/** What a set is called that nobody named. */
export const NAMELESS = 'Submittal'
/** Problems of an upload that come with a refusal; a submittal that is kept has all of them. */
const MOST_ERRORS = 200

const Name = text(LONGEST_NAME)

export function createRoutes(app: FastifyInstance, keeping: Keeping, pool: Pool) {
  const create: Described = {
    id: 'createSubmittal',
    summary: 'Upload a set of signs',
    description:
      'Takes drawings, zips of drawings, sign schedules (CSV or XLSX) and descriptions (JSON) together, or one body of JSON. All that could be used is kept and queued before this is answered; what could not is in `problems`.',
    requests: REQUESTS,
    answer: SubmittalResource,
    status: 202,
    problems: PROBLEMS,
    once: true,
  }
  app.post('/v1/submittals', { ...route(create), bodyLimit: LIMITS.upload }, async (request, reply) => {
    const sent = await readUploadRequest(request)
    const actor = actorOf(request)
    return once(keeping, request, reply, contentOf(sent), async (keep) => {
      const { received, fields } = await receive(sent, pool, askerOf(request))
      const standards = pinned(fields.standards ?? DEFAULT_STANDARDS)
      const given = { ...received, name: fields.name ?? NAMELESS, standards, options: fields.options ?? {} }
      await createSubmittal(keeping, actor, given, async (transaction, id) =>
        keep(transaction, await accepted(within(keeping, transaction), actor, id)),
      )
    })
  })

  const add: Described = {
    ...create,
    id: 'addSigns',
    summary: 'Add signs to a submittal',
    description:
      'Takes the files or the signs that creating one takes; they come behind those that are there. Its name, standards and options stay, so that none may be given.',
    problems: [...PROBLEMS.filter((type) => type !== 'unknown-standard'), 'not-now'],
  }
  app.post(
    '/v1/submittals/:submittal/signs',
    { ...route(add, SubmittalParams), bodyLimit: LIMITS.upload },
    async (request, reply) => {
      const { submittal } = submittalOf(request)
      const actor = actorOf(request)
      await ownSubmittal(keeping, actor, submittal)
      const sent = await readUploadRequest(request)
      return once(keeping, request, reply, contentOf(sent), async (keep) => {
        const { received, fields } = await receive(sent, pool, askerOf(request))
        refuseFields(fields)
        await addSigns(keeping, actor, submittal, received, async (transaction, id) =>
          keep(transaction, await accepted(within(keeping, transaction), actor, id)),
        )
      })
    },
  )
}

/** @throws {Refusal} `invalid-description`: nobody is to believe that further signs are held against other standards */
function refuseFields(fields: Fields): void {
  const given = Object.keys(fields)
  if (given.length === 0) return
  const errors = given.map((name) => ({
    pointer: `/${name}`,
    detail: `“${name}” belongs to the submittal and stays as it is; leave it out.`,
  }))
  throw new Refusal('invalid-description', 'Further signs bring nothing that is said of the whole set.', errors)
}

async function accepted(keeping: Keeping, actor: Actor, id: string): Promise<Answer> {
  const body = await resourceOf(keeping, await ownSubmittal(keeping, actor, id))
  return { status: 202, headers: { location: addressOf(id) }, body }
}

/** Everything of the upload that could be told from another. */
const contentOf = ({ files, json, name, standards, options }: UploadRequest): (Uint8Array | string)[] => [
  JSON.stringify([name, standards, options]),
  ...files.flatMap((file) => [file.name, file.bytes]),
  ...(json ? [json] : []),
]

interface Fields {
  name?: string
  standards?: string[]
  options?: CheckOptions
}

/** Reads what was uploaded, in a thread. @throws {ServiceProblem} `no-signs` where none of it can be used @throws {Refusal} */
export async function receive(
  sent: UploadRequest,
  pool: Pool,
  asker: Asker,
): Promise<{ received: Received; fields: Fields }> {
  const { files, json, name, standards, options } = sent
  const said: Fields = {
    ...(name !== undefined && { name: checked(Name, name, '/name') }),
    ...(standards !== undefined && { standards: checked(Standards, standards, '/standards') }),
    ...(options !== undefined && { options: checked(Options, options, '/options') }),
  }
  if (said.standards) pinned(said.standards)
  const { upload: read } = await pool.run({ kind: 'upload', files, ...(json && { json }) }, asker)
  if (!read) throw new Error('an upload was answered without what it holds')
  const { upload, head } = read
  if (upload.signs.length === 0) throw noSigns(upload.problems)
  const kept = json ? [{ name: BODY_NAME, bytes: json }] : files
  return { received: { files: kept, upload }, fields: { ...head, ...said } }
}

/** The name under which a body of JSON is kept. */
const BODY_NAME = 'submittal.json'

/** Every id with the revision of today. @throws {Refusal} `unknown-standard` */
export const pinned = (standards: readonly string[]): string[] =>
  findStandards(standards).map(({ id, revision }) => `${id}@${revision}`)

function noSigns(problems: readonly IntakeProblem[]): ServiceProblem {
  const errors = problems.slice(0, MOST_ERRORS).map((problem) => {
    const { file, detail } = problem
    return { detail: detail.includes(file) ? detail : `${problemPlace(problem)}: ${detail}` }
  })
  return new ServiceProblem('no-signs', 'Nothing of the upload could be used, and nothing was kept.', errors)
}

function checked<T extends z.ZodType>(schema: T, value: unknown, pointer: string): z.infer<T> {
  const parsed = schema.safeParse(value)
  if (parsed.success) return parsed.data
  throw invalid(parsed.error, schema, pointer)
}
