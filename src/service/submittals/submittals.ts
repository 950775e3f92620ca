import { Readable } from 'node:stream'
import type { FastifyInstance } from 'fastify'
import { z } from 'zod'
import { ownSubmittal } from '../../submittals/create.js'
import { provedHistory } from '../../submittals/history.js'
import type { Keeping } from '../../submittals/keeping.js'
import type { SubmittalRow } from '../../submittals/store/tables.js'
import { cancelSubmittal, deleteSubmittal, listSubmittals } from '../../submittals/submittals.js'
import { verdictsOf } from '../../submittals/verdicts.js'
import { actorOf } from '../actor.js'
import { historyText } from './history-resource.js'
import { HistoryResource, SubmittalList, SubmittalResource } from './resources.js'
import { route, queryOf, SubmittalParams, submittalOf } from './route.js'
import { submittalResource } from './rows.js'

/** Submittals as wholes: listed, read, cancelled, deleted, and their history. */

const LIST_DEFAULT = 20
const LIST_MOST = 100
const LONGEST_CURSOR = 100

const ListQuery = z.strictObject({
  limit: z.coerce.number().int().positive().max(LIST_MOST).optional(),
  cursor: z.string().max(LONGEST_CURSOR).optional().describe('`next` of the page before.'),
})

export async function resourceOf(keeping: Keeping, row: SubmittalRow): Promise<SubmittalResource> {
  return submittalResource(row, await verdictsOf(keeping, row.id))
}

export function submittalRoutes(app: FastifyInstance, keeping: Keeping) {
  app.get(
    '/v1/submittals',
    route(
      {
        id: 'listSubmittals',
        summary: 'List submittals',
        description: 'The newest first, a page at a time.',
        answer: SubmittalList,
      },
      undefined,
      ListQuery,
    ),
    async (request) => {
      const { limit, cursor } = queryOf(ListQuery, request)
      const { rows, next } = await listSubmittals(keeping, actorOf(request), limit ?? LIST_DEFAULT, cursor)
      return { submittals: await Promise.all(rows.map((row) => resourceOf(keeping, row))), next }
    },
  )

  const get = {
    id: 'getSubmittal',
    summary: 'One submittal',
    description: 'Its state and how far it is.',
    answer: SubmittalResource,
  }
  app.get('/v1/submittals/:submittal', route(get, SubmittalParams), async (request) =>
    resourceOf(keeping, await ownSubmittal(keeping, actorOf(request), submittalOf(request).submittal)),
  )

  const cancel = {
    id: 'cancelSubmittal',
    summary: 'Cancel a submittal',
    description: 'Signs that have no report yet are not checked any more; reports that are there stay.',
    answer: SubmittalResource,
    problems: ['not-now' as const],
  }
  app.post('/v1/submittals/:submittal/cancel', route(cancel, SubmittalParams), async (request) =>
    resourceOf(keeping, await cancelSubmittal(keeping, actorOf(request), submittalOf(request).submittal)),
  )

  const remove = {
    id: 'deleteSubmittal',
    summary: 'Delete a submittal',
    description: 'Everything that belongs to it is deleted, its history included. Fetch its evidence before.',
    status: 204,
  }
  app.delete('/v1/submittals/:submittal', route(remove, SubmittalParams), async (request, reply) => {
    const { submittal } = submittalOf(request)
    await deleteSubmittal(keeping, actorOf(request), submittal)
    request.log.info({ submittal, actor: actorOf(request).name }, 'a submittal was deleted')
    return reply.code(204).send()
  })

  const history = {
    id: 'getHistory',
    summary: 'The history of a submittal',
    description: 'Every change: who, when, what. Each event holds the hash of the one before; all are computed anew.',
    answer: HistoryResource,
  }
  app.get('/v1/submittals/:submittal/history', route(history, SubmittalParams), async (request, reply) => {
    const row = await ownSubmittal(keeping, actorOf(request), submittalOf(request).submittal)
    const proved = await provedHistory(keeping.store.db, row)
    return reply.type('application/json; charset=utf-8').send(Readable.from(historyText(row.id, proved)))
  })
}
