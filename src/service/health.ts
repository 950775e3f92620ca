import type { FastifyInstance } from 'fastify'
import { z } from 'zod'
import { documented } from './openapi.js'
import type { Operation } from './operation.js'
import { ServiceProblem } from './problems.js'

/** /livez: the process answers. /readyz: it should be sent work; not while it drains. */

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

export function healthRoutes(app: FastifyInstance, isDraining: () => boolean) {
  const alive = health('isAlive', 'Is the process alive?', 'Answers as long as the process can answer at all.', [])
  app.get('/livez', documented(alive), async () => OK)

  const ready = health('isReady', 'Should work be sent here?', 'Refuses while the service drains before it stops.', [
    'busy',
  ])
  app.get('/readyz', documented(ready), async () => {
    if (isDraining())
      throw new ServiceProblem('busy', 'The service is about to stop.', [], undefined, { 'retry-after': '1' })
    return OK
  })
}
