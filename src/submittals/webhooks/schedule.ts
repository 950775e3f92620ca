/** When a message that was not taken is sent again: the schedule that Standard Webhooks 1.0.0 gives as its example. */

const SECOND = 1
const MINUTE = 60 * SECOND
const HOUR = 60 * MINUTE

/** Seconds before each sending, counted from the one before. */
export const SCHEDULE = [
  0,
  5 * SECOND,
  5 * MINUTE,
  30 * MINUTE,
  2 * HOUR,
  5 * HOUR,
  10 * HOUR,
  14 * HOUR,
  20 * HOUR,
  24 * HOUR,
]

/** The share by which a wait is made longer by chance, so that what failed together does not come back together. */
const JITTER = 0.1
/** Whoever is busy may ask for a longer wait, up to this. */
const LONGEST_WAIT = 24 * HOUR
const MILLISECONDS = 1000

/**
 * @param sent how often it was sent, this time included
 * @param asked seconds that the receiver asked for
 * @returns seconds until the next sending, or undefined when it was the last
 */
export function nextAfter(sent: number, asked: number, chance = Math.random()): number | undefined {
  const wait = SCHEDULE[sent]
  if (wait === undefined) return undefined
  return Math.ceil(Math.max(wait * (1 + JITTER * chance), Math.min(asked, LONGEST_WAIT)))
}

/** What else a number or a word would be taken for. */
const HTTP_DATE = /^[A-Z][a-z]+, .+ GMT$/u

/** Seconds of a Retry-After header (RFC 9110, 10.2.3), which is a number of seconds or a date; 0 for none. */
export function retryAfter(header: string | undefined, now: Date): number {
  if (header === undefined) return 0
  if (/^\d{1,9}$/u.test(header)) return Number(header)
  const date = HTTP_DATE.test(header) ? Date.parse(header) : Number.NaN
  return Number.isNaN(date) ? 0 : Math.max(0, (date - now.getTime()) / MILLISECONDS)
}
