import helmet from '@fastify/helmet'
import Fastify, { type FastifyInstance } from 'fastify'

/**
 * The security headers of every answer. They are the library's, and the same for all answers: it is asked for them once, since
 * asking it each time takes longer than reading a request. A page sets a content security policy of its own.
 */

const OPTIONS = {
  contentSecurityPolicy: { directives: { 'upgrade-insecure-requests': null } },
  strictTransportSecurity: false,
}

/** What Node adds to every answer by itself. */
const OF_NODE = ['connection', 'content-length', 'date', 'keep-alive']

export async function installSecurityHeaders(app: FastifyInstance): Promise<void> {
  const headers = await headersOfLibrary()
  app.addHook('onRequest', (_request, reply, done) => {
    void reply.headers(headers)
    done()
  })
}

async function headersOfLibrary(): Promise<Record<string, string>> {
  const app = Fastify()
  await app.register(helmet, OPTIONS)
  app.get('/', (_request, reply) => reply.code(204).send())
  const { headers } = await app.inject('/')
  await app.close()
  return Object.fromEntries(
    Object.entries(headers).flatMap(([name, value]) =>
      OF_NODE.includes(name) || value === undefined ? [] : [[name, String(value)]],
    ),
  )
}
