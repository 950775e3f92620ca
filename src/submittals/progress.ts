import { verdictsOf } from './verdicts.js'
import type { Keeping } from './keeping.js'
import type { SubmittalRow } from './store/tables.js'

/**
 * Tells whoever listens how far submittals are, whichever process checks them: the rows are looked at, those of one submittal
 * once for all who listen to it, and only while someone does.
 */

export interface Progress {
  row: SubmittalRow
  verdicts: Record<string, number>
}

/** How far a submittal is. */
export function progressOf({ state, total, open }: SubmittalRow, verdicts: Record<string, number>) {
  return {
    state,
    signs: { total, done: state === 'cancelled' ? total - (verdicts.cancelled ?? 0) : total - open },
    verdicts: {
      pass: verdicts.pass ?? 0,
      fail: verdicts.fail ?? 0,
      undetermined: verdicts.undetermined ?? 0,
      notApplicable: verdicts['not-applicable'] ?? 0,
      none: verdicts.none ?? 0,
    },
  }
}

/** @param progress undefined when the submittal was deleted */
export type Listener = (progress: Progress | undefined) => void

/** Milliseconds between two looks at a submittal. */
const PAUSE = 500
/** Milliseconds after a look that failed: a database that is gone is not asked all the time. */
const PAUSE_AFTER_FAULT = 2000

export const hasEnded = ({ state }: SubmittalRow): boolean => state === 'done' || state === 'cancelled'

export class ProgressWatch {
  private readonly listeners = new Map<string, Set<Listener>>()

  constructor(
    private readonly keeping: Keeping,
    private readonly onError: (error: Error) => void,
  ) {}

  /** Tells of every change of the submittal from now on. @returns how to stop it */
  follow(submittal: string, listener: Listener): () => void {
    const known = this.listeners.get(submittal)
    const all = known ?? new Set<Listener>()
    all.add(listener)
    if (!known) {
      this.listeners.set(submittal, all)
      this.look(submittal, all, undefined)
    }
    return () => {
      all.delete(listener)
      if (all.size === 0 && this.listeners.get(submittal) === all) this.listeners.delete(submittal)
    }
  }

  private look(submittal: string, all: Set<Listener>, told: number | undefined, pause = PAUSE): void {
    const timer = setTimeout(() => void this.tell(submittal, all, told), pause)
    timer.unref()
  }

  private async tell(submittal: string, all: Set<Listener>, told: number | undefined): Promise<void> {
    if (all.size === 0) return
    try {
      const now = await this.changed(submittal, told)
      if (now !== 'unchanged') for (const listener of [...all]) listener(now)
      if (now === undefined) return
      this.look(submittal, all, now === 'unchanged' ? told : now.row.event_count)
    } catch (error) {
      this.onError(error instanceof Error ? error : new Error(String(error)))
      this.look(submittal, all, told, PAUSE_AFTER_FAULT)
    }
  }

  /** Every change is an event of the history, so that their number tells whether there was one. */
  private async changed(submittal: string, told: number | undefined): Promise<Progress | 'unchanged' | undefined> {
    const { db } = this.keeping.store
    const event = await db.selectFrom('submittals').select('event_count').where('id', '=', submittal).executeTakeFirst()
    if (event && event.event_count === told) return 'unchanged'
    const row = event && (await db.selectFrom('submittals').selectAll().where('id', '=', submittal).executeTakeFirst())
    return row && { row, verdicts: await verdictsOf(this.keeping, submittal) }
  }
}
