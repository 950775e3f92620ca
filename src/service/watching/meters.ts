import { collectDefaultMetrics, Counter, Gauge, Histogram, Registry } from 'prom-client'
import { STAGES } from '../../stages.js'
import { VERSION } from '../../version.js'
import type { PoolWatch } from '../pool.js'
import { evidenceMeters } from './evidence-meters.js'
import { PROBLEMS, type ProblemType } from '../problem-table.js'
import type { StageTime } from './stage-clock.js'
import type { StoreReading } from './store-reading.js'

/**
 * What is counted and measured for Prometheus. Names follow its conventions (prometheus.io, “Metric and label naming”): base
 * units, `_total` for what only grows. No label tells of a client, a file or a sign, and none can take values without end.
 */

/** Seconds. Of requests: the boundaries that OpenTelemetry advises (semantic conventions for HTTP metrics). */
const REQUESTS = [0.005, 0.01, 0.025, 0.05, 0.075, 0.1, 0.25, 0.5, 0.75, 1, 2.5, 5, 7.5, 10]
const STAGES_OF_CHECKS = [0.0001, 0.00025, 0.0005, 0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5]
const WAITS = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30]

const MILLISECONDS = 1000

/** Methods by their names, all others as one (OpenTelemetry, `http.request.method`): a client may invent any. */
const METHODS = ['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS']
const OTHER = '_OTHER'
/** Stands for every address that there is not. */
const NO_ROUTE = 'none'

const VERDICTS = ['pass', 'fail', 'undetermined', 'not-applicable'] as const
type Verdict = (typeof VERDICTS)[number]

/** What a report comes to. */
export interface Judged {
  verdict: Verdict
  summary: { pass: number; fail: number; undetermined: number; notApplicable: number }
}

export const SENDINGS = ['taken', 'refused', 'unanswered'] as const

export class Meters {
  private readonly registry = new Registry()
  private readonly own = { registers: [this.registry] }

  private readonly requests = new Histogram({
    ...this.own,
    name: 'http_server_request_duration_seconds',
    help: 'From the head of a request to the end of its answer.',
    labelNames: ['method', 'route', 'status'],
    buckets: REQUESTS,
  })
  private readonly stages = new Histogram({
    ...this.own,
    name: 'fingertrue_check_stage_duration_seconds',
    help: 'Time that one check or reading spent in one of its stages.',
    labelNames: ['stage'],
    buckets: STAGES_OF_CHECKS,
  })
  private readonly reports = new Counter({
    ...this.own,
    name: 'fingertrue_reports_total',
    help: 'Reports that were made, by what they come to.',
    labelNames: ['verdict'],
  })
  private readonly findings = new Counter({
    ...this.own,
    name: 'fingertrue_findings_total',
    help: 'Findings of these reports.',
    labelNames: ['verdict'],
  })
  private readonly rejections = new Counter({
    ...this.own,
    name: 'fingertrue_rejections_total',
    help: 'Requests, and signs of submittals, that ended in a problem instead of an answer.',
    labelNames: ['what', 'problem'],
  })
  private readonly tasks = new Gauge({
    ...this.own,
    name: 'fingertrue_pool_tasks',
    help: 'Tasks that run in worker threads or wait for one.',
    labelNames: ['state'],
  })
  private readonly threads = new Gauge({
    ...this.own,
    name: 'fingertrue_pool_threads',
    help: 'Worker threads that check.',
  })
  private readonly waits = new Histogram({
    ...this.own,
    name: 'fingertrue_pool_wait_duration_seconds',
    help: 'Time that a task waited for a worker thread.',
    buckets: WAITS,
  })
  private readonly stops = new Counter({
    ...this.own,
    name: 'fingertrue_pool_stopped_total',
    help: 'Worker threads that were stopped because a task used up its time or its memory.',
    labelNames: ['what'],
  })
  /** Of the thread that writes evidence. */
  readonly evidence = evidenceMeters(this.registry)
  private readonly store = new Gauge({
    ...this.own,
    name: 'fingertrue_store_up',
    help: '1 when the database answers, else 0.',
  })
  private readonly jobs = new Gauge({
    ...this.own,
    name: 'fingertrue_queue_jobs',
    help: 'Jobs that are due and wait, in the queue that all processes share.',
    labelNames: ['queue'],
  })
  private readonly ages = new Gauge({
    ...this.own,
    name: 'fingertrue_queue_oldest_job_age_seconds',
    help: 'For how long the oldest of these jobs has been due.',
    labelNames: ['queue'],
  })
  private readonly open = new Gauge({
    ...this.own,
    name: 'fingertrue_open_signs',
    help: 'Signs of submittals that wait for their reports.',
  })
  private readonly sendings = new Counter({
    ...this.own,
    name: 'fingertrue_notification_attempts_total',
    help: 'Attempts to send a notification.',
    labelNames: ['outcome'],
  })

