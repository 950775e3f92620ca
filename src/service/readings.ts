import type { FastifyInstance } from 'fastify'
import { CHECK_BODIES, CHECK_PROBLEMS, readLater, run, type CheckParts } from './checks.js'
import { CheckQuery } from './check-request.js'
import { negotiate } from './negotiate.js'
import { documented } from './openapi.js'
import type { Operation } from './operation.js'
import { ReadingAnswer } from './reading-answer.js'
import { readRequest } from './read-request.js'

/** POST /v1/readings: only what would be read off a sign. */

const OPERATION: Operation = {
  id: 'createReading',
  tag: 'checks',
  summary: 'Read a sign',
  description: 'Takes what a check takes and answers with what a finger or an eye would read off the sign, not judged.',
  ...(CHECK_BODIES && { requests: CHECK_BODIES }),
  answer: {
    status: 200,
    description: 'The reading.',
    content: { 'application/json': { schema: ReadingAnswer } },
  },
  problems: CHECK_PROBLEMS,
}

export function readingRoutes(app: FastifyInstance, parts: CheckParts) {
  const { config, schema } = documented(OPERATION)
  app.post(
    '/v1/readings',
    { config, schema: { ...schema, querystring: CheckQuery }, validatorCompiler: readLater },
    async (request, reply) => {
      const type = negotiate(request, reply, ['application/json'])
      const { body } = await run({ kind: 'reading' }, await readRequest(request), request, parts)
      return reply.type(type).send(body)
    },
  )
}
