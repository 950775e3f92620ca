import type { Stage, Watch } from '../../stages.js'

/** What one stage of a check took, however often it was entered. */
export interface StageTime {
  stage: Stage
  /** When it first began and last ended: milliseconds since the epoch. */
  began: number
  ended: number
  /** Milliseconds spent in it, without those spent in stages inside it. */
  spent: number
}

/** Takes the times of one check. */
export class StageClock {
  private readonly found = new Map<Stage, StageTime>()
  private readonly epoch = Date.now() - performance.now()
  /** Milliseconds of the stages that ended inside the one that runs. */
  private inside = 0

  readonly watch: Watch = (stage, work) => {
    const before = this.inside
    this.inside = 0
    const began = performance.now()
    try {
      return work()
    } finally {
      const ended = performance.now()
      this.note(stage, began, ended, ended - began - this.inside)
      this.inside = before + ended - began
    }
  }

  /** In the order in which the stages first ended. */
  readonly times = (): StageTime[] => {
    return [...this.found.values()]
  }

  private note(stage: Stage, began: number, ended: number, spent: number) {
    const known = this.found.get(stage)
    if (!known) this.found.set(stage, { stage, began: this.epoch + began, ended: this.epoch + ended, spent })
    else {
      known.began = Math.min(known.began, this.epoch + began)
      known.ended = this.epoch + ended
      known.spent += spent
    }
  }
}
