import type { FastifyInstance } from 'fastify'
import { z } from 'zod'
import { documented } from './openapi.js'
import type { Operation } from './operation.js'
import { ServiceProblem } from './problems.js'

/** /livez: the process answers. /readyz: it should be sent work; not while it drains, nor while what is kept cannot be reached. */

const Health = z.strictObject({ status: z.literal('ok') }).meta({ id: 'Health', description: 'All is well.' })

const OK = { status: 'ok' } as const

const health = (id: string, summary: string, description: string, problems: Operation['problems']): Operation => ({
  id,
  tag: 'operations',
  summary,
  description,
  answer: {
    status: 200,
    description: 'All is well.',
    content: { 'application/json': { schema: Health, examples: { ok: { summary: 'All is well', value: () => OK } } } },
  },
  problems,
})

/** Seconds after which it may be asked again. */
const RETRY_AFTER = { draining: '1', store: '5' }

/** @param storeAnswers whether what is kept can be reached now */
export function healthRoutes(app: FastifyInstance, isDraining: () => boolean, storeAnswers: () => Promise<boolean>) {
  const alive = health('isAlive', 'Is the process alive?', 'Answers as long as the process can answer at all.', [])
  app.get('/livez', documented(alive), async () => OK)

  const ready = health(
    'isReady',
    'Should work be sent here?',
    'Refuses while the service drains before it stops, and while its database does not answer.',
    ['busy', 'store-unavailable'],
  )
  app.get('/readyz', documented(ready), async () => {
    if (isDraining()) throw notReady('busy', 'The service is about to stop.', RETRY_AFTER.draining)
    if (!(await storeAnswers())) throw notReady('store-unavailable', 'The database does not answer.', RETRY_AFTER.store)
    return OK
  })
}

/** What a process answers that only checks signs. */
const OF_WORKERS = ['/livez', '/readyz', '/metrics']

/** From now on everything else is refused: requests are for the processes that answer them. */
export function answerHealthOnly(app: FastifyInstance) {
  app.addHook('onRequest', async (request) => {
    if (!OF_WORKERS.includes(request.routeOptions.url ?? ''))
      throw new ServiceProblem('not-found', 'This process checks signs and answers no requests (ROLE=worker).')
  })
}

const notReady = (type: 'busy' | 'store-unavailable', detail: string, seconds: string): ServiceProblem =>
  new ServiceProblem(type, detail, [], undefined, { 'retry-after': seconds })
