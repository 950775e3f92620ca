import type { IncomingMessage } from 'node:http'
import { finished } from 'node:stream/promises'
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { Refusal } from '../refusal.js'
import { AtLimit, NotKept, NotNow } from '../submittals/keeping.js'
import { troubleOf, type Trouble } from '../submittals/store/outage.js'
import { PROBLEM_MEDIA_TYPE, problemOf, ServiceProblem, type ProblemCause } from './problems.js'
import { LIMITS } from './settings.js'
import './watching/requests.js'

/** Every error leaves as a problem document; what the framework throws is put into our own types here. */

const READ_TYPES = 'application/json, image/svg+xml, text/x-gcode and multipart/form-data'

export function sendProblem(request: FastifyRequest, reply: FastifyReply, cause: ServiceProblem | Refusal) {
  const problem = problemOf(cause, request.id)
  if (cause instanceof ServiceProblem) void reply.headers(cause.headers)
  void reply.header('x-request-id', request.id)
  return reply.code(problem.status).type(PROBLEM_MEDIA_TYPE).send(JSON.stringify(problem))
}

/** How a problem leaves: as a document for clients, as a page for people. */
export type SendProblem = (
  request: FastifyRequest,
  reply: FastifyReply,
  cause: ServiceProblem | Refusal,
) => FastifyReply

export function installErrorHandler(app: FastifyInstance, send: SendProblem = sendProblem) {
  app.setErrorHandler(async (error: FastifyError | Error, request, reply) => {
    const cause = causeOf(error, request)
    if (BEFORE_THE_BODY.includes(cause.type)) await readAway(request.raw)
    if (LOGGED.includes(cause.type)) request.log.error({ err: error }, 'a request could not be answered')
    request.problem = cause.type
    return send(request, reply, cause)
  })
}

/** Problems that are found before the body has been read. */
const BEFORE_THE_BODY: ProblemCause['type'][] = [
  'too-large',
  'unauthorized',
  'forbidden',
  'misdirected-request',
  'too-many-requests',
  'busy',
]

/** Problems whose cause whoever runs the service must see. */
const LOGGED: ProblemCause['type'][] = ['internal-error', 'store-unavailable', 'storage-full']

/** Milliseconds for which the rest of a refused body is read. */
const LONGEST_READING_AWAY = 2000

/**
 * Reads the rest of a body that is refused and throws it away, for a while: a client that is still writing would otherwise
 * see its connection break and never the answer (RFC 9112, 9.6).
 */
export async function readAway(body: IncomingMessage) {
  const timeout = AbortSignal.timeout(LONGEST_READING_AWAY)
  body.resume()
  await finished(body, { signal: timeout, cleanup: true }).catch(() => undefined)
}

/** Seconds after which a store that is gone, or full, may be asked again. */
const STORE_RETRY = { unreachable: '5', full: '60' }

const OF_STORE: Record<Trouble, () => ServiceProblem> = {
  unreachable: () =>
    new ServiceProblem('store-unavailable', 'The database does not answer.', [], undefined, {
      'retry-after': STORE_RETRY.unreachable,
    }),
  full: () =>
    new ServiceProblem('storage-full', 'There is no room left to keep this.', [], undefined, {
      'retry-after': STORE_RETRY.full,
    }),
}

const pathOf = (request: FastifyRequest): string => request.url.split('?', 1)[0] ?? ''

/** What an error is in our terms; anything unforeseen is a fault of ours and tells nothing. */
export function causeOf(error: FastifyError | Error, request: FastifyRequest): ServiceProblem | Refusal {
  if (error instanceof ServiceProblem || error instanceof Refusal) return error
  if (error instanceof NotKept) return new ServiceProblem('not-found', `There is nothing at ${pathOf(request)}.`)
  if (error instanceof NotNow) return new ServiceProblem('not-now', error.message)
  if (error instanceof AtLimit) {
    const { message, limit, actual } = error
    return new ServiceProblem('organisation-limit', message, [], { limit, actual })
  }
  const trouble = troubleOf(error)
  if (trouble) return OF_STORE[trouble]()
  const code = 'code' in error ? error.code : ''
  switch (code) {
    case 'FST_ERR_CTP_INVALID_JSON_BODY':
    case 'FST_ERR_CTP_EMPTY_JSON_BODY':
    case 'FST_INVALID_JSON_FIELD_ERROR':
      return new ServiceProblem('malformed-json', 'The text is not JSON that is read here.')
    case 'FST_ERR_CTP_INVALID_MEDIA_TYPE':
      return unsupported(request)
    case 'FST_ERR_CTP_BODY_TOO_LARGE':
      return tooLarge(request)
    case 'FST_REQ_FILE_TOO_LARGE':
      return tooLarge(request, 'A file of the form is larger than is read here.', LIMITS.drawing)
    case 'FST_PARTS_LIMIT':
    case 'FST_FILES_LIMIT':
    case 'FST_FIELDS_LIMIT':
      return new ServiceProblem('too-large', 'The form has more parts than are read here.', [], {
        limit: LIMITS.formParts,
        actual: LIMITS.formParts + 1,
      })
    default:
      if ('statusCode' in error && error.statusCode !== undefined && error.statusCode < 500)
        return new ServiceProblem('malformed-request', 'The request breaks the rules of HTTP or of its form.')
      return new ServiceProblem('internal-error', 'The request could not be answered. The fault is logged.')
  }
}

/** @param types what is read here, in words */
export function unsupported(request: FastifyRequest, types = READ_TYPES): ServiceProblem {
  const type = request.headers['content-type']
  const said = type === undefined ? 'A request without a Content-Type' : 'The media type of this body'
  return new ServiceProblem('unsupported-media-type', `${said} is not read here; ${types} are.`)
}

function tooLarge(request: FastifyRequest, detail = 'The body is larger than is read here.', limit?: number) {
  const largest = limit ?? (isDrawing(request) || isProgram(request) ? LIMITS.drawing : request.routeOptions.bodyLimit)
  const length = Number(request.headers['content-length'])
  const actual = Number.isFinite(length) && length > largest ? length : largest + 1
  return new ServiceProblem('too-large', detail, [], { limit: largest, actual })
}

export const isDrawing = (request: FastifyRequest): boolean =>
  request.headers['content-type']?.toLowerCase().startsWith('image/svg+xml') ?? false

export const isProgram = (request: FastifyRequest): boolean =>
  request.headers['content-type']?.toLowerCase().startsWith('text/x-gcode') ?? false
