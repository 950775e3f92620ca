import type { Translator } from '../braille/translator.js'
import type { LetteringPart, Section, Sign, Unread } from '../sign/sign.js'
import type { Gap, Measurement, Observation } from './measurement.js'
import type { Pairs } from './pairing.js'

/** Which lettering a row looks at. Absent: every part, every section. */
export interface Scope {
  parts?: LetteringPart[]
  sections?: Section[]
}

/** What a quantity is taken from. */
export interface Subject {
  sign: Sign
  translator: Translator
  scope: Scope
  /** Which braille repeats which raised text, found once per sign. */
  pairs: () => Pairs
}

/** What was found. Nothing at all: `nothing` says in one sentence why there is nothing to measure. */
export interface Found {
  observations: Observation[]
  gaps: Gap[]
  nothing?: string
}

/** One definition, one unit, one datum. */
export interface Quantity {
  unit: Measurement['unit']
  /** How it is measured, for people: from where to where. */
  method: string
  /** Kinds of unread parts that this quantity would have to know. */
  couldBe: Unread['couldBe']
  /**
   * What an unread part of such a kind does. `more`: it is one more thing that was not measured. `no`: only a "no" is in
   * doubt, since what is missing may be in the part that was not read. `either`: both.
   */
  doubt: 'more' | 'no' | 'either'
  take: (subject: Subject) => Found
  /** What a reading of a gauge is judged with, when its limit hangs on the rest of the sign. */
  beside?: (subject: Subject) => Pick<Observation, 'context' | 'remark'>
}

export type Quantities = Record<string, Quantity>
