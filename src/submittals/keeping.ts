import type { Store } from './store/connect.js'
import type { Queue } from './queue/queue.js'
import type { InTransaction } from './store/tables.js'

/** All that is needed to keep submittals. */
export interface Keeping {
  store: Store
  queue: Queue
  /** Told in this process when jobs were added, so that they need not wait for the next look. */
  awaken: () => void
  /** Signs of one organisation that may wait for their reports; none: any number. */
  mostOpen?: number
}

/** The keeping as it is inside a transaction, for reading what has just been written. */
export const within = (keeping: Keeping, transaction: InTransaction): Keeping => ({
  ...keeping,
  store: { ...keeping.store, db: transaction },
})

/** Who does something: the organisation that owns what is kept, and the name that the history shows. */
export interface Actor {
  organisation: string
  name: string
}

/** The organisation and the actor where no keys are asked for. */
export const NOBODY: Actor = { organisation: 'local', name: 'local' }

/** Thrown where something is asked for that is not there, or is another organisation's: nobody is told which. */
export class NotKept extends Error {}

/** Thrown where the state of something does not allow what is asked. The message is for people. */
export class NotNow extends Error {}

/** Thrown where an organisation has as much of something as it may. The message is for people. */
export class AtLimit extends Error {
  constructor(
    message: string,
    readonly limit: number,
    readonly actual: number,
  ) {
    super(message)
  }
}
