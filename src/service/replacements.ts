/**
 * Keeps the lane of a thread that was stopped until the thread in its place is ready: whoever were let in before would wait for it
 * outside the line, where turns count for nothing.
 */
export class Replacements {
  private missing = 0
  private readonly kept: (() => void)[] = []

  /** @param longest milliseconds after which a lane is free even so: work then waits for the thread, and is told so */
  constructor(private readonly longest: number) {}

  /** A thread was stopped; the next lane that becomes free is its own. */
  lost(): void {
    this.missing++
  }

  /** A thread is ready; the first ones are in nobody's place. */
  arrived(): void {
    if (this.missing === 0) return
    this.missing--
    this.kept.shift()?.()
  }

  /** Frees a lane at once, or when the thread has been replaced. */
  free(lane: () => void): void {
    if (this.kept.length >= this.missing) return lane()
    const once = (): void => {
      clearTimeout(late)
      lane()
    }
    const late = setTimeout(() => {
      const at = this.kept.indexOf(once)
      if (at < 0) return
      this.kept.splice(at, 1)
      this.missing--
      lane()
    }, this.longest).unref()
    this.kept.push(once)
  }
}
