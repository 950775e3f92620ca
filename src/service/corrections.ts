import type { FastifyInstance } from 'fastify'
import { Correction } from '../make/correct/schema.js'
import { CheckQuery } from './check-request.js'
import { CHECK_BODIES, CHECK_PROBLEMS, readLater, run, type CheckParts } from './checks.js'
import { negotiate } from './negotiate.js'
import { documented } from './openapi.js'
import type { Operation } from './operation.js'
import { readRequest } from './read-request.js'

/** POST /v1/corrections: a failing drawing in, the same drawing out with only what failed put right. */

const OPERATION: Operation = {
  id: 'createCorrection',
  tag: 'making',
  summary: 'Put a drawing right',
  description:
    'Takes what a check takes, with a drawing, and answers with the same drawing in which only what failed was changed: braille, the distances of letters and lines, and colours. Each change was borne out by a check of the result; what would break something else, or needs a decision about the design, is listed and left as it is.',
  requests: drawnBodies(),
  answer: {
    status: 200,
    description: 'The drawing, what was changed, what was not and why, and the check of the result.',
    content: { 'application/json': { schema: Correction } },
  },
  // A drilling program is no drawing: it is refused before it is read.
  problems: CHECK_PROBLEMS.filter((type) => type !== 'malformed-program'),
}

/** The bodies of a check that hold a drawing; a description alone has none to change. */
function drawnBodies(): NonNullable<Operation['requests']> {
  const { 'application/json': json, ...drawn } = CHECK_BODIES ?? {}
  return { ...drawn, ...(json && { 'application/json': { schema: json.schema } }) }
}

export function correctionRoutes(app: FastifyInstance, parts: CheckParts) {
  const { config, schema } = documented(OPERATION)
  app.post(
    '/v1/corrections',
    { config, schema: { ...schema, querystring: CheckQuery }, validatorCompiler: readLater },
    async (request, reply) => {
      const type = negotiate(request, reply, ['application/json'])
      const { body } = await run({ kind: 'correction' }, await readRequest(request), request, parts)
      return reply.type(`${type}; charset=utf-8`).send(body)
    },
  )
}
