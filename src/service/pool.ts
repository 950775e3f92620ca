import { MessageChannel } from 'node:worker_threads'
import { Piscina } from 'piscina'
import { Refusal } from '../refusal.js'
import { FairLine, type Asker } from './admission/fair-line.js'
import { ServiceProblem } from './problems.js'
import { Replacements } from './replacements.js'
import type { Settings } from './settings.js'
import type { Answer, RefusedAnswer, Task, UnreadTask } from './task.js'

/** Seconds after which a client may ask again when no thread begins. */
const RETRY_AFTER = 2
/** Milliseconds that a thread may take to begin. */
const LONGEST_WAIT = 30_000
/** Whose tasks usually take more than this share of the time limit leaves a thread to others. */
const SLOW = 0.25
const BYTES_PER_MEGABYTE = 1024 * 1024
/**
 * Megabytes of new objects that a thread makes before the dead ones are cleared away, both halves and the copies: a check makes
 * many that live as long as it does, and with twice the room of Node's default most are dead before they are ever copied.
 */
const YOUNG_GENERATION = 96
/** By how much threads stand back behind the event loop where both want a core (`nice`, POSIX), which all other clients wait for. */
export const STAND_BACK = 10

/** Told what becomes of tasks, by whom it concerns. */
export interface PoolWatch {
  /** @param waited milliseconds until a thread took the task */
  begun: (waited: number) => void
  /** A thread was stopped, since its task used up what it may. */
  stopped: (what: 'time' | 'memory') => void
}

const NOBODY: PoolWatch = { begun: () => undefined, stopped: () => undefined }

/** Threads that check drawings under a limit of time and memory, so that no drawing holds up or takes down the service. */
export class Pool {
  private threads: Piscina | undefined
  /** Whoever is let in begins at once: the pool's own queue, which knows no askers, stays empty. */
  private readonly line: FairLine
  private readonly replacements = new Replacements(LONGEST_WAIT)
  /** Tasks that were let in and that no thread has begun with. */
  private handed = 0
  private running = 0
  private rest: NodeJS.Timeout | undefined

  constructor(
    private readonly settings: Settings,
    private readonly onError: (error: Error) => void,
    private readonly watch: PoolWatch = NOBODY,
  ) {
    const { threads, queueLimit, longestWait, timeLimit } = settings
    this.line = new FairLine({
      lanes: threads,
      mostWaiting: queueLimit,
      longestWait,
      slowFrom: timeLimit * SLOW,
      after: (free) => this.replacements.free(free),
      clock: () => performance.now(),
    })
  }

  /** Tasks that have a thread, and those that wait for one. */
  get load(): { running: number; waiting: number } {
    return { running: this.running, waiting: this.line.waiting + this.handed }
  }

  /** Starts the threads, which take a moment to be ready; without this the first task does, and the first one after a rest. */
  start(): Piscina {
    if (this.threads) return this.threads
    const { worker, threads, heapLimit } = this.settings
    this.threads = new Piscina({
      filename: worker.href,
      minThreads: threads,
      maxThreads: threads,
      concurrentTasksPerWorker: 1,
      niceIncrement: STAND_BACK,
      resourceLimits: { maxOldGenerationSizeMb: heapLimit, maxYoungGenerationSizeMb: YOUNG_GENERATION },
      // Threads have no business with the environment.
      env: {},
    })
    this.threads.on('error', this.onError)
    this.threads.on('workerCreate', () => this.replacements.arrived())
    return this.threads
  }

  /**
   * Runs one task in a thread. The bytes of its drawing or of its JSON are handed over, not copied.
   * @throws {Refusal} of the core, or `too-complex` when the time or the memory is used up.
   * @throws {ServiceProblem} `busy` when its turn would come too late; `malformed-json`.
   */
  async run(task: Task | UnreadTask, asker: Asker): Promise<Answer> {
    const asked = performance.now()
    clearTimeout(this.rest)
    try {
      return await this.line.run(asker, () => this.runInThread(task, asked))
    } finally {
      this.restLater()
    }
  }

