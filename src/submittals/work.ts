import { setTimeout as wait } from 'node:timers/promises'
import type { Queue, QueueName, TakenJob } from './queue/queue.js'
import { troubleOf } from './store/outage.js'

/** The loop of a worker: takes jobs, has so many of them done at a time, and goes on until it is stopped. */

export interface Work {
  queue: Queue
  name: QueueName
  /** Jobs that are done at the same time. */
  atOnce: number
  /** Jobs that are taken for each of them, so that no hand waits for the queue; absent: several. */
  ahead?: number
  /** Does one job. @returns seconds after which it is to come again, or undefined when it is done */
  perform: (job: TakenJob) => Promise<number | undefined>
  /** Told of faults, of the queue or of a job; a job at fault comes again. */
  onError: (error: Error) => void
}

/** Milliseconds between two looks where nobody says that there is work. */
const PAUSE = 500
/** Milliseconds after a fault of the queue: a database that is gone is not asked all the time. */
const PAUSE_AFTER_FAULT = 2000
/** Seconds after which a job at fault comes again. */
const AGAIN_AFTER = 5
/** Taken ahead, so that no hand waits for the queue. */
const AHEAD = 4

/** Thrown by a job for which there is no hand now: it comes again, and that it was tried does not count, as with faults of the store. */
export class NoHand extends Error {}

export class Worker {
  private stopping = new AbortController()
  private woken = new AbortController()
  private running: Promise<void> | undefined
  private mayGoOn = true

  constructor(private readonly work: Work) {}

  start(): void {
    this.running ??= this.run()
  }

  /** There is work: look now. */
  awaken(): void {
    this.woken.abort()
  }

  /** Takes nothing more and waits until what runs is done. */
  async stop(): Promise<void> {
    this.mayGoOn = false
    this.stopping.abort()
    await this.running
  }

  private async run(): Promise<void> {
    const { queue, name, atOnce, ahead = AHEAD, onError } = this.work
    while (this.mayGoOn) {
      this.woken = new AbortController()
      let pause = PAUSE
      try {
        const jobs = await queue.take(name, atOnce * ahead)
        if (jobs.length > 0) {
          await this.performAll(jobs)
          continue
        }
      } catch (error) {
        onError(asError(error))
        pause = PAUSE_AFTER_FAULT
      }
      const signal = AbortSignal.any([this.woken.signal, this.stopping.signal])
      await wait(pause, undefined, { signal }).catch(() => undefined)
    }
  }

  private async performAll(jobs: TakenJob[]): Promise<void> {
    const left = jobs.slice()
    const hand = async () => {
      for (let job = left.shift(); job; job = left.shift()) {
        if (!this.mayGoOn) await this.work.queue.again(this.work.name, untouched(job), 0)
        else await this.performOne(job)
      }
    }
    // All hands are waited for: one that the queue failed must not leave the others to a second round beside the first.
    const ends = await Promise.allSettled(Array.from({ length: this.work.atOnce }, hand))
    const failed = ends.find((end) => end.status === 'rejected')
    if (failed) throw asError(failed.reason)
  }

  private async performOne(job: TakenJob): Promise<void> {
    const { queue, name, perform, onError } = this.work
    let again: number | undefined
    try {
      again = await perform(job)
    } catch (error) {
      const excused = error instanceof NoHand || troubleOf(error) !== undefined
      if (!(error instanceof NoHand)) onError(asError(error))
      return queue.again(name, excused ? untouched(job) : job, AGAIN_AFTER)
    }
    if (again === undefined) await queue.done(name, [job.id])
    else await queue.again(name, job, again)
  }
}

/** As if it had not been taken this time. */
const untouched = (job: TakenJob): TakenJob => ({ ...job, attempt: job.attempt - 1 })

const asError = (error: unknown): Error => (error instanceof Error ? error : new Error(String(error)))
