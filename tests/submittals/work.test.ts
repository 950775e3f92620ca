import { setTimeout as wait } from 'node:timers/promises'
import { describe, expect, it } from 'vitest'
import type { Queue, TakenJob } from '../../src/submittals/queue/queue.js'
import { NoHand, Worker } from '../../src/submittals/work.js'

/** A queue that says what was asked of it, and can be told to fail. */
class WatchedQueue implements Queue {
  readonly waiting: TakenJob[] = []
  readonly finished: string[] = []
  readonly returned: [id: string, attempt: number, after: number][] = []
  failing = false

  constructor(count: number) {
    this.waiting = Array.from({ length: count }, (_, i) => ({ id: `j${i}`, data: { i }, attempt: 1 }))
  }

  private demand(): void {
    if (this.failing) throw Object.assign(new Error('away'), { code: 'ECONNREFUSED' })
  }
  async take(_: string, most: number) {
    await wait(1)
    this.demand()
    return this.waiting.splice(0, most)
  }
  async done(_: string, ids: readonly string[]) {
    await wait(1)
    this.demand()
    this.finished.push(...ids)
  }
  async again(_: string, { id, attempt }: TakenJob, after: number) {
    await wait(1)
    this.demand()
    this.returned.push([id, attempt, after])
  }
  add = () => Promise.resolve()
  start = () => Promise.resolve()
  close = () => Promise.resolve()
  depth = () => Promise.resolve({ waiting: this.waiting.length, oldest: 0 })
}

const until = async (holds: () => boolean) => {
  for (let tries = 0; tries < 1000 && !holds(); tries++) await wait(5)
  expect(holds()).toBe(true)
}

describe('the worker', () => {
  function working(queue: WatchedQueue, perform: (job: TakenJob) => Promise<number | undefined>) {
    const errors: Error[] = []
    const worker = new Worker({ queue, name: 'checks', atOnce: 2, perform, onError: (error) => errors.push(error) })
    worker.start()
    return { worker, errors }
  }

  it('does all jobs, never more at a time than it may', async () => {
    const queue = new WatchedQueue(30)
    let now = 0
    let most = 0
    const { worker } = working(queue, async () => {
      most = Math.max(most, ++now)
      await wait(2)
      now--
      return undefined
    })
    await until(() => queue.finished.length === 30)
    await worker.stop()
    expect(most).toBe(2)
  })

  it('counts what failed, and not what found no hand or no store', async () => {
    const queue = new WatchedQueue(3)
    const faults = [new Error('a fault'), new NoHand(), Object.assign(new Error('full'), { code: 'SQLITE_FULL' })]
    const { worker, errors } = working(queue, (job) => Promise.reject(faults[Number(job.data.i)] ?? new Error('none')))
    await until(() => queue.returned.length === 3)
    await worker.stop()
    expect(queue.returned.map(([id, attempt]) => [id, attempt]).sort()).toEqual([
      ['j0', 1],
      ['j1', 0],
      ['j2', 0],
    ])
    expect(errors.map(({ message }) => message).sort()).toEqual(['a fault', 'full'])
  })

  it('finishes what runs when it is stopped, and gives the rest back as if never taken', async () => {
    const queue = new WatchedQueue(8)
    let begun = 0
    const { worker } = working(queue, async () => {
      begun++
      await wait(50)
      return undefined
    })
    await until(() => begun === 2)
    await worker.stop()
    expect(queue.finished.sort()).toEqual(['j0', 'j1'])
    expect(queue.returned.map(([, attempt, after]) => [attempt, after])).toEqual(
      Array.from({ length: 6 }, () => [0, 0]),
    )
  })

  it('outlives a queue that is away, and stays within its number of hands', { timeout: 20_000 }, async () => {
    const queue = new WatchedQueue(8)
    let now = 0
    let most = 0
    const { worker, errors } = working(queue, async () => {
      most = Math.max(most, ++now)
      await wait(20)
      now--
      return undefined
    })
    await until(() => now === 2)
    queue.failing = true
    await until(() => errors.length > 0)
    queue.failing = false
    queue.waiting.push({ id: 'later', data: {}, attempt: 1 })
    worker.awaken()
    await until(() => queue.finished.includes('later'))
    await worker.stop()
    expect(most).toBe(2)
  })
})
