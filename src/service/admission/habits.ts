/** How long the tasks of each asker usually take, so that the wait behind them can be told. */

interface Seen {
  whose: string
  at: number
}

/** What one task adds to the mean: about the last ten count (an exponentially weighted moving average). */
const WEIGHT = 0.2
/** Askers that are remembered; beyond them the one that was not seen for longest is forgotten. */
const MOST_ASKERS = 1000
/** Milliseconds after which somebody who asks for nothing counts as gone. */
const GONE_AFTER = 60_000

export class Habits {
  /** Milliseconds of a usual task by asker, a mean that forgets; undefined before one has ended. The last was seen last. */
  private readonly known = new Map<string, number | undefined>()
  private ofAll: number | undefined
  /** Who asked last, and who was the last before that was somebody else. */
  private seen: readonly [last?: Seen, before?: Seen] = []

  constructor(private readonly clock: () => number) {}

  /** The asker asks for something now. */
  see(whose: string): void {
    const [last, before] = this.seen
    this.seen = [{ whose, at: this.clock() }, last?.whose === whose ? before : last]
    const usual = this.known.get(whose)
    this.known.delete(whose)
    this.known.set(whose, usual)
    if (this.known.size <= MOST_ASKERS) return
    const [first] = this.known.keys()
    if (first !== undefined) this.known.delete(first)
  }

  /** A task of the asker has ended after so many milliseconds. */
  note(whose: string, taken: number): void {
    this.ofAll = moved(this.ofAll, taken)
    if (this.known.has(whose)) this.known.set(whose, moved(this.known.get(whose), taken))
  }

  /** Milliseconds of a usual task; of somebody new, of all tasks. */
  usual(whose: string): number {
    return this.known.get(whose) ?? this.ofAll ?? 0
  }

  /** Whether somebody else has asked for something lately. */
  hasOthers(whose: string): boolean {
    const other = this.seen.find((one) => one !== undefined && one.whose !== whose)
    return other !== undefined && other.at > this.clock() - GONE_AFTER
  }
}

const moved = (mean: number | undefined, value: number): number =>
  mean === undefined ? value : mean + WEIGHT * (value - mean)
