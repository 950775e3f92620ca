import { entryOf } from './head.js'
import type { Head, Machine } from './schema.js'
import type { Ways } from './way.js'

/** How long a plan takes, in seconds: every move at its rate, and the dwell at each dot. The way to the first dot and from the last, and changes of cartridges, are not in it. */

const SECONDS_PER_MINUTE = 60

/** One move from rest to rest: a ramp up, the rate, a ramp down; where the way is too short for the rate, two ramps. */
export function moveSeconds(length: number, ratePerMinute: number, acceleration: number | undefined): number {
  const rate = ratePerMinute / SECONDS_PER_MINUTE
  if (acceleration === undefined) return length / rate
  const ramps = rate ** 2 / acceleration
  return length >= ramps ? length / rate + rate / acceleration : 2 * Math.sqrt(length / acceleration)
}

/** Setting one dot: down, the sideways piece if there is one, the dwell, and up. */
export function dotSeconds(head: Head, { plungeRate, dwell, acceleration }: Machine): number {
  const { plunge, approach } = head
  const up = moveSeconds(plunge, plungeRate, acceleration)
  if (!approach) return 2 * up + dwell
  const entry = entryOf(head)
  const down = moveSeconds(plunge - approach.height, plungeRate, acceleration)
  const slant = moveSeconds(Math.hypot(entry.x, entry.y, approach.height), plungeRate, acceleration)
  return down + slant + dwell + up
}

export function planSeconds(order: Int32Array, ways: Ways, head: Head, machine: Machine): number {
  let sum = order.length * dotSeconds(head, machine)
  for (let k = 1; k < order.length; k++)
    sum += moveSeconds(ways.between(order[k - 1], order[k]), machine.travelRate, machine.acceleration)
  return sum
}
