import { PassThrough, type Readable } from 'node:stream'
import { MessageChannel } from 'node:worker_threads'
import { Piscina } from 'piscina'
import { Refusal } from '../../refusal.js'
import { STAND_BACK } from '../pool.js'
import { ServiceProblem } from '../problems.js'
import type { EvidenceTask, FromThread } from './evidence-worker.js'

/** A thread that writes evidence, apart from those that check: a large set takes long and much memory. */

export interface EvidenceSettings {
  worker: URL
  /** Milliseconds that one form may take. */
  timeLimit: number
  /** Megabytes. */
  heapLimit: number
  /** Requests that may wait for the thread. */
  queueLimit: number
}

/** What the thread asks for while it writes. */
export interface Sources {
  received: (sign: string) => Promise<unknown>
  picture: (drawing: string) => Promise<Uint8Array | null>
  history: () => Promise<Uint8Array>
}

/** Told what becomes of forms, by whom it concerns. */
export interface EvidenceWatch {
  asked: () => void
  /** @param waited milliseconds until the thread took it */
  begun: (waited: number) => void
  /** @param taken milliseconds of the thread; undefined where it never began */
  ended: (taken: number | undefined) => void
  /** The thread was stopped, since the form used up what it may. */
  stopped: (what: 'time' | 'memory') => void
}

const NOBODY: EvidenceWatch = {
  asked: () => undefined,
  begun: () => undefined,
  ended: () => undefined,
  stopped: () => undefined,
}

/** Milliseconds after which a thread that has nothing to do ends. */
const IDLE = 60_000
/** Milliseconds that a form may wait for the thread. */
const LONGEST_WAIT = 60_000
/** Milliseconds for which the thread waits for a client that does not take what was written; others want it too. */
const LONGEST_PAUSE = 20_000
const RETRY_AFTER = 10
const BYTES_PER_MEGABYTE = 1024 * 1024

export class EvidencePool {
  private threads: Piscina | undefined
  private taken = 0

  constructor(
    private readonly settings: EvidenceSettings,
    private readonly onError: (error: Error) => void,
    private readonly watch: EvidenceWatch = NOBODY,
  ) {}

  /**
   * @returns the form as it is written, or undefined when there is nothing to write; it begins when its first piece is there, so that
   *   what goes wrong before is a problem and not a broken answer
   * @throws {ServiceProblem} `busy` @throws {Refusal} `too-complex`
   */
  async write(task: EvidenceTask, sources: Sources): Promise<Readable | undefined> {
    const { queueLimit, timeLimit } = this.settings
    if (this.taken > queueLimit) throw busy()
    this.taken++
    this.watch.asked()
    const asked = performance.now()
    const { port1: ours, port2 } = new MessageChannel()
    const abort = new AbortController()
    let begunAt: number | undefined
    let timer = setTimeout(() => abort.abort(), LONGEST_WAIT)
    const stream = new PassThrough()
    const finished = this.start()
      .run({ task, port: port2 }, { signal: abort.signal, transferList: [port2] })
      .then(
        () => void stream.end(),
        (error: unknown) => {
          stream.destroy(error instanceof Error ? error : new Error('evidence could not be written'))
          throw this.explain(error, begunAt !== undefined)
        },
      )
      .finally(() => {
        this.taken--
        this.watch.ended(begunAt === undefined ? undefined : performance.now() - begunAt)
        clearTimeout(timer)
        ours.close()
      })
    const begun = new Promise<void>((resolve) => {
      ours.on('message', (message: FromThread) => {
        if (message === 'begun') {
          begunAt = performance.now()
          this.watch.begun(begunAt - asked)
          clearTimeout(timer)
          timer = setTimeout(() => abort.abort(), timeLimit)
          return
        }
        if ('piece' in message) resolve()
        void answer(message, stream, sources).then(
          (reply) => ours.postMessage(reply),
          (error: unknown) => stream.destroy(error instanceof Error ? error : new Error('evidence lacks a part')),
        )
      })
    })
    // A client that goes away lets the thread write to the end: it is not worth a new thread.
    stream.on('error', () => undefined)
    const isWritten = await Promise.race([begun.then(() => true), finished.then(() => false)])
    finished.catch(() => undefined)
    return isWritten ? stream : undefined
  }

  async close(): Promise<void> {
    await this.threads?.destroy()
  }

  private start(): Piscina {
    const { worker, heapLimit } = this.settings
    if (this.threads) return this.threads
    this.threads = new Piscina({
      filename: worker.href,
      minThreads: 0,
      maxThreads: 1,
      idleTimeout: IDLE,
      concurrentTasksPerWorker: 1,
      niceIncrement: STAND_BACK,
      resourceLimits: { maxOldGenerationSizeMb: heapLimit },
      env: {},
    })
    // Without a listener a thread that dies would take the process with it.
    this.threads.on('error', this.onError)
    return this.threads
  }

  private explain(error: unknown, hasBegun: boolean): unknown {
    const { timeLimit: time, heapLimit: heap } = this.settings
    if (error instanceof Error && error.name === 'AbortError' && !hasBegun) return busy()
    if (error instanceof Error && error.name === 'AbortError') {
      this.watch.stopped('time')
      return tooMuch(`The evidence took longer than the ${time} milliseconds that it may take.`, time)
    }
    if (error instanceof Error && 'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY') {
      this.watch.stopped('memory')
      const detail = `The evidence needed more than the ${heap} megabytes of memory that it may use.`
      return tooMuch(detail, heap * BYTES_PER_MEGABYTE)
    }
    return error
  }
}

async function answer(message: Exclude<FromThread, 'begun'>, stream: PassThrough, sources: Sources): Promise<unknown> {
  if ('piece' in message) {
    if (stream.destroyed || stream.write(message.piece)) return null
    const late = setTimeout(() => stream.destroy(), LONGEST_PAUSE)
    await new Promise<void>((resolve) => {
      stream.once('drain', resolve)
      stream.once('close', resolve)
    })
    clearTimeout(late)
    return null
  }
  if (message.ask === 'received') return sources.received(message.sign)
  return message.ask === 'picture' ? sources.picture(message.drawing) : sources.history()
}

const ADVICE = 'Ask for fewer signs with `from` and `count`, or for a form that is cheaper to write, such as CSV.'

const tooMuch = (detail: string, limit: number): Refusal =>
  new Refusal('too-complex', `${detail} ${ADVICE}`, [], { limit, actual: limit + 1 })

const busy = (): ServiceProblem =>
  new ServiceProblem('busy', 'Other evidence is being written, and the queue is full.', [], undefined, {
    'retry-after': String(RETRY_AFTER),
  })
