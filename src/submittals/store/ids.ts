import { randomBytes } from 'node:crypto'

/** Names of kept things: a prefix that says what it is, the time of its making, and chance. Later ones sort after earlier ones. */

const TIME_DIGITS = 12
const CHANCE_BYTES = 10

export type IdPrefix = 'sub' | 'sgn' | 'upl' | 'mea' | 'wav' | 'not' | 'job' | 'end' | 'msg' | 'org'

/** 80 bits of chance: nobody guesses one, and two made in the same millisecond do not meet. */
export const newId = (prefix: IdPrefix): string =>
  `${prefix}_${Date.now().toString(16).padStart(TIME_DIGITS, '0')}${randomBytes(CHANCE_BYTES).toString('hex')}`

export const now = (): string => new Date().toISOString()
