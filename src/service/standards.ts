import { createHash } from 'node:crypto'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import { Refusal } from '../refusal.js'
import { findStandards, listStandards } from '../standards/catalogue.js'
import { negotiate } from './negotiate.js'
import { documented } from './openapi.js'
import type { Operation } from './operation.js'
import { ServiceProblem } from './problems.js'
import { standardEntry, StandardList, standardTable, StandardTable } from './standard-table.js'

/** GET /v1/standards and /v1/standards/{id}: the tables that signs are held against. */

const LIST: Operation = {
  id: 'listStandards',
  tag: 'standards',
  summary: 'List the standards',
  description: 'All standards that a sign can be held against, each with its revision and a digest of its table.',
  answer: {
    status: 200,
    description: 'The standards.',
    content: {
      'application/json': {
        schema: StandardList,
        examples: {
          all: { summary: 'All standards', value: () => ({ standards: listStandards().map(standardEntry) }) },
        },
      },
    },
  },
  problems: ['not-acceptable'],
}

const ONE: Operation = {
  id: 'getStandard',
  tag: 'standards',
  summary: 'One standard as a table',
  description: 'Every requirement with its clause, limits, stage, force and citation.',
  answer: { status: 200, description: 'The table.', content: { 'application/json': { schema: StandardTable } } },
  problems: ['not-found', 'not-acceptable'],
}

const Params = z.strictObject({
  id: z
    .string()
    .describe('The id, optionally pinned to a revision.')
    .meta({ examples: ['us-ada-2010'] }),
})

export function standardRoutes(app: FastifyInstance) {
  app.get('/v1/standards', documented(LIST), async (request, reply) =>
    sendTagged(request, reply, JSON.stringify({ standards: listStandards().map(standardEntry) })),
  )

  const { config, schema } = documented(ONE)
  app.get('/v1/standards/:id', { config, schema: { ...schema, params: Params } }, async (request, reply) => {
    const { id } = request.params as z.infer<typeof Params>
    const [standard] = find(id)
    if (!standard) throw notFound(id)
    return sendTagged(request, reply, JSON.stringify(standardTable(standard)))
  })
}

function find(id: string) {
  try {
    return findStandards([id])
  } catch (error) {
    if (error instanceof Refusal && error.type === 'unknown-standard') throw notFound(id)
    throw error
  }
}

const notFound = (id: string) =>
  new ServiceProblem('not-found', `There is no standard “${id}”; GET /v1/standards lists what there is.`)

/** A strong entity tag over the bytes (RFC 9110, 8.8.3), so that a client that has them is not sent them again. */
function sendTagged(request: FastifyRequest, reply: FastifyReply, body: string) {
  const type = negotiate(request, reply, ['application/json'])
  const tag = `"${createHash('sha256').update(body).digest('base64url')}"`
  void reply.header('etag', tag).header('cache-control', 'no-cache').type(type)
  const known = request.headers['if-none-match']?.split(',').map((item) => item.trim().replace(/^W\//u, ''))
  return known?.includes(tag) || known?.includes('*') ? reply.code(304).send() : reply.send(body)
}
