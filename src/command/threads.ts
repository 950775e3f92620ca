import { Piscina } from 'piscina'
import type { Checked, Task } from './worker.js'
import { problemOf } from './problem.js'

export interface ThreadLimits {
  /** Megabytes of heap of one thread. */
  heap: number
  /** Milliseconds that one check may take. */
  time: number
}

/** Heap as in the service; longer, since nobody waits for it in a shop and a busy machine of a pipeline is slow. */
const USUAL: ThreadLimits = { heap: 256, time: 60_000 }
/** Given to threads by the program itself: on old Nodes they would tell that JSON modules are experimental. */
const QUIET = ['--disable-warning=ExperimentalWarning']

/** Threads that check signs, so that none takes all the time or all the memory. */
export class Threads {
  private readonly pool: Piscina

  constructor(
    count: number,
    private readonly limits = USUAL,
  ) {
    this.pool = new Piscina({
      filename: new URL('./worker.js', import.meta.url).href,
      minThreads: 1,
      maxThreads: count,
      concurrentTasksPerWorker: 1,
      resourceLimits: { maxOldGenerationSizeMb: limits.heap },
      execArgv: QUIET,
      env: {},
    })
    // What becomes of a task is told by its promise.
    this.pool.on('error', () => undefined)
  }

  /** Never fails: what goes wrong is told of the sign. */
  async check(task: Task): Promise<Checked> {
    try {
      return (await this.pool.run(task, { signal: AbortSignal.timeout(this.limits.time) })) as Checked
    } catch (error) {
      return { problem: whatWentWrong(error, this.limits) }
    }
  }

  close(): Promise<void> {
    return this.pool.destroy()
  }
}

function whatWentWrong(error: unknown, { heap, time }: ThreadLimits): { title: string; detail: string } {
  if (error instanceof Error && error.name === 'AbortError')
    return problemOf({ type: 'too-complex', detail: `The check took longer than ${time} milliseconds.`, errors: [] })
  if (error instanceof Error && 'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY')
    return problemOf({
      type: 'too-complex',
      detail: `The check needed more than ${heap} megabytes of memory.`,
      errors: [],
    })
  return { title: 'The check broke off', detail: error instanceof Error ? error.message : String(error) }
}
