import { context, diag, DiagLogLevel, SpanKind, SpanStatusCode, trace, type Attributes } from '@opentelemetry/api'
import { W3CTraceContextPropagator } from '@opentelemetry/core'
import { OTLPTraceExporter } from '@opentelemetry/exporter-trace-otlp-http'
import { defaultResource, detectResources, envDetector, resourceFromAttributes } from '@opentelemetry/resources'
import { BasicTracerProvider, BatchSpanProcessor } from '@opentelemetry/sdk-trace-base'
import type { IncomingHttpHeaders } from 'node:http'
import { setTimeout as wait } from 'node:timers/promises'
import { VERSION } from '../../version.js'
import type { StageTime } from './stage-clock.js'
import type { Traces } from './traces.js'

/**
 * Spans that go to a collector as OTLP over HTTP. The libraries read the standard variables themselves: where to send to, how
 * much to sample, what the service is called. Loaded only where traces are asked for.
 */

const NAME = 'fingertrue'
/** Milliseconds for which the end of the process waits for a collector. */
const PATIENCE = 2000

/** The first status that is a fault of ours (OpenTelemetry, semantic conventions for HTTP spans). */
const FIRST_FAULT = 500

const HEADERS = {
  get: (headers: IncomingHttpHeaders, key: string) => headers[key],
  keys: (headers: IncomingHttpHeaders) => Object.keys(headers),
}

const nothing = () => undefined

/** @param onFault told what goes wrong with the sending */
export function openTraces(onFault: (message: string) => void): Traces {
  const faults = { error: onFault, warn: onFault, info: nothing, debug: nothing, verbose: nothing }
  diag.setLogger(faults, { logLevel: DiagLogLevel.WARN, suppressOverrideMessage: true })
  const named = resourceFromAttributes({ 'service.name': NAME, 'service.version': VERSION })
  const resource = defaultResource()
    .merge(named)
    .merge(detectResources({ detectors: [envDetector] }))
  const spanProcessors = [new BatchSpanProcessor(new OTLPTraceExporter())]
  const provider = new BasicTracerProvider({ resource, spanProcessors })
  const tracer = provider.getTracer(NAME, VERSION)
  const propagator = new W3CTraceContextPropagator()
  return {
    request(method: string, headers: IncomingHttpHeaders, attributes: Attributes) {
      const callers = propagator.extract(context.active(), headers, HEADERS)
      return tracer.startSpan(method, { kind: SpanKind.SERVER, attributes }, callers)
    },
    answered(span, { method, route, status }) {
      span.setAttribute('http.response.status_code', status)
      if (route !== undefined) span.setAttribute('http.route', route).updateName(`${method} ${route}`)
      if (status >= FIRST_FAULT) span.setStatus({ code: SpanStatusCode.ERROR })
      span.end()
    },
    work: (name) => tracer.startSpan(name),
    stages(within, times: readonly StageTime[]) {
      const parent = trace.setSpan(context.active(), within)
      for (const { stage, began, ended, spent } of times)
        tracer
          .startSpan(
            stage,
            { startTime: new Date(began), attributes: { 'fingertrue.stage.milliseconds': spent } },
            parent,
          )
          .end(new Date(ended))
    },
    close: () => Promise.race([provider.shutdown(), wait(PATIENCE, undefined, { ref: false })]).catch(() => undefined),
  }
}
