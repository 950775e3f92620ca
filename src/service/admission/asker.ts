import type { FastifyRequest } from 'fastify'
import '../keys/guard.js'
import { addressOf } from '../keys/rate-limit.js'
import type { Asker } from './fair-line.js'

/** Whose work a request is: the key's, or the address's where no key was sent. */
export const askerOf = (request: FastifyRequest): Asker => ({
  whose: request.holder?.key ?? addressOf(request),
  isGone: () => request.raw.socket.destroyed,
})

/** The checks of signs that are kept: acknowledged, so that they wait as long as it takes. */
export const KEPT: Asker = { whose: 'kept signs', isGone: () => false, isPatient: true }
