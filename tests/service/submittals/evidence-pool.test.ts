import { afterEach, expect, it } from 'vitest'
import { EvidencePool, type EvidenceWatch } from '../../../src/service/submittals/evidence-pool.js'
import type { EvidenceTask } from '../../../src/service/submittals/evidence-worker.js'

/** What is told of forms whose thread never comes to an end. The limits are invented, so that the test is short. */

const SOURCES = {
  received: () => Promise.resolve([]),
  picture: () => Promise.resolve(null),
  history: () => Promise.resolve(new Uint8Array()),
}
const STUCK = new URL('./stuck-evidence.mjs', import.meta.url)
let pool: EvidencePool
afterEach(() => pool.close())

it('is told of a form that is begun and stopped, and of one that is refused as the line is full', async () => {
  const told: string[] = []
  const watch: EvidenceWatch = {
    asked: () => told.push('asked'),
    begun: (waited) => told.push(waited >= 0 ? 'begun' : 'begun before it was asked for'),
    ended: (taken) => told.push(taken === undefined ? 'never began' : 'ended'),
    stopped: (what) => told.push(`stopped by ${what}`),
  }
  pool = new EvidencePool({ worker: STUCK, timeLimit: 200, heapLimit: 256, queueLimit: 0 }, () => undefined, watch)
  // The thread that stands in for the other reads nothing of the task.
  const first = pool.write({} as EvidenceTask, SOURCES)
  await expect(pool.write({} as EvidenceTask, SOURCES)).rejects.toMatchObject({ type: 'busy' })
  await expect(first).rejects.toMatchObject({ type: 'too-complex' })
  await expect.poll(() => told).toHaveLength(4)
  expect(told[0]).toBe('asked')
  expect(told[1]).toBe('begun')
  expect(told.slice(2).sort()).toEqual(['ended', 'stopped by time'])
})
