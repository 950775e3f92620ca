import '@fastify/cookie'
import type { FastifyReply, FastifyRequest } from 'fastify'
import { SESSION_LENGTH } from '../../submittals/keys/sessions.js'

/** The cookie of those who signed in: never sent along by another site, never read by a script. */

const NAME = 'fingertrue-session'
const LOOPBACK = ['localhost', '127.0.0.1', '[::1]']

export const sessionOf = (request: FastifyRequest): string | undefined => request.cookies[NAME]

/** Over a network it is sent by HTTPS alone. */
const attributes = (request: FastifyRequest) => ({
  path: '/',
  httpOnly: true,
  sameSite: 'strict' as const,
  secure: !LOOPBACK.includes(request.hostname),
})

export const setSession = (request: FastifyRequest, reply: FastifyReply, token: string) =>
  reply.setCookie(NAME, token, { ...attributes(request), maxAge: SESSION_LENGTH / 1000 })

export const clearSession = (request: FastifyRequest, reply: FastifyReply) =>
  reply.clearCookie(NAME, attributes(request))
