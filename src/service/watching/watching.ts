import type { FastifyBaseLogger } from 'fastify'
import type { Settings } from '../settings.js'
import type { Answer } from '../task.js'
import { Meters } from './meters.js'
import type { Span, Traces } from './traces.js'

/** What watches a service: meters, traces, both or neither. */
export class Watching {
  constructor(
    readonly meters: Meters | undefined,
    readonly traces: Traces | undefined,
  ) {}

  /** Notes what an answer of the core tells of its making. @param span of whoever asked */
  answered({ stages, judged }: Answer, span: Span | null | undefined): void {
    if (stages) {
      this.meters?.staged(stages)
      if (span) this.traces?.stages(span, stages)
    }
    if (judged) this.meters?.judged(judged)
  }
}

export async function openWatching(settings: Settings, log: FastifyBaseLogger): Promise<Watching> {
  const { metrics, traces, threads } = settings
  return new Watching(metrics ? new Meters(threads) : undefined, traces ? await startTraces(log) : undefined)
}

async function startTraces(log: FastifyBaseLogger): Promise<Traces> {
  const { openTraces } = await import('./open-telemetry.js')
  return openTraces((fault) => log.warn({ fault }, 'traces are not sent as they should be'))
}
