import { ServiceProblem } from '../problems.js'
import { Habits } from './habits.js'

/**
 * A waiting line that is fair between those who ask. Whoever waits gets turns one after the other, however many tasks one of them
 * has (round robin by asker: Nagle, RFC 970, 1985). A task is let in only where its turn comes soon enough; where the line
 * is full, the task of whoever has most in it makes room (longest queue drop: Suter and others, INFOCOM 1998). Nothing is
 * dropped without an answer.
 */

/** For whom something is done. */
export interface Asker {
  /** Tasks of the same asker share its turns. */
  whose: string
  /** Nobody waits for the answer any more. */
  isGone: () => boolean
  /** Waits as long as it takes and is never refused: for work that was acknowledged. */
  isPatient?: true
}

export interface LineSettings {
  /** Tasks that are done at the same time. */
  lanes: number
  /** Tasks that may wait. */
  mostWaiting: number
  /** Milliseconds that a task may be expected to wait. */
  longestWait: number
  /** Milliseconds of a usual task from which on an asker leaves one lane to others. */
  slowFrom: number
  /** Frees a lane when its task has ended: at once, or when others have had a turn. */
  after?: (free: () => void) => void
  /** The time in milliseconds, of a clock that never goes back. */
  clock: () => number
}

interface Waiting {
  asker: Asker
  begin: () => void
  refuse: (problem: ServiceProblem) => void
}

const MILLISECONDS = 1000

export class FairLine {
  /** Tasks by asker; the first asker's turn is next. */
  private readonly line = new Map<string, Waiting[]>()
  private readonly inLanes = new Map<string, number>()
  private readonly habits: Habits
  private taken = 0
  private inLine = 0

  constructor(private readonly settings: LineSettings) {
    this.habits = new Habits(settings.clock)
  }

  /** Tasks that are being done. */
  get running(): number {
    return this.taken
  }

  get waiting(): number {
    return this.inLine
  }

  /**
   * Does the work when its turn comes.
   * @throws {ServiceProblem} `busy`, with the seconds after which to come back, when its turn would come too late; what the work throws
   */
  async run<T>(asker: Asker, work: () => T | Promise<T>): Promise<T> {
    this.habits.see(asker.whose)
    if (this.inLine > 0 || !this.hasLaneFor(asker.whose)) await this.wait(asker)
    else this.enter(asker.whose)
    const began = this.settings.clock()
    try {
      return await work()
    } finally {
      this.habits.note(asker.whose, this.settings.clock() - began)
      const { after = (free) => free() } = this.settings
      after(() => this.leave(asker.whose))
    }
  }

  private wait(asker: Asker): Promise<void> {
    if (!asker.isPatient) this.demandRoom(asker.whose)
    return new Promise((begin, refuse) => {
      const own = this.line.get(asker.whose)
      if (own) own.push({ asker, begin, refuse })
      else this.line.set(asker.whose, [{ asker, begin, refuse }])
      this.inLine++
      this.callNext()
    })
  }

  private demandRoom(whose: string): void {
    const { longestWait, mostWaiting } = this.settings
    const expected = this.expectedWait(whose)
    if (expected > longestWait) throw busy(expected)
    if (this.inLine < mostWaiting) return
    const [longest, tasks] = this.longest()
    const own = this.line.get(whose)?.length ?? 0
    // Only for somebody who then still has less in the line than the other.
    if (!tasks || own + 1 >= tasks.length) throw busy(expected)
    this.take(longest, tasks, tasks.length - 1)?.refuse(busy(this.expectedWait(longest)))
  }

  /** Milliseconds until the turn of a further task of this asker: what is in the lanes, and what has its turn before. */
  private expectedWait(whose: string): number {
    const turns = (this.line.get(whose)?.length ?? 0) + 1
    let work = 0
    // What runs has on average half of it left.
    for (const [other, running] of this.inLanes) work += (running * this.habits.usual(other)) / 2
    for (const [other, tasks] of this.line) {
      const before = other === whose ? tasks.length : Math.min(tasks.length, turns)
      work += before * this.habits.usual(other)
    }
    return work / this.settings.lanes
  }

  /** Whoever has most in the line, without what is never refused. */
  private longest(): [whose: string, tasks: Waiting[] | undefined] {
    let found: [string, Waiting[] | undefined] = ['', undefined]
    for (const [whose, tasks] of this.line) {
      if (!tasks[0]?.asker.isPatient && tasks.length > (found[1]?.length ?? 0)) found = [whose, tasks]
    }
    return found
  }

  /** Begins what there is a lane for, in turns. */
  private callNext(): void {
    let isAnyCalled = true
    while (isAnyCalled) {
      isAnyCalled = false
      for (const [whose, tasks] of this.line) {
        if (!this.hasLaneFor(whose)) continue
        const next = this.take(whose, tasks, 0)
        if (!next) continue
        isAnyCalled = true
        if (next.asker.isGone()) next.refuse(busy(0))
        else {
          this.enter(whose)
          next.begin()
        }
        // From the beginning: whoever had a turn is last now.
        break
      }
    }
  }

  /** Takes one task out of the line; its asker's next turn comes after those of all others. */
  private take(whose: string, tasks: Waiting[], at: number): Waiting | undefined {
    const [task] = tasks.splice(at, 1)
    if (task) this.inLine--
    if (at === 0 || tasks.length === 0) this.line.delete(whose)
    if (at === 0 && tasks.length > 0) this.line.set(whose, tasks)
    return task
  }

  /** Whoever usually takes long leaves a lane to others, where there are others, since nothing that runs can be put off. */
  private hasLaneFor(whose: string): boolean {
    const { lanes, slowFrom } = this.settings
    if (this.taken >= lanes) return false
    const isSlow = lanes > 1 && this.habits.usual(whose) >= slowFrom && this.habits.hasOthers(whose)
    return !isSlow || (this.inLanes.get(whose) ?? 0) < lanes - 1
  }

  private enter(whose: string): void {
    this.taken++
    this.inLanes.set(whose, (this.inLanes.get(whose) ?? 0) + 1)
  }

  private leave(whose: string): void {
    this.taken--
    const running = (this.inLanes.get(whose) ?? 0) - 1
    if (running > 0) this.inLanes.set(whose, running)
    else this.inLanes.delete(whose)
    this.callNext()
  }
}

const busy = (expected: number): ServiceProblem =>
  new ServiceProblem('busy', 'More is asked for than can be done soon.', [], undefined, {
    'retry-after': String(Math.max(1, Math.ceil(expected / MILLISECONDS))),
  })
