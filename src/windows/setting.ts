import type { Carrier, Use } from '../sign/sign.js'
import type { Condition } from '../judge/types.js'

/** What is known before there is a sign: what it will be for, and what its braille will be made on. */
export interface Setting {
  use: Use
  /** Absent: nothing is said, which is how a sign without it is judged too. */
  carrier?: Carrier
}

/** Conditions that no sign of any other use meets. */
const ONLY_FOR: Partial<Record<Condition, readonly Use[]>> = {
  'elevator-car-control': ['elevator-car-control'],
  'destination-oriented-elevator': ['elevator-landing'],
  'main-entry-level': ['elevator-landing'],
  'platform-space-limited': ['transit-station'],
  'station-name': ['transit-station'],
  'posted-timetable': ['informational', 'transit-station'],
  'sanitary-room': ['permanent-room'],
}

/** Conditions that every sign of these uses meets. */
const ALWAYS_FOR: Partial<Record<Condition, readonly Use[]>> = {
  'elevator-car-control': ['elevator-car-control'],
  'toilet-or-lift': ['elevator-landing', 'elevator-car-control'],
}

/** Whether a condition of a row holds, as far as the setting alone decides it; undefined where a sign decides. */
export function decided(condition: Condition, { use, carrier }: Setting): boolean | undefined {
  if (condition === 'carrier-pvc') return carrier === 'pvc'
  // Stainless steel has a row of its own that was not read.
  if (condition === 'carrier-not-pvc') return carrier === 'stainless-steel' ? undefined : carrier !== 'pvc'
  if (ALWAYS_FOR[condition]?.includes(use)) return true
  const uses = ONLY_FOR[condition]
  return uses && !uses.includes(use) ? false : undefined
}
