import type { FastifyRequest } from 'fastify'
import type { Actor } from '../submittals/keeping.js'
import { ServiceProblem } from './problems.js'

declare module 'fastify' {
  interface FastifyRequest {
    /** Who asks, as the guard found out; null where anybody may ask and nobody said who it is. */
    actor: Actor | null
  }
}

/** @throws {ServiceProblem} `unauthorized` where it is not known who asks: nobody is ever taken for somebody */
export function actorOf({ actor }: FastifyRequest): Actor {
  if (actor) return actor
  throw new ServiceProblem('unauthorized', 'This needs to be known: who asks.')
}
