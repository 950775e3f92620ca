import type { FastifyRequest } from 'fastify'
import { z } from 'zod'
import { documented } from '../openapi.js'
import type { Media, Operation } from '../operation.js'
import type { ProblemType } from '../problem-table.js'
import { invalidQuery } from '../read-request.js'
import { OnceHeaders } from './once.js'

/** What the routes of kept things have in common: their parameters and their documentation. */

const LONGEST_ID = 100
const Id = z.string().max(LONGEST_ID)

export const SubmittalParams = z.strictObject({ submittal: Id.describe('Id of the submittal.') })
export const SignParams = SubmittalParams.extend({ sign: Id.describe('Id of the sign.') })

export interface Described {
  id: string
  tag?: Operation['tag']
  summary: string
  description: string
  /** A schema of the JSON that it answers with, or the media of the answer; none: an empty answer. */
  answer?: z.ZodType | Record<string, Media>
  status?: number
  requests?: Operation['requests']
  problems?: ProblemType[]
  /** Headers that it reads, by a schema. */
  headers?: z.ZodType
  /** It creates, and takes an Idempotency-Key: its handler is `once`. */
  once?: true
}

/** Problems of every route of what is kept. */
const KEPT: ProblemType[] = ['store-unavailable']

const ONCE: ProblemType[] = ['malformed-request', 'request-in-progress', 'idempotency-key-reused']

/** The options of a route: documented, and with parameters that the handler reads by `queryOf`. */
export function route(described: Described, params?: z.ZodType, querystring?: z.ZodType) {
  const { id, tag, summary, description, answer, status, requests, problems, once } = described
  const headers = once ? OnceHeaders : described.headers
  const content = answer instanceof z.ZodType ? { 'application/json': { schema: answer } } : (answer ?? {})
  const operation: Operation = {
    id,
    tag: tag ?? 'submittals',
    summary,
    description,
    ...(requests && { requests }),
    answer: { status: status ?? 200, description: answer ? 'The answer.' : 'Done.', content },
    problems: [
      ...new Set([
        ...KEPT,
        ...(params ? ['not-found' as const] : []),
        ...(querystring ? ['invalid-parameters' as const] : []),
        ...(problems ?? []),
        ...(once ? ONCE : []),
      ]),
    ],
  }
  const { config, schema } = documented(operation)
  return {
    config,
    schema: {
      ...schema,
      ...(params && { params }),
      ...(querystring && { querystring }),
      ...(headers && { headers }),
    },
    // Parameters are read by the handler, which says in our own words what is wrong with them.
    validatorCompiler: () => () => true,
  }
}

/** @throws {ServiceProblem} `invalid-parameters` */
export function queryOf<T extends z.ZodType>(schema: T, request: FastifyRequest): z.infer<T> {
  const parsed = schema.safeParse(request.query)
  if (parsed.success) return parsed.data
  throw invalidQuery(parsed.error, schema)
}

export const submittalOf = (request: FastifyRequest): z.infer<typeof SubmittalParams> =>
  request.params as z.infer<typeof SubmittalParams>

export const signOf = (request: FastifyRequest): z.infer<typeof SignParams> =>
  request.params as z.infer<typeof SignParams>
