import type { FastifyInstance } from 'fastify'
import type { Keeping } from '../../submittals/keeping.js'
import { documented } from '../openapi.js'
import type { Operation } from '../operation.js'
import type { Pool } from '../pool.js'
import type { Meters } from './meters.js'
import { storeReader } from './store-reading.js'

/** GET /metrics: what Prometheus reads, in its text format. */

const OPERATION: Operation = {
  id: 'getMetrics',
  tag: 'operations',
  summary: 'How does the service do?',
  description:
    'Counters and measurements in the text format of Prometheus. It needs no key, so that it must not be reachable from outside; METRICS=off leaves it out.',
  answer: { status: 200, description: 'The measurements.', content: { 'text/plain': {} } },
  problems: [],
}

export function metricsRoute(app: FastifyInstance, meters: Meters, pool: Pool, keeping: Keeping) {
  const readStore = storeReader(keeping)
  app.get('/metrics', documented(OPERATION), async (_request, reply) => {
    const stored = await readStore()
    return reply.type(meters.contentType).send(await meters.text(pool.load, stored))
  })
}
