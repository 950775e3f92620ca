import type { Translator } from '../braille/translator.js'
import type { Core } from './core.js'

/**
 * The core of this process, which is loaded when it is first needed: a start is over in half the time without it, and a process that
 * only keeps submittals or waits never needs its memory.
 */
export class LateCore {
  private loading: Promise<Core> | undefined
  private loaded: Core | undefined

  /** @param onLoaded told when it is there: loading holds up the event loop for a moment */
  constructor(
    private readonly translator?: Translator,
    private readonly onLoaded: () => void = () => undefined,
  ) {}

  /** @throws {Error} when the braille engine does not pass its self-test */
  load(): Promise<Core> {
    this.loading ??= import('./core.js').then(({ createCore }) => {
      this.loaded = createCore(this.translator)
      this.onLoaded()
      return this.loaded
    })
    return this.loading
  }

  /** For those who have awaited `load()`. */
  get now(): Core {
    if (!this.loaded) throw new Error('The core is not loaded yet.')
    return this.loaded
  }
}