  /** @param threads worker threads that check */
  constructor(threads: number) {
    const build = new Gauge({
      ...this.own,
      name: 'fingertrue_build_info',
      help: 'Always 1; its labels tell what runs.',
      labelNames: ['version', 'node'],
    })
    build.set({ version: VERSION, node: process.versions.node }, 1)
    this.threads.set(threads)
    // What has never happened is 0 and not absent, so that the first time is seen as an increase.
    for (const stage of STAGES) this.stages.zero({ stage })
    for (const verdict of VERDICTS) for (const all of [this.reports, this.findings]) all.inc({ verdict }, 0)
    for (const problem of Object.keys(PROBLEMS)) this.rejections.inc({ what: 'request', problem }, 0)
    for (const what of ['time', 'memory']) this.stops.inc({ what }, 0)
    for (const outcome of SENDINGS) this.sendings.inc({ outcome }, 0)
  }

  /** @param route the template of the address */
  requested(method: string, route: string | undefined, status: number, milliseconds: number): void {
    this.requests.observe(
      {
        method: METHODS.includes(method) ? method : OTHER,
        route: route ?? NO_ROUTE,
        status: `${String(status).slice(0, 1)}xx`,
      },
      milliseconds / MILLISECONDS,
    )
  }

  staged(times: readonly StageTime[]): void {
    for (const { stage, spent } of times) this.stages.observe({ stage }, spent / MILLISECONDS)
  }

  judged({ verdict, summary }: Judged): void {
    this.reports.inc({ verdict })
    const { notApplicable, ...others } = summary
    for (const [verdict, count] of Object.entries(others)) this.findings.inc({ verdict }, count)
    this.findings.inc({ verdict: 'not-applicable' satisfies Verdict }, notApplicable)
  }

  rejected(what: 'request' | 'sign', problem: ProblemType): void {
    this.rejections.inc({ what, problem })
  }

  sent(outcome: (typeof SENDINGS)[number]): void {
    this.sendings.inc({ outcome })
  }

  readonly pool: PoolWatch = {
    begun: (waited) => this.waits.observe(waited / MILLISECONDS),
    stopped: (what) => this.stops.inc({ what }),
  }

  /** All of it in the text format. What the store would tell while it does not answer is not a number. */
  async text(load: { running: number; waiting: number }, stored: StoreReading | undefined): Promise<string> {
    this.tasks.set({ state: 'running' }, load.running)
    this.tasks.set({ state: 'waiting' }, load.waiting)
    this.store.set(stored ? 1 : 0)
    this.open.set(stored?.openSigns ?? NaN)
    for (const [queue, { waiting, oldest }] of Object.entries(stored?.queues ?? {})) {
      this.jobs.set({ queue }, waiting)
      this.ages.set({ queue }, oldest)
    }
    if (!stored) for (const gauge of [this.jobs, this.ages]) gauge.reset()
    return `${await this.registry.metrics()}\n${await ofProcess().metrics()}`
  }

  /** As the text format is named (Prometheus, “Exposition formats”). */
  get contentType(): string {
    return this.registry.contentType
  }
}

/** Of the library: gauges named as if they only grew. The same is told by type under other names. */
const MISNAMED = ['nodejs_active_handles_total', 'nodejs_active_requests_total', 'nodejs_active_resources_total']

let known: Registry | undefined

/** Memory, processor time, event loop: one for the process, however many services it holds. */
function ofProcess(): Registry {
  if (known) return known
  known = new Registry()
  collectDefaultMetrics({ register: known })
  for (const name of MISNAMED) known.removeSingleMetric(name)
  return known
}
