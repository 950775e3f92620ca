import type { FastifyRequest } from 'fastify'
import { NOBODY, type Actor } from '../submittals/keeping.js'

declare module 'fastify' {
  interface FastifyRequest {
    /** Who asks; null where no key is asked for. */
    actor: Actor | null
  }
}

export const actorOf = (request: FastifyRequest): Actor => request.actor ?? NOBODY
