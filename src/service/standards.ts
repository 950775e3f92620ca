import type { FastifyInstance } from 'fastify'
import { z } from 'zod'
import { Refusal } from '../refusal.js'
import { findStandards, listStandards, type LoadedStandard } from '../standards/catalogue.js'
import { documented } from './openapi.js'
import type { Operation } from './operation.js'
import { ServiceProblem } from './problems.js'
import {
  StandardChanges,
  standardChanges,
  standardEntry,
  StandardList,
  standardTable,
  StandardTable,
} from './standard-table.js'
import { sendTagged } from './tagged.js'

/** GET /v1/standards, /v1/standards/{id} and /v1/standards/{id}/changes: the tables that signs are held against. */

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
  description: 'Every requirement with its clause, limits, scope, force and citation; and what the table leaves out.',
  answer: { status: 200, description: 'The table.', content: { 'application/json': { schema: StandardTable } } },
  problems: ['not-found', 'not-acceptable'],
}

const CHANGES: Operation = {
  id: 'getStandardChanges',
  tag: 'standards',
  summary: 'How a table changed',
  description: 'Each raise of the revision, with the requirements that it changed. Earlier revisions stay callable.',
  answer: { status: 200, description: 'The changes.', content: { 'application/json': { schema: StandardChanges } } },
  problems: ['not-found', 'not-acceptable'],
}

const Params = z.strictObject({
  id: z
    .string()
    .describe('The id, optionally pinned to a revision.')
    .meta({ examples: ['us-ada-2010'] }),
})
type Params = z.infer<typeof Params>

export function standardRoutes(app: FastifyInstance) {
  app.get('/v1/standards', documented(LIST), async (request, reply) =>
    sendTagged(request, reply, { standards: listStandards().map(standardEntry) }),
  )
  const one = documented(ONE)
  app.get('/v1/standards/:id', { ...one, schema: { ...one.schema, params: Params } }, async (request, reply) =>
    sendTagged(request, reply, standardTable(named(request.params as Params))),
  )
  const changes = documented(CHANGES)
  app.get(
    '/v1/standards/:id/changes',
    { ...changes, schema: { ...changes.schema, params: Params } },
    async (request, reply) => sendTagged(request, reply, standardChanges(named(request.params as Params))),
  )
}

/** @throws {ServiceProblem} `not-found` */
function named({ id }: Params): LoadedStandard {
  const [standard] = find(id)
  if (!standard) throw notFound(id)
  return standard
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
