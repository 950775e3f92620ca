import { monitorEventLoopDelay } from 'node:perf_hooks'
import type { FastifyInstance } from 'fastify'
import { ServiceProblem } from '../problems.js'

/**
 * Refuses new work under /v1, before anything of it is read, while the event loop takes long for each of its turns, whatever
 * it is that holds it up. Health, metrics and pages are answered all the same.
 */

/** Told how long the event loop took for its turns. */
export interface LoopWatch {
  start: () => void
  stop: () => void
  /** Milliseconds that a turn took on average, in the last interval that has ended. */
  delay: () => number
  /** A stall that is known, and over, is held against nobody: the interval that has not ended yet counts as quiet. */
  forget: () => void
}

/** Milliseconds over which a mean is taken. */
const INTERVAL = 500
/** Milliseconds between two looks of Node at its loop. */
const RESOLUTION = 10
const NANOSECONDS = 1e6
/** Seconds: the loop is looked at again before that. */
const RETRY_AFTER = '1'
const WORK = '/v1/'

/** The loop of this process, watched by Node's own histogram. */
export function watchLoop(): LoopWatch {
  const histogram = monitorEventLoopDelay({ resolution: RESOLUTION })
  let delay = 0
  let isForgotten = false
  let timer: NodeJS.Timeout | undefined
  return {
    start: () => {
      histogram.enable()
      timer = setInterval(() => {
        delay = histogram.count > 0 && !isForgotten ? histogram.mean / NANOSECONDS : 0
        isForgotten = false
        histogram.reset()
      }, INTERVAL).unref()
    },
    stop: () => {
      clearInterval(timer)
      histogram.disable()
    },
    delay: () => delay,
    forget: () => {
      isForgotten = true
      delay = 0
    },
  }
}

/** @param limit milliseconds */
export function installLoopGuard(app: FastifyInstance, watch: Omit<LoopWatch, 'forget'>, limit: number): void {
  app.addHook('onListen', async () => watch.start())
  app.addHook('onClose', async () => watch.stop())
  app.addHook('onRequest', (request, _reply, done) => {
    const isWork = request.routeOptions.url?.startsWith(WORK) ?? false
    done(isWork && watch.delay() > limit ? overloaded() : undefined)
  })
}

const overloaded = (): ServiceProblem =>
  new ServiceProblem(
    'busy',
    'The service has more to do than it can; nothing of the request was done.',
    [],
    undefined,
    {
      'retry-after': RETRY_AFTER,
    },
  )
