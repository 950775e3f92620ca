import { LEVELS, type Groups, type Level } from './groups.js'
import type { Ways } from './way.js'
import type { Cartridge } from './schema.js'

/** Where the cartridge is changed: within what it holds, where as much as possible is whole. */

/** A cartridge is left no emptier than this for a better place, as a share: our choice. */
const LEAST_USED = 0.75

type Split = Pick<Cartridge, 'from' | 'to' | 'after'>

/** @param capacity dots in one cartridge; undefined: no end */
export function splitOf(
  order: Int32Array,
  ways: Ways,
  groups: Groups | undefined,
  capacity: number | undefined,
): Split[] {
  const count = order.length
  if (capacity === undefined || count <= capacity) return [{ from: 0, to: count - 1, after: 'end' }]
  const whole = groups && LEVELS.map((level) => ({ level, cuts: cutsOf(order, groups[level]) }))
  const wayTo = (k: number) => ways.between(order[k - 1], order[k])
  const splits: Split[] = []
  for (let from = 0; from < count;) {
    const most = Math.min(count, from + capacity)
    const { next, after } =
      most === count ? { next: count, after: 'end' as const } : bestCut(from, most, count, whole, capacity, wayTo)
    splits.push({ from, to: next - 1, after })
    from = next
  }
  return splits
}

function bestCut(
  from: number,
  most: number,
  count: number,
  whole: { level: Level; cuts: Int32Array }[] | undefined,
  capacity: number,
  wayTo: (k: number) => number,
): { next: number; after: Level | 'dot' } {
  const least = Math.max(from + 1, from + Math.ceil(LEAST_USED * capacity))
  for (const { level, cuts } of whole ?? [])
    for (let next = most; next >= least; next--) if (cuts[next] === 0) return { next, after: level }
  if (whole) return { next: most, after: 'dot' }
  // Nothing is known of words: where the way to the next dot is the longest, most likely something ends. That is no reason for one
  // cartridge more than there must be.
  const needed = Math.ceil((count - from) / capacity)
  const soonest = Math.max(least, count - (needed - 1) * capacity)
  let next = most
  for (let k = most; k >= soonest; k--) if (wayTo(k) > wayTo(next)) next = k
  return { next, after: 'dot' }
}

/** For each place how many groups have dots on both sides of it; a dot whose group is not known might be of any. */
function cutsOf(order: Int32Array, group: Int32Array): Int32Array {
  const first = new Map<number, number>()
  const last = new Map<number, number>()
  order.forEach((dot, k) => {
    const number = group[dot]
    if (!first.has(number)) first.set(number, k)
    last.set(number, k)
  })
  const cuts = new Int32Array(order.length + 1)
  for (const [number, start] of first) {
    cuts[start + 1]++
    cuts[(last.get(number) ?? start) + 1]--
  }
  for (let k = 1; k < cuts.length; k++) cuts[k] += cuts[k - 1]
  return cuts
}
