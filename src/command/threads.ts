import { Piscina } from 'piscina'
import type { Checked, Task } from './worker.js'
import { problemOf } from './problem.js'

/** Megabytes of heap of one thread, as in the service. */
const HEAP = 256
/** Milliseconds that one check may take: nobody waits for it in a shop, and a busy machine of a pipeline is slow. */
const TIME = 60_000
/** Given to threads by the program itself: on old Nodes they would tell that JSON modules are experimental. */
const QUIET = ['--disable-warning=ExperimentalWarning']

/** Threads that check signs, so that none takes all the time or all the memory. */
export class Threads {
  private readonly pool: Piscina

  constructor(count: number) {
    this.pool = new Piscina({
      filename: new URL('./worker.js', import.meta.url).href,
      minThreads: 1,
      maxThreads: count,
      concurrentTasksPerWorker: 1,
      resourceLimits: { maxOldGenerationSizeMb: HEAP },
      execArgv: QUIET,
      env: {},
    })
    // What becomes of a task is told by its promise.
    this.pool.on('error', () => undefined)
  }

  /** Never fails: what goes wrong is told of the sign. */
  async check(task: Task): Promise<Checked> {
    try {
      return (await this.pool.run(task, { signal: AbortSignal.timeout(TIME) })) as Checked
    } catch (error) {
      return { problem: whatWentWrong(error) }
    }
  }

  close(): Promise<void> {
    return this.pool.destroy()
  }
}

function whatWentWrong(error: unknown): { title: string; detail: string } {
  if (error instanceof Error && error.name === 'AbortError')
    return problemOf({ type: 'too-complex', detail: `The check took longer than ${TIME} milliseconds.`, errors: [] })
  if (error instanceof Error && 'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY')
    return problemOf({ type: 'too-complex', detail: `The check needed more than ${HEAP} megabytes.`, errors: [] })
  return { title: 'The check broke off', detail: error instanceof Error ? error.message : String(error) }
}
