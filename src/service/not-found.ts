import type { FastifyInstance } from 'fastify'
import type { SendProblem } from './errors.js'
import { ServiceProblem } from './problems.js'

/** 404, or 405 with the methods that the address does take. */
export function installNotFound(app: FastifyInstance, send: SendProblem) {
  const routes: { pattern: RegExp; method: string }[] = []
  app.addHook('onRoute', ({ url, method }) => {
    for (const one of [method].flat()) routes.push({ pattern: patternOf(url), method: one })
  })
  app.setNotFoundHandler((request, reply) => {
    const path = request.url.split('?', 1)[0] ?? ''
    const allowed = [...new Set(routes.filter(({ pattern }) => pattern.test(path)).map(({ method }) => method))]
    const problem =
      allowed.length > 0
        ? new ServiceProblem(
            'method-not-allowed',
            `${request.method} is not taken here; ${allowed.join(' and ')} is.`,
            [],
            undefined,
            {
              allow: allowed.join(', '),
            },
          )
        : new ServiceProblem('not-found', `There is nothing at ${path}.`)
    request.problem = problem.type
    return send(request, reply, problem)
  })
}

const LITERAL = /[.*+?^${}()|[\]\\]/gu

/** A route's address as a pattern; addresses that end in a wildcard take any method's rest and are left out. */
const patternOf = (url: string): RegExp =>
  url.endsWith('*') ? /^\b$/u : new RegExp(`^${url.replace(LITERAL, '\\$&').replace(/:[^/]+/gu, '[^/]+')}$`, 'u')
