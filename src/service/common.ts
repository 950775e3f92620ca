import type { FastifyInstance } from 'fastify'
import { z } from 'zod'
import { CARRIERS, USES } from '../sign/sign.js'
import { DEFAULT_USE, Standards } from '../check-options.js'
import { readLater } from './checks.js'
import { commonAnswer, CommonAnswer } from './common-answer.js'
import { documented } from './openapi.js'
import type { Operation } from './operation.js'
import { invalidQuery, knownByName, listOf } from './read-request.js'
import { sendTagged } from './tagged.js'

/** GET /v1/standards/common: what several standards allow together. */

const OPERATION: Operation = {
  id: 'getCommonWindows',
  tag: 'standards',
  summary: 'What several standards allow together',
  description:
    'For each quantity what satisfies every requirement in force, and the smallest sets of requirements that exclude each other.',
  answer: { status: 200, description: 'The windows.', content: { 'application/json': { schema: CommonAnswer } } },
  problems: ['not-acceptable', 'invalid-parameters', 'unknown-standard'],
}

const Query = z.strictObject({
  ids: z
    .string()
    .describe('Ids of standards parted by commas; `id@revision` pins one to a revision.')
    .meta({ examples: ['us-ada-2010'] }),
  use: z.enum(USES).default(DEFAULT_USE).describe('What the sign is for.'),
  carrier: z.enum(CARRIERS).optional().describe('What the braille is made on, where a code tells its sizes by that.'),
})

export function commonRoute(app: FastifyInstance) {
  const { config, schema } = documented(OPERATION)
  app.get(
    '/v1/standards/common',
    { config, schema: { ...schema, querystring: Query }, validatorCompiler: readLater },
    async (request, reply) => {
      const query = Query.safeParse(request.query)
      if (!query.success) throw invalidQuery(query.error, Query)
      const { ids, use, carrier } = query.data
      const names = Standards.safeParse(listOf(ids) ?? [])
      if (!names.success) throw invalidQuery(names.error, Standards, 'ids')
      const standards = knownByName(names.data, 'ids')
      return sendTagged(request, reply, commonAnswer(standards, { use, ...(carrier && { carrier }) }))
    },
  )
}
