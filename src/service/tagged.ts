import { createHash } from 'node:crypto'
import type { FastifyReply, FastifyRequest } from 'fastify'
import { negotiate } from './negotiate.js'

/** A strong entity tag over the bytes (RFC 9110, 8.8.3), so that a client that has them is not sent them again. */
export function sendTagged(request: FastifyRequest, reply: FastifyReply, answer: object) {
  const type = negotiate(request, reply, ['application/json'])
  const body = JSON.stringify(answer)
  const tag = `"${createHash('sha256').update(body).digest('base64url')}"`
  void reply.header('etag', tag).header('cache-control', 'no-cache').type(type)
  const known = request.headers['if-none-match']?.split(',').map((item) => item.trim().replace(/^W\//u, ''))
  return known?.includes(tag) || known?.includes('*') ? reply.code(304).send() : reply.send(body)
}
