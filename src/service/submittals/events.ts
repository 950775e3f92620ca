import { Readable } from 'node:stream'
import type { FastifyInstance } from 'fastify'
import { z } from 'zod'
import { ownSubmittal } from '../../submittals/create.js'
import type { Keeping } from '../../submittals/keeping.js'
import { hasEnded, progressOf, ProgressWatch, type Progress } from '../../submittals/progress.js'
import { verdictsOf } from '../../submittals/verdicts.js'
import { actorOf } from '../actor.js'
import { ServiceProblem } from '../problems.js'
import { LIMITS } from '../settings.js'
import { route, SubmittalParams, submittalOf, type Described } from './route.js'

/** GET /v1/submittals/{id}/events: server-sent events (WHATWG HTML, 9.2). */

/** Milliseconds between two comments that keep proxies from taking a silent stream for a dead one (WHATWG HTML, 9.2.7). */
const HEARTBEAT = 15_000
/** Milliseconds after which a client whose stream broke comes back. */
const RETRY = 2000
/** Seconds after which a stream that had no room may be asked for again. */
const RETRY_FULL = '5'

const HEADERS = {
  'content-type': 'text/event-stream; charset=utf-8',
  'cache-control': 'no-store',
  // A connection that was a stream is not waited for when the process stops.
  connection: 'close',
  // Asks proxies that gather answers not to gather this one (nginx, ngx_http_proxy_module).
  'x-accel-buffering': 'no',
}

const Headers = z.object({
  'Last-Event-ID': z.string().optional().describe('The last `id` that was read: what it told is not told again.'),
})

const EXAMPLE = `retry: ${RETRY}

id: 3
event: progress
data: {"state":"running","signs":{"total":2,"done":1},"verdicts":{"pass":1,"fail":0,"undetermined":0,"notApplicable":0,"none":1}}

id: 5
event: done
data: {"state":"done","signs":{"total":2,"done":2},"verdicts":{"pass":1,"fail":1,"undetermined":0,"notApplicable":0,"none":0}}

`

const EVENTS: Described = {
  id: 'watchSubmittal',
  summary: 'Progress of a submittal as it happens',
  description:
    'Server-sent events: `progress` whenever something has changed, at most a few times a second, and `done` when every sign has been checked or the submittal was cancelled; then the stream ends. `id` is the number of events in the history. Who comes back with the `id` of `done` in Last-Event-ID is answered with 204, which tells a client to stop.',
  answer: {
    'text/event-stream': { examples: { events: { summary: 'Two signs are checked', value: () => EXAMPLE } } },
  },
  headers: Headers,
  problems: ['busy'],
}

export function eventRoutes(app: FastifyInstance, keeping: Keeping) {
  const watch = new ProgressWatch(keeping, (err) => app.log.error({ err }, 'the progress of a submittal was not read'))
  const open = new Set<() => void>()
  /** How many of them are whose. */
  const held = new Map<string, number>()
  // The process does not wait for streams: a client comes back to another by itself.
  app.addHook('preClose', (done) => {
    for (const end of open) end()
    done()
  })

  const at = '/v1/submittals/:submittal/events'
  app.get(at, { ...route(EVENTS, SubmittalParams), exposeHeadRoute: false }, async (request, reply) => {
    const actor = actorOf(request)
    const row = await ownSubmittal(keeping, actor, submittalOf(request).submittal)
    const last = Number(request.headers['last-event-id'] ?? Number.NaN)
    // A number that is not there yet is none of ours.
    let told = last <= row.event_count ? last : -1
    if (hasEnded(row) && told === row.event_count) return reply.code(204).send()
    const ofOne = held.get(actor.organisation) ?? 0
    if (open.size >= LIMITS.streams || ofOne >= LIMITS.streamsOfOne)
      throw new ServiceProblem('busy', 'Too many streams are open.', [], undefined, { 'retry-after': RETRY_FULL })

    const stream = new Readable({ read: () => undefined })
    const tell = (progress: Progress | undefined) => {
      if (!open.has(end)) return
      if (progress === undefined) return end()
      const { event_count } = progress.row
      const ended = hasEnded(progress.row)
      // Whoever reads slowly is told of the latest state only.
      const tooSlow = stream.readableLength > stream.readableHighWaterMark
      if (event_count <= told || (tooSlow && !ended)) return
      told = event_count
      stream.push(eventText(progress, ended ? 'done' : 'progress'))
      if (ended) end()
    }
    const heart = setInterval(() => stream.push(':\n\n'), HEARTBEAT)
    const leave = watch.follow(row.id, tell)
    const end = () => {
      if (!open.delete(end)) return
      const left = (held.get(actor.organisation) ?? 1) - 1
      if (left > 0) held.set(actor.organisation, left)
      else held.delete(actor.organisation)
      leave()
      clearInterval(heart)
      stream.push(null)
    }
    open.add(end)
    held.set(actor.organisation, (held.get(actor.organisation) ?? 0) + 1)
    stream.once('close', end)
    stream.push(`retry: ${RETRY}\n\n`)
    try {
      // Read once more, as it may have changed before it was followed.
      const first = await ownSubmittal(keeping, actor, row.id)
      tell({ row: first, verdicts: await verdictsOf(keeping, row.id) })
    } catch (error) {
      stream.destroy()
      throw error
    }
    return reply.headers(HEADERS).send(stream)
  })
}

const eventText = ({ row, verdicts }: Progress, event: 'progress' | 'done'): string =>
  `id: ${row.event_count}\nevent: ${event}\ndata: ${JSON.stringify(progressOf(row, verdicts))}\n\n`
