import type { Socket } from 'node:net'
import type { FastifyInstance, FastifyServerOptions } from 'fastify'
import { randomUUID } from 'node:crypto'
import './actor.js'
import './watching/requests.js'
import { PROBLEM_MEDIA_TYPE, problemOf } from './problems.js'

/** One line for each request: what was asked for, by whom, how it ended, how long it took. No body, no query, no header, no key. */

export const loggerOptions = (level: string): FastifyServerOptions['logger'] => ({
  level,
  serializers: {
    req: (request: { id: string; method: string; url: string }) => ({
      id: request.id,
      method: request.method,
      path: pathOf(request.url),
    }),
  },
})

const pathOf = (url: string): string => url.split('?', 1)[0] ?? ''

export function logRequests(app: FastifyInstance) {
  app.addHook('onRequest', (request, reply, done) => {
    void reply.header('x-request-id', request.id)
    done()
  })
  app.addHook('onResponse', (request, reply, done) => {
    request.log.info({
      method: request.method,
      path: pathOf(request.url),
      status: reply.statusCode,
      milliseconds: Math.round(reply.elapsedTime),
      ...(request.problem && { problem: request.problem }),
      ...(request.actor && { organisation: request.actor.organisation, actor: request.actor.name }),
    })
    done()
  })
}

/** What is no HTTP at all gets a problem too, by hand, because no request came of it. @returns whether it could be answered */
export function answerBrokenHttp(error: Error & { code?: string }, socket: Socket): boolean {
  if (error.code === 'ECONNRESET' || socket.destroyed || !socket.writable) return false
  const detail =
    error.code === 'HPE_HEADER_OVERFLOW'
      ? 'The headers are larger than is read here.'
      : 'This is not HTTP that is read here.'
  const problem = problemOf({ type: 'malformed-request', detail, errors: [] }, randomUUID())
  const body = JSON.stringify(problem)
  socket.end(
    `HTTP/1.1 ${problem.status} Bad Request\r\ncontent-type: ${PROBLEM_MEDIA_TYPE}\r\ncontent-length: ${Buffer.byteLength(body)}\r\nconnection: close\r\n\r\n${body}`,
  )
  return true
}
