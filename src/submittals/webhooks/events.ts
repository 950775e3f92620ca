/** What is told. Of a set only: a word for each of ten thousand signs would tell nobody anything. */

export const EVENT_KINDS = ['submittal.checked', 'submittal.cancelled'] as const
export type EventKind = (typeof EVENT_KINDS)[number]

/** Sent when it is asked for, to try an address. */
export const TEST_KIND = 'endpoint.test'
export type MessageKind = EventKind | typeof TEST_KIND

/** What the body holds beside its type and time. Thin: the submittal itself is read at its address. */
export interface SubmittalNews {
  submittal: string
  name: string
  state: 'done' | 'cancelled'
  signs: { total: number; done: number }
  verdicts: { pass: number; fail: number; undetermined: number; notApplicable: number; none: number }
  address: string
}