  /** Threads that nobody has needed for a while are let go: each holds memory for its tables and its braille engine. */
  private restLater(): void {
    clearTimeout(this.rest)
    const { restAfter } = this.settings
    if (restAfter === undefined || this.load.running + this.load.waiting > 0) return
    this.rest = setTimeout(() => {
      void this.threads?.destroy().catch(this.onError)
      this.threads = undefined
    }, restAfter)
    this.rest.unref()
  }

  private async runInThread(task: Task | UnreadTask, asked: number): Promise<Answer> {
    const { port1: begun, port2 } = new MessageChannel()
    const abort = new AbortController()
    let began: number | undefined
    this.handed++
    let timer = setTimeout(() => abort.abort(), LONGEST_WAIT)
    begun.once('message', () => {
      began = performance.now()
      this.handed--
      this.running++
      this.watch.begun(began - asked)
      clearTimeout(timer)
      timer = setTimeout(() => abort.abort(), limit)
    })
    const limit = this.limitOf(task)
    const { handed, bytes } = handedOver(task)
    try {
      const options = { signal: abort.signal, transferList: [port2, ...(bytes ? [bytes.buffer] : [])] }
      const result = (await this.start().run({ task: handed, begun: port2 }, options)) as Answer | RefusedAnswer
      if ('body' in result) return result
      const { type, detail, errors, excess, conflicts } = result.refused
      throw type === 'malformed-json'
        ? new ServiceProblem(type, detail, errors)
        : new Refusal(type, detail, errors, excess, conflicts)
    } catch (error) {
      throw this.explain(error, began, limit)
    } finally {
      clearTimeout(timer)
      begun.close()
      if (began === undefined) this.handed--
      else this.running--
    }
  }

  async close(): Promise<void> {
    clearTimeout(this.rest)
    await this.threads?.destroy()
  }

  private limitOf(task: Task | UnreadTask): number {
    const { timeLimit, pageTimeLimit, planTimeLimit, uploadTimeLimit } = this.settings
    if (task.kind === 'dot-plan') return planTimeLimit
    if (task.kind === 'upload') return uploadTimeLimit
    return task.kind === 'check' && task.type === 'application/pdf' ? pageTimeLimit : timeLimit
  }

  private explain(error: unknown, began: number | undefined, limit: number): unknown {
    if (!(error instanceof Error) || error instanceof Refusal) return error
    if (error.name === 'AbortError') {
      if (began === undefined) return busy()
      this.replacements.lost()
      this.watch.stopped('time')
      return tookTooLong(performance.now() - began, limit)
    }
    if ('code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY') {
      this.replacements.lost()
      this.watch.stopped('memory')
      return this.tookTooMuch()
    }
    return error
  }

  private tookTooMuch(): Refusal {
    const limit = this.settings.heapLimit * BYTES_PER_MEGABYTE
    const detail = `The work needed more than the ${this.settings.heapLimit} megabytes of memory that it may use.`
    return new Refusal('too-complex', detail, [], { limit, actual: limit + 1 })
  }
}

function tookTooLong(actual: number, limit: number): Refusal {
  const detail = `The work took longer than the ${limit} milliseconds that it may take.`
  return new Refusal('too-complex', detail, [], { limit, actual: Math.round(actual) })
}

const busy = (): ServiceProblem =>
  new ServiceProblem('busy', 'No worker began with this in time.', [], undefined, {
    'retry-after': String(RETRY_AFTER),
  })

/** A task whose bytes can be handed over, and these. */
function handedOver(task: Task | UnreadTask): { handed: Task | UnreadTask; bytes?: Uint8Array<ArrayBuffer> } {
  if (task.kind !== 'upload' && 'json' in task) {
    const json = ownBytes(task.json)
    return { handed: { ...task, json }, bytes: json }
  }
  if (task.kind === 'dot-plan' || task.kind === 'drawing' || task.kind === 'upload') return { handed: task }
  if (!task.input.drawing) return { handed: task }
  const drawing = ownBytes(task.input.drawing)
  return { handed: { ...task, input: { ...task.input, drawing } }, bytes: drawing }
}

/** The bytes in a buffer of their own: a small upload shares its buffer with others, which must not be handed over. */
function ownBytes(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const { buffer, byteOffset, byteLength } = bytes
  const whole = byteOffset === 0 && byteLength === buffer.byteLength
  return whole && buffer instanceof ArrayBuffer ? new Uint8Array(buffer) : new Uint8Array(bytes)
}
