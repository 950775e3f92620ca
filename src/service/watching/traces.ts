import type { Attributes, Span } from '@opentelemetry/api'
import type { IncomingHttpHeaders } from 'node:http'
import type { StageTime } from './stage-clock.js'

/** Traces of OpenTelemetry, as the service sees them. Only `open-telemetry.ts` knows the libraries, which most never load. */
export interface Traces {
  /** The span of a request; it continues the trace that the caller names (W3C Trace Context). */
  request(method: string, headers: IncomingHttpHeaders, attributes: Attributes): Span
  /** Ends the span of a request. @param answer with the template of the address, if there is one */
  answered(span: Span, answer: { method: string; route: string | undefined; status: number }): void
  /** The span of work that nobody waits for. */
  work(name: string): Span
  /** A span inside another for each stage. */
  stages(within: Span, times: readonly StageTime[]): void
  /** Sends what has not been sent, for a moment at most. */
  close(): Promise<void>
}

export type { Span }
