import type { Judgement } from '../judge/finding.js'
import type { MeasureUnit } from '../measure/measurement.js'
import { isEmpty, meet, type Ends } from '../windows/ends.js'
import { roundDown, roundUp } from './numbers.js'
import { domeEnds } from './dome-remedy.js'
import { othersInPlay, standardsOf } from './in-play.js'
import { endsOn } from './ties.js'

/** Units in which a quantity is a number. */
export type NumericUnit = Exclude<MeasureUnit, 'kind' | 'truth'>

/** The window that a quantity must be in, and the value to aim at inside it. */

/** Part of a one-sided limit by which the aim lies inside it: our choice, so that ordinary spread does not cross it. */
const STEP_INSIDE = 0.05
/** The least such step for lengths, in millimetres. */
const LEAST_STEP_MM = 0.1
/** An aim is rounded, but stays within this share of the window on either side of its middle. */
const NEAR_MIDDLE = 0.25
/** A window whose upper end is so many times its lower one has no middle worth aiming at: the aim stays near where the value was. */
const WIDE = 1.5
/** Lengths from here up are aimed at in whole millimetres. */
const LARGE_MM = 100
const MOST_DECIMALS = 6

/** The ends inside which a failed quantity passes, or two rows that leave no such ends: the second excludes the first. */
export type Window = { ends: Ends } | { of: Judgement; against: Judgement }

/**
 * The window of a failed quantity: its own limit and that of every other `shall` row that the same change bears on, of whichever
 * standard, as they were judged; then the ends of the other printed unit, each as far as they leave a window at all.
 */
export function windowFor(judgement: Judgement, all: readonly Judgement[]): Window {
  const { min, max, other } = judgement.limit
  let ends: Ends = { min, max }
  const others: (Ends | undefined)[] = [other]
  const seen: [Judgement, Ends][] = [[judgement, ends]]
  for (const row of othersInPlay(judgement, all)) {
    const its = endsOn(judgement, row, row.limit) ?? domeEnds(judgement, row, all, ends)
    if (!its) continue
    if (its === 'none') return { of: judgement, against: row }
    ends = meet(ends, its)
    if (isEmpty(ends)) return { of: seen.find(([, end]) => isEmpty(meet(end, its)))?.[0] ?? judgement, against: row }
    seen.push([row, its])
    if (row.limit.other) others.push(endsOn(judgement, row, row.limit.other))
  }
  for (const narrow of others) {
    const narrower = narrow && meet(ends, narrow)
    if (narrower && !isEmpty(narrower)) ends = narrower
  }
  return { ends }
}

/** What the standards asked allow together on one quantity, by their limits alone. */
export interface Common {
  ends: Ends
  /** Those that limit the quantity, in the order asked. */
  standards: string[]
}

/** Undefined when one standard was asked, or when nothing is left. */
export function commonOf(judgement: Judgement, all: readonly Judgement[]): Common | undefined {
  if (standardsOf(all).length < 2) return undefined
  const { quantity } = judgement.requirement
  const same = othersInPlay(judgement, all).filter((row) => row.requirement.quantity === quantity)
  const rows = [judgement, ...same]
  const ends = rows.map(({ limit: { min, max } }): Ends => ({ min, max })).reduce(meet)
  const limiting = standardsOf(rows)
  return isEmpty(ends) ? undefined : { ends, standards: standardsOf(all).filter((id) => limiting.includes(id)) }
}

/**
 * The value to aim at: the middle of a window, rounded as far as it stays near it, or a step inside a single end. In a wide window it
 * is a step inside the end that the value lies beyond.
 * @param from the value that is to be changed
 */
export function aimIn({ min, max }: Ends, unit: NumericUnit, from?: number): number | null {
  const decimals = unit === 'ratio' ? 2 : unit === 'mm' && Math.abs(min ?? max ?? 0) < LARGE_MM ? 1 : 0
  if (min === undefined || max === undefined) return stepInside({ min, max }, unit, decimals)
  const crossed = from === undefined ? {} : from < min ? { min } : from > max ? { max } : {}
  const near = max > WIDE * min ? stepInside(crossed, unit, decimals) : null
  return near !== null && near > min && near < max ? near : middleOf(min, max, decimals)
}

function middleOf(min: number, max: number, leastDecimals: number): number {
  const middle = (min + max) / 2
  const room = (max - min) * NEAR_MIDDLE
  for (let decimals = leastDecimals; decimals <= MOST_DECIMALS; decimals++) {
    const aim = Number(middle.toFixed(decimals))
    if (Math.abs(aim - middle) <= room) return aim
  }
  return middle
}

function stepInside({ min, max }: Ends, unit: NumericUnit, decimals: number): number | null {
  const end = min ?? max
  if (end === undefined) return null
  const step = Math.max(Math.abs(end) * STEP_INSIDE, unit === 'mm' ? LEAST_STEP_MM : 0)
  if (min !== undefined) return roundUp(end + step, decimals)
  const below = roundDown(end - step, decimals)
  return below > 0 ? below : end / 2
}

/** The window with its ends rounded inwards, with as many decimals as leave it open. */
export function inwards({ min, max }: Ends, leastDecimals: number): { min?: string; max?: string } {
  for (let decimals = leastDecimals; decimals <= MOST_DECIMALS; decimals++) {
    const from = min === undefined ? undefined : roundUp(min, decimals)
    const to = max === undefined ? undefined : roundDown(max, decimals)
    if (!isEmpty({ min: from, max: to })) return { min: from?.toFixed(decimals), max: to?.toFixed(decimals) }
  }
  return { min: min?.toFixed(MOST_DECIMALS), max: max?.toFixed(MOST_DECIMALS) }
}
