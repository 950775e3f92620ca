import { Counter, Gauge, Histogram, type Registry } from 'prom-client'
import type { EvidenceWatch } from '../submittals/evidence-pool.js'

/** What is counted of the thread that writes the evidence of submittals and signs, apart from the threads that check. */

/** Seconds. A form of one sign is written at once, all of a large set takes minutes. */
const WAITS = [0.001, 0.005, 0.01, 0.05, 0.1, 0.5, 1, 2.5, 5, 10, 30, 60]
const WRITING = [0.005, 0.01, 0.05, 0.1, 0.5, 1, 2.5, 5, 10, 30, 60, 120, 300]
const MILLISECONDS = 1000

export function evidenceMeters(registry: Registry): EvidenceWatch {
  const own = { registers: [registry] }
  const tasks = new Gauge({
    ...own,
    name: 'fingertrue_evidence_tasks',
    help: 'Forms of evidence that are written, or that wait for the thread.',
    labelNames: ['state'],
  })
  const waits = new Histogram({
    ...own,
    name: 'fingertrue_evidence_wait_duration_seconds',
    help: 'Time that a form of evidence waited for its thread.',
    buckets: WAITS,
  })
  const writing = new Histogram({
    ...own,
    name: 'fingertrue_evidence_write_duration_seconds',
    help: 'Time from the beginning of a form of evidence to its end; a client that reads slowly is part of it.',
    buckets: WRITING,
  })
  const stops = new Counter({
    ...own,
    name: 'fingertrue_evidence_stopped_total',
    help: 'Threads that were stopped because a form of evidence used up its time or its memory.',
    labelNames: ['what'],
  })
  // What has never happened is 0 and not absent.
  for (const state of ['running', 'waiting']) tasks.set({ state }, 0)
  for (const what of ['time', 'memory']) stops.inc({ what }, 0)
  return {
    asked: () => tasks.inc({ state: 'waiting' }),
    begun: (waited) => {
      tasks.dec({ state: 'waiting' })
      tasks.inc({ state: 'running' })
      waits.observe(waited / MILLISECONDS)
    },
    ended: (taken) => {
      tasks.dec({ state: taken === undefined ? 'waiting' : 'running' })
      if (taken !== undefined) writing.observe(taken / MILLISECONDS)
    },
    stopped: (what) => stops.inc({ what }),
  }
}
