import { askerOf } from './admission/asker.js'
import type { FastifyInstance, FastifyRequest } from 'fastify'
import { DotPlan } from '../make/dot-plan/schema.js'
import type { CheckParts } from './checks.js'
import { readLater } from './checks.js'
import {
  DotPlanQuery,
  DotPlanRequest,
  planFromDrawing,
  planFromJson,
  programForm,
  type PlanTaskInput,
} from './dot-plan-request.js'
import { isProgram, unsupported } from './errors.js'
import { EXAMPLE_DRAWING } from './example-drawing.js'
import { LongJson } from './json.js'
import { negotiate } from './negotiate.js'
import { documented } from './openapi.js'
import type { Operation } from './operation.js'
import { PLAN_TYPES, type Answer } from './task.js'

/** POST /v1/dot-plans: dots in, the order in which a head can set them out. */

/** The letters “in”, twice: invented values. */
const EXAMPLE = {
  points: [
    [22.4, 70],
    [20, 72.4],
    [26.9, 70],
    [29.3, 70],
    [29.3, 72.4],
    [26.9, 74.8],
  ],
  head: { tipDiameter: 1, bodyDiameter: 12, bodyClearance: 6, lift: 3, plunge: 2.5 },
  machine: { travelRate: 3000, plungeRate: 1000, dwell: 0.2 },
  cartridge: { dots: 1000 },
  dot: { baseDiameter: 1.55, height: 0.7 },
}

const SVG_POLICY = "default-src 'none'; style-src 'unsafe-inline'; sandbox"

export function dotPlanRoutes(app: FastifyInstance, parts: CheckParts) {
  const example = (): unknown => {
    const input = planFromJson(EXAMPLE, {})
    return JSON.parse(String(parts.core.now.answer({ kind: 'dot-plan', type: 'application/json', input }).body))
  }
  const operation: Operation = {
    id: 'createDotPlan',
    tag: 'making',
    summary: 'Plan in which order dots are set',
    description:
      'Takes points, a drawing or a description, and answers with the order in which a head that sets one dot at each plunge can set them ' +
      'without standing over a dot that it has laid: with travel, time, volume, changes of cartridge and warnings. The Accept header picks the form. ' +
      'Beside a bare drawing the sizes stand in the query: head.lift=3, machine.dwell=0.2.',
    requests: {
      'application/json': {
        schema: DotPlanRequest,
        examples: { points: { summary: 'Six dots', value: () => EXAMPLE } },
      },
      'image/svg+xml': {
        examples: { drawing: { summary: 'The drawing of a room sign', value: () => EXAMPLE_DRAWING } },
      },
    },
    answer: {
      status: 200,
      description: 'The plan.',
      content: {
        'application/json': {
          schema: DotPlan,
          examples: { points: { summary: 'The plan of six dots', value: example } },
        },
        'text/csv': {},
        'image/svg+xml': {},
        'text/x-gcode': {},
      },
    },
    problems: [
      'malformed-json',
      'malformed-drawing',
      'entities-not-accepted',
      'not-acceptable',
      'too-large',
      'unsupported-media-type',
      'invalid-description',
      'invalid-parameters',
      'scale-unknown',
      'no-tactile-elements',
      'several-signs',
      'too-complex',
      'busy',
    ],
  }
  const { config, schema } = documented(operation)
  app.post(
    '/v1/dot-plans',
    { config, schema: { ...schema, querystring: DotPlanQuery }, validatorCompiler: readLater },
    async (request, reply) => {
      const type = negotiate(request, reply, PLAN_TYPES)
      const { body } = await run(request, type, parts)
      if (type === 'image/svg+xml') void reply.header('content-security-policy', SVG_POLICY)
      void reply.type(`${type}; charset=utf-8`)
      return reply.send(body)
    },
  )
}

/** A plan takes longer than others can wait: always in a thread. */
function run(request: FastifyRequest, type: (typeof PLAN_TYPES)[number], { pool }: CheckParts): Promise<Answer> {
  const query = request.query as Record<string, unknown>
  const { body } = request
  if (body === undefined || request.isMultipart() || isProgram(request))
    throw unsupported(request, 'application/json and image/svg+xml')
  const asker = askerOf(request)
  const ask = (input: PlanTaskInput) => pool.run({ kind: 'dot-plan', type, input }, asker)
  if (Buffer.isBuffer(body)) return ask(planFromDrawing(body, query))
  const form = programForm(query)
  if (body instanceof LongJson) return pool.run({ kind: 'dot-plan', type, form, json: body.bytes }, asker)
  return ask(planFromJson(body, form))
}
