import { setTimeout as wait } from 'node:timers/promises'
import { sweep, type Retention, type Swept } from './retention.js'
import type { Store } from './store/connect.js'

/** Sweeps now and then, for as long as the process works. */

/** Milliseconds after the start, and between two rounds. */
const FIRST = 60_000
const PAUSE = 3_600_000

export class Sweeping {
  private readonly stopping = new AbortController()
  private running: Promise<void> | undefined

  constructor(
    private readonly store: Store,
    private readonly retention: Retention,
    private readonly told: { onSwept: (swept: Swept) => void; onError: (error: unknown) => void },
  ) {}

  start(): void {
    this.running ??= this.run()
  }

  /** Waits until a round that runs is done. */
  async stop(): Promise<void> {
    this.stopping.abort()
    await this.running
  }

  private async run(): Promise<void> {
    const { signal } = this.stopping
    for (let pause = FIRST; !signal.aborted; pause = PAUSE) {
      const over = await wait(pause, true, { signal, ref: false }).catch(() => false)
      if (over) await this.round()
    }
  }

  private async round(): Promise<void> {
    try {
      const swept = await sweep(this.store, this.retention, new Date())
      if (swept && swept.submittals + swept.uploads + swept.files > 0) this.told.onSwept(swept)
    } catch (error) {
      this.told.onError(error)
    }
  }
}
