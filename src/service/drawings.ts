import { askerOf } from './admission/asker.js'
import type { FastifyInstance } from 'fastify'
import type { CheckParts } from './checks.js'
import { DrawingAnswer } from './drawing-schema.js'
import { DrawingRequest, orderFromJson } from './drawing-request.js'
import { unsupported } from './errors.js'
import { LongJson } from './json.js'
import { negotiate } from './negotiate.js'
import { documented } from './openapi.js'
import type { Operation } from './operation.js'
import { LIMITS } from './settings.js'
import { DRAWING_TYPES } from './task.js'

/** POST /v1/drawings: what a sign says and which standards it is for, to a drawing that passes. */

const EXAMPLE = {
  standards: ['us-ada-2010'],
  sign: { use: 'permanent-room', lettering: [{ text: 'Seed Library' }] },
}

const OPERATION: Operation = {
  id: 'createDrawing',
  tag: 'making',
  summary: 'Draw a sign that passes',
  description:
    'Takes a sign without its geometry and answers with a drawing at true scale that passes its own check at the drawing stage for all the standards asked, or with the problem that names what excludes what. The same order gives the same drawing.',
  requests: {
    'application/json': {
      schema: DrawingRequest,
      examples: { room: { summary: 'The name of a room', value: () => EXAMPLE } },
    },
  },
  answer: {
    status: 200,
    description: 'The drawing, what goes with it, and its report.',
    content: { 'application/json': { schema: DrawingAnswer }, 'image/svg+xml': {} },
  },
  problems: [
    'malformed-json',
    'not-acceptable',
    'too-large',
    'unsupported-media-type',
    'invalid-description',
    'unknown-standard',
    'untranslatable-text',
    'cannot-satisfy',
    'too-complex',
    'busy',
  ],
}

/** A drawing runs nothing and loads nothing, wherever it is opened. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; sandbox"

export function drawingRoutes(app: FastifyInstance, { pool }: CheckParts) {
  const { config, schema } = documented(OPERATION)
  app.post('/v1/drawings', { config, schema, bodyLimit: LIMITS.formField }, async (request, reply) => {
    const type = negotiate(request, reply, DRAWING_TYPES)
    const { body } = request
    if (body === undefined || Buffer.isBuffer(body) || request.isMultipart()) throw unsupported(request)
    const input = orderFromJson(body instanceof LongJson ? body.read() : body)
    const answer = await pool.run({ kind: 'drawing', type, input }, askerOf(request))
    if (type !== 'application/json') void reply.header('content-security-policy', POLICY)
    return reply.type(`${type}; charset=utf-8`).send(answer.body)
  })
}
