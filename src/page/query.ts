import type { FastifyRequest } from 'fastify'

/** What stands behind the question mark of the address. */
export const queryOf = ({ url }: FastifyRequest): URLSearchParams => new URLSearchParams(url.split('?', 2)[1] ?? '')
