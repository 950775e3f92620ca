/** The stages of a check, in the order in which they begin; `write` is the service's, all others are the core's. */
export const STAGES = ['read', 'recognise', 'measure', 'judge', 'report', 'write'] as const
export type Stage = (typeof STAGES)[number]

/** Does the work of a stage. The core has no clock: whoever has one hands in a watch of their own. */
export type Watch = <T>(stage: Stage, work: () => T) => T

export const unwatched: Watch = (_stage, work) => work()
