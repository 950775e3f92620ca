import { setTimeout } from 'node:timers/promises'
import { afterEach, describe, expect, it } from 'vitest'
import { Refusal } from '../../src/refusal.js'
import { KEPT } from '../../src/service/admission/asker.js'
import type { Asker } from '../../src/service/admission/fair-line.js'
import { Pool } from '../../src/service/pool.js'
import { ServiceProblem } from '../../src/service/problems.js'
import { DEFAULT_SETTINGS, type Settings } from '../../src/service/settings.js'
import type { Question } from '../../src/service/task.js'
import type { CheckInput } from '../../src/check.js'

/** All figures are invented: short limits, so that the tests are short. */
const settings: Settings = {
  ...DEFAULT_SETTINGS,
  worker: new URL('./stuck-worker.mjs', import.meta.url),
  threads: 1,
  timeLimit: 300,
  heapLimit: 64,
  queueLimit: 4,
}

let pool: Pool | undefined
const open = (change: Partial<Settings> = {}) => (pool = new Pool({ ...settings, ...change }, () => undefined))
afterEach(() => pool?.close())

const task = (order: string): Question & { input: CheckInput } => ({
  kind: 'check',
  type: 'application/json',
  input: {
    drawing: new TextEncoder().encode(order),
    standards: [],
    options: { use: 'gift', decisionRule: 'simple', unitSystem: 'printed', language: 'en' },
  },
})

const ANYBODY: Asker = { whose: 'anybody', isGone: () => false }

const failure = async (run: Promise<unknown>): Promise<unknown> =>
  run.then(
    () => undefined,
    (error: unknown) => error,
  )

describe('a thread', () => {
  it('stops what takes too long, says how long it may take, and works on', async () => {
    const used = open()
    const refusal = await failure(used.run(task('loop'), ANYBODY))
    expect(refusal).toBeInstanceOf(Refusal)
    expect(refusal).toMatchObject({ type: 'too-complex', excess: { limit: 300 } })
    expect((refusal as Refusal).excess?.actual).toBeGreaterThanOrEqual(295)
    expect((await used.run(task('next'), ANYBODY)).body).toContain('next')
  })

  it('stops what takes too much memory, and works on', async () => {
    const used = open({ timeLimit: 20_000 })
    const refusal = await failure(used.run(task('hoard'), ANYBODY))
    expect(refusal).toMatchObject({ name: 'Refusal', type: 'too-complex', excess: { limit: 64 * 1024 * 1024 } })
    expect((await used.run(task('next'), ANYBODY)).body).toContain('next')
  })

  it('survives a fault and an exit of its own', async () => {
    const used = open({ timeLimit: 20_000 })
    expect(await failure(used.run(task('throw'), ANYBODY))).not.toBeInstanceOf(Refusal)
    expect(await failure(used.run(task('exit'), ANYBODY))).toBeInstanceOf(Error)
    expect((await used.run(task('next'), ANYBODY)).body).toContain('next')
  })

  it('is let go after a rest, and not before, and another takes the next task', async () => {
    const used = open({ restAfter: 500, timeLimit: 20_000 })
    const count = async () => Number((await used.run(task('count'), ANYBODY)).body)
    expect([await count(), await count()]).toEqual([1, 2])
    await setTimeout(1500)
    expect(await count()).toBe(1)
  })

  it('stays while something runs, however long it takes', async () => {
    const used = open({ restAfter: 200, timeLimit: 1000, threads: 2 })
    const long = failure(used.run(task('loop'), ANYBODY))
    expect((await used.run(task('next'), ANYBODY)).body).toContain('next')
    expect(await long).toMatchObject({ type: 'too-complex' })
  })

  it('sees nothing of the environment', async () => {
    expect(JSON.parse(String((await open().run(task('look'), ANYBODY)).body))).toEqual({
      environment: [],
      thread: 'look',
    })
  })
})

describe('the queue', () => {
  it('does not count waiting as work', async () => {
    // Three endless tasks of 300 ms one after the other: the last waits 600 ms and is still not late.
    const used = open()
    const results = await Promise.all(['loop', 'loop', 'next'].map((order) => failure(used.run(task(order), ANYBODY))))
    expect(results.map((result) => result === undefined)).toEqual([false, false, true])
  })

  it('refuses with a time to come back when it is full', async () => {
    const used = open({ queueLimit: 1 })
    await used.run(task('warm'), ANYBODY)
    const results = await Promise.all(Array.from({ length: 6 }, () => failure(used.run(task('loop'), ANYBODY))))
    const busy = results.filter((result) => result instanceof ServiceProblem)
    // One runs, one waits.
    expect(busy).toHaveLength(4)
    expect(busy[0]).toMatchObject({
      type: 'busy',
      headers: { 'retry-after': expect.stringMatching(/^\d+$/) as string },
    })
  })
})

it('tells what runs, what waits and what was stopped, and is at rest afterwards', async () => {
  const waits: number[] = []
  const stops: string[] = []
  const watch = { begun: (waited: number) => waits.push(waited), stopped: (what: string) => stops.push(what) }
  let used = (pool = new Pool({ ...settings, timeLimit: 600 }, () => undefined, watch))
  await used.run(task('warm'), ANYBODY)
  const both = Promise.all([failure(used.run(task('loop'), ANYBODY)), used.run(task('next'), ANYBODY)])
  expect(used.load).toEqual({ running: 0, waiting: 2 })
  await expect.poll(() => used.load).toEqual({ running: 1, waiting: 1 })
  await both
  expect(used.load).toEqual({ running: 0, waiting: 0 })
  await used.close()
  used = pool = new Pool({ ...settings, timeLimit: 20_000 }, () => undefined, watch)
  await failure(used.run(task('hoard'), ANYBODY))
  expect(used.load).toEqual({ running: 0, waiting: 0 })
  expect(stops).toEqual(['time', 'memory'])
  expect(waits).toHaveLength(4)
  expect(Math.min(...waits)).toBeGreaterThanOrEqual(0)
})

it('never refuses the check of a kept sign, and gives others their turns beside it', async () => {
  const used = open({ queueLimit: 0, longestWait: 0 })
  await used.run(task('warm'), ANYBODY)
  const kept = [1, 2, 3].map(() => failure(used.run(task('loop'), KEPT)))
  expect(await failure(used.run(task('next'), ANYBODY))).toMatchObject({ type: 'busy' })
  // All three had their time.
  for (const refusal of await Promise.all(kept)) expect(refusal).toMatchObject({ type: 'too-complex' })
})

it('leaves the bytes of a shared buffer to their owner', async () => {
  const shared = new TextEncoder().encode('xnextx')
  const used = open()
  const answer = await used.run({ ...task(''), input: { ...task('').input, drawing: shared.subarray(1, 5) } }, ANYBODY)
  expect(answer.body).toContain('"next"')
  expect(shared.byteLength).toBe(6)
})

it('lets nobody in for a stopped thread before another has taken its place', async () => {
  const used = open({ queueLimit: 1 })
  await used.run(task('warm'), ANYBODY)
  const stopped = failure(used.run(task('loop'), ANYBODY))
  const next = used.run(task('next'), ANYBODY)
  await stopped
  // Who comes next still waits in the line, where turns count, and not for the thread: the line is full.
  expect(await failure(used.run(task('third'), ANYBODY))).toMatchObject({ type: 'busy' })
  expect((await next).body).toContain('next')
})
