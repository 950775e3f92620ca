import type { FastifyInstance, FastifyRequest } from 'fastify'
import { DEFAULT_STANDARDS } from '../check-options.js'
import type { CheckInput } from '../check.js'
import { REPORT_STYLE_HASH } from '../report/html-style.js'
import { Report } from '../report/schema.js'
import { POTTERY_ROOM } from '../sign/examples.js'
import { askerOf } from './admission/asker.js'
import type { FairLine } from './admission/fair-line.js'
import { CheckForm, CheckQuery, CheckRequest } from './check-request.js'
import { EXAMPLE_DRAWING, EXAMPLE_PRODUCT } from './example-drawing.js'
import { LongJson } from './json.js'
import type { LateCore } from './late-core.js'
import { negotiate } from './negotiate.js'
import { documented } from './openapi.js'
import type { Operation } from './operation.js'
import { pagePolicy } from './page.js'
import type { Pool } from './pool.js'
import type { ProblemType } from './problem-table.js'
import { fromJson, readRequest } from './read-request.js'
import { LIMITS } from './settings.js'
import { REPORT_TYPES, type Answer, type Question, type ReportType } from './task.js'
import './watching/requests.js'

/** POST /v1/checks: one sign in, a judged report out, whether the sign passes or not. */

export interface CheckParts {
  core: LateCore
  pool: Pool
  /** The line of what is done at once. */
  short: FairLine
}

/** The letter l, in millimetres. */
const EXAMPLE_PROGRAM = 'G21 G90\nG0 Z3.0\nG99 G81 X20.0 Y-70.0 Z0.5 R3.0 F1000.0\nY-72.4\nY-74.8\nG80\nM30\n'

const EXAMPLE_REQUEST = { standards: DEFAULT_STANDARDS, sign: POTTERY_ROOM }

/** Bodies that a check and a reading take. */
export const CHECK_BODIES: Operation['requests'] = {
  'application/json': {
    schema: CheckRequest,
    examples: { room: { summary: 'A room sign', value: () => EXAMPLE_REQUEST } },
  },
  'image/svg+xml': {
    examples: { drawing: { summary: 'The drawing of a room sign', value: () => EXAMPLE_DRAWING } },
  },
  'text/x-gcode': {
    examples: { program: { summary: 'Three dots as drilling moves', value: () => EXAMPLE_PROGRAM } },
  },
  'multipart/form-data': {
    schema: CheckForm,
    examples: {
      form: {
        summary: 'A drawing, and what it cannot hold',
        value: () => ({ drawing: EXAMPLE_DRAWING, sign: EXAMPLE_PRODUCT, standards: DEFAULT_STANDARDS.join(',') }),
      },
    },
  },
}

export const CHECK_PROBLEMS: ProblemType[] = [
  'malformed-json',
  'malformed-request',
  'malformed-drawing',
  'malformed-program',
  'entities-not-accepted',
  'not-acceptable',
  'too-large',
  'unsupported-media-type',
  'invalid-description',
  'invalid-parameters',
  'unknown-standard',
  'scale-unknown',
  'no-tactile-elements',
  'several-signs',
  'too-complex',
  'busy',
]

export function checkRoutes(app: FastifyInstance, parts: CheckParts) {
  const roomReport = (): unknown => {
    const input = fromJson(EXAMPLE_REQUEST)
    return JSON.parse(String(parts.core.now.answer({ kind: 'check', type: 'application/json', input }).body))
  }
  const operation: Operation = {
    id: 'createCheck',
    tag: 'checks',
    summary: 'Check a sign',
    description:
      'Takes one sign as a description, a drawing (or the drilling program that makes its dots) or both, and answers with a report on every requirement, whether the sign passes or not. Nothing is kept. The Accept header picks the form of the report.',
    requests: CHECK_BODIES,
    answer: {
      status: 200,
      description: 'The report.',
      content: {
        'application/json': {
          schema: Report,
          examples: { room: { summary: 'The report on the room sign', value: roomReport } },
        },
        'text/html': {},
        'image/svg+xml': {},
        'text/csv': {},
        'application/sarif+json': {},
        'application/pdf': { binary: true },
      },
    },
    problems: CHECK_PROBLEMS,
  }
  const { config, schema } = documented(operation)
  app.post(
    '/v1/checks',
    { config, schema: { ...schema, querystring: CheckQuery }, validatorCompiler: readLater },
    async (request, reply) => {
      const type = negotiate(request, reply, REPORT_TYPES)
      const input = await readRequest(request)
      const { body, tag } = await run({ kind: 'check', type }, input, request, parts)
      if (tag !== undefined) void reply.header('etag', `"${tag}"`)
      if (type in POLICIES) void reply.header('content-security-policy', POLICIES[type])
      void reply.type(type === 'application/pdf' ? type : `${type}; charset=utf-8`)
      return reply.send(body)
    },
  )
}

/** A report for people runs nothing and loads nothing, wherever it is opened. */
const POLICIES: Partial<Record<ReportType, string>> = {
  'text/html': pagePolicy(REPORT_STYLE_HASH),
  'image/svg+xml': "default-src 'none'; style-src 'unsafe-inline'; sandbox",
}

/** The request is read once, by its own reader, which knows all its forms. */
export const readLater = () => () => true

/** A short description alone takes less time than a thread would; drawings, long bodies and the setting of pages go to the threads. */
export async function run(
  question: Question,
  input: CheckInput | LongJson,
  request: FastifyRequest,
  parts: CheckParts,
): Promise<Answer> {
  const answered = await runUnwatched(question, input, request, parts)
  request.server.watching.answered(answered, request.span)
  return answered
}

async function runUnwatched(
  question: Question,
  input: CheckInput | LongJson,
  request: FastifyRequest,
  { core, pool, short }: CheckParts,
): Promise<Answer> {
  const asker = askerOf(request)
  if (input instanceof LongJson) return pool.run({ ...question, json: input.bytes }, asker)
  const task = { ...question, input }
  const isLong = question.kind === 'check' && question.type === 'application/pdf'
  const isShort =
    !isLong && !input.drawing && !input.program && Number(request.headers['content-length']) <= LIMITS.inlineJson
  if (!isShort) return pool.run(task, asker)
  // Before it stands in the line, so that loading counts as nobody's work.
  const { answer } = await core.load()
  return short.run(asker, () => answer(task))
}
