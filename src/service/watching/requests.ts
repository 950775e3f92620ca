import type { FastifyInstance, FastifyRequest } from 'fastify'
import type { ProblemType } from '../problem-table.js'
import type { Span } from './traces.js'
import type { Watching } from './watching.js'

/** Every request is counted and timed; where traces are asked for it has a span, whose id its lines in the log carry. */

declare module 'fastify' {
  interface FastifyInstance {
    watching: Watching
  }
  interface FastifyRequest {
    /** The problem that it ended in. */
    problem: ProblemType | null
    span: Span | null
  }
}

/** Asked again and again by what watches the service: they have no traces. */
const OF_MACHINES = ['/livez', '/readyz', '/metrics']

export function watchRequests(app: FastifyInstance, watching: Watching): void {
  const { meters, traces } = watching
  app.decorate('watching', watching)
  app.decorateRequest('problem', null)
  app.decorateRequest('span', null)
  if (traces)
    app.addHook('onRequest', (request, reply, done) => {
      if (OF_MACHINES.includes(request.routeOptions.url ?? '')) return done()
      const span = traces.request(request.method, request.headers, attributesOf(request))
      const { traceId, spanId } = span.spanContext()
      request.span = span
      request.log = reply.log = request.log.child({ trace_id: traceId, span_id: spanId })
      done()
    })
  app.addHook('onResponse', (request, reply, done) => {
    const { method, problem, routeOptions, span } = request
    const route = request.is404 ? undefined : routeOptions.url
    meters?.requested(method, route, reply.statusCode, reply.elapsedTime)
    if (problem) meters?.rejected('request', problem)
    if (span) traces?.answered(span, { method, route, status: reply.statusCode })
    done()
  })
}

/** By the names of OpenTelemetry (semantic conventions for HTTP spans). No query: it may hold what a sign says. */
const attributesOf = ({ method, protocol, raw, url }: FastifyRequest) => ({
  'http.request.method': method,
  'url.scheme': protocol,
  'url.path': url.split('?', 1)[0] ?? '',
  'network.protocol.version': raw.httpVersion,
})
