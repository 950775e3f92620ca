// A server in a process of its own: the service, or a route that reads and validates the same body and does nothing with it. Its
// parent says which, and how long the answer is to be; told anything later, it tells the microseconds of the processor it has used.
import Fastify from 'fastify'
import { serializerCompiler, validatorCompiler } from 'fastify-type-provider-zod'
import { CheckRequest } from '../../dist/service/check-request.js'
import { buildService } from '../../dist/service/service.js'
import { DEFAULT_SETTINGS } from '../../dist/service/settings.js'

const [kind, length] = process.argv.slice(2)

/** On a machine that others use too, nobody is sent away: what is measured is the work. */
const PATIENT = { longestShortWait: 600_000, loopDelayLimit: 600_000 }

async function bare(answer) {
  const app = Fastify({ logger: false })
  app.setValidatorCompiler(validatorCompiler)
  app.setSerializerCompiler(serializerCompiler)
  app.post('/v1/checks', { schema: { body: CheckRequest } }, async (_request, reply) =>
    reply.type('application/json; charset=utf-8').send(answer),
  )
  return app
}

const app =
  kind === 'service'
    ? await buildService({ ...DEFAULT_SETTINGS, ...PATIENT, logLevel: 'silent', role: 'api' })
    : await bare(' '.repeat(Number(length)))
const base = await app.listen({ port: 0, host: '127.0.0.1' })
process.on('message', () => {
  const { user, system } = process.cpuUsage()
  process.send({ used: user + system })
})
process.on('disconnect', () => process.exit())
process.send({ base })
