import { fork, type ChildProcess } from 'node:child_process'
import { setPriority } from 'node:os'
import { fileURLToPath } from 'node:url'
import type { Painted } from './painter-process.js'
import { STAND_BACK } from './pool.js'

/** Milliseconds that one picture may take, the start of the process included. */
const TIME_LIMIT = 10_000
/** Characters of a drawing that is painted; one of ours is far shorter. */
const LONGEST_DRAWING = 8 * 1024 * 1024

/**
 * Pictures (PNG) of our redrawn drawings, painted in a process of its own, which lives from one to the next and is replaced when it dies
 * or takes too long. Only drawings of ours belong here, never one that was sent.
 */
export class Painter {
  private child: ChildProcess | undefined
  private last: Promise<unknown> = Promise.resolve()

  /**
   * @param onError told why there is no picture
   * @param module what the process runs
   */
  constructor(
    private readonly onError: (error: Error) => void,
    private readonly module = new URL('./painter-process.js', import.meta.url),
    private readonly timeLimit = TIME_LIMIT,
  ) {}

  /** One picture after the other. @returns null when there can be none: evidence is complete without */
  paint(svg: string): Promise<Uint8Array | null> {
    const painted = this.last.then(() => this.paintNow(svg))
    this.last = painted
    return painted
  }

  /** Pictures of all drawings that there are, by the ids of their signs. */
  async paintAll(signs: readonly { id: string; drawing: string | null }[]): Promise<Map<string, Uint8Array>> {
    const pictures = new Map<string, Uint8Array>()
    for (const { id, drawing } of signs) {
      const picture = drawing === null ? null : await this.paint(drawing)
      if (picture) pictures.set(id, picture)
    }
    return pictures
  }

  close(): void {
    this.child?.kill('SIGKILL')
    this.child = undefined
  }

  private async paintNow(svg: string): Promise<Uint8Array | null> {
    try {
      if (svg.length > LONGEST_DRAWING) throw new Error(`A drawing of ${svg.length} characters is not painted.`)
      return await this.ask(svg)
    } catch (error) {
      this.onError(error instanceof Error ? error : new Error(String(error)))
      return null
    }
  }

  private ask(svg: string): Promise<Uint8Array> {
    const child = this.child?.connected ? this.child : this.start()
    child.channel?.ref()
    return new Promise<Uint8Array>((resolve, reject) => {
      const end = (answer: Painted | Error): void => {
        clearTimeout(timer)
        child.off('message', end).off('exit', ended)
        child.channel?.unref()
        if (answer instanceof Error) {
          this.close()
          reject(answer)
        } else if ('png' in answer) resolve(answer.png)
        else reject(new Error(`A drawing could not be painted: ${answer.failed}`))
      }
      const ended = (code: number | null, signal: string | null): void =>
        end(new Error(`The painting process ended (${signal ?? code}).`))
      const late = `A picture took longer than ${this.timeLimit} milliseconds.`
      const timer = setTimeout(() => end(new Error(late)), this.timeLimit)
      child.on('message', end).on('exit', ended)
      child.send(svg, (error) => error && end(error))
    })
  }

  private start(): ChildProcess {
    const child = fork(fileURLToPath(this.module), [], {
      serialization: 'advanced',
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
      execArgv: [],
      // It has no business with the environment.
      env: {},
    })
    // Between two pictures it does not keep the service from ending; when it dies then, the next picture starts another.
    child.unref()
    child.on('error', this.onError)
    if (child.pid !== undefined) setPriority(child.pid, STAND_BACK)
    this.child = child
    return child
  }
}
