import type { FastifyReply, FastifyRequest } from 'fastify'
import { ServiceProblem } from './problems.js'

/**
 * The media type among `offered` that the client likes best (RFC 9110, 12.5.1); the first when it does not say.
 * @throws {ServiceProblem} `not-acceptable` when it accepts none.
 */
export function negotiate<T extends string>(request: FastifyRequest, reply: FastifyReply, offered: readonly T[]): T {
  void reply.header('vary', 'Accept')
  const [first] = offered
  if (first && request.headers.accept === undefined) return first
  const chosen = request.accepts().type([...offered])
  const found = offered.find((type) => type === chosen)
  if (found) return found
  const names = offered.length > 1 ? `${offered.slice(0, -1).join(', ')} or ${offered.at(-1)}` : offered[0]
  throw new ServiceProblem('not-acceptable', `This answer can be had as ${names}.`)
}
