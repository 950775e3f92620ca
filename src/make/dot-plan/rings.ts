import { listsOf, type Pair, type Precedence } from './precedence.js'

/**
 * Where the head reaches to two sides at once, dots may have to come before one another in a ring: a before b before c before a. No
 * order keeps a ring; one of its pairs is given up and told. Without rings every rule of the order can be kept (A. B. Kahn, Topological
 * sorting of large networks, Communications of the ACM 5, 1962; from memory).
 */
export function withoutRings(precedence: Precedence): { precedence: Precedence; givenUp: Pair[] } {
  const { later, earlier } = precedence
  const count = later.starts.length - 1
  const waiting = new Int32Array(count)
  for (let i = 0; i < count; i++) waiting[i] = earlier.starts[i + 1] - earlier.starts[i]
  const ready: number[] = []
  for (let i = 0; i < count; i++) if (waiting[i] === 0) ready.push(i)
  const done = new Uint8Array(count)
  const dropped = new Set<number>()
  const givenUp: Pair[] = []
  let left = count
  let first = 0
  for (;;) {
    for (let i = ready.pop(); i !== undefined; i = ready.pop()) {
      done[i] = 1
      left--
      for (let k = later.starts[i]; k < later.starts[i + 1]; k++) {
        const next = later.items[k]
        if (!dropped.has(keyOf(i, next, count)) && --waiting[next] === 0) ready.push(next)
      }
    }
    if (left === 0) break
    while (done[first]) first++
    const pair = ringFrom(first, (i) => {
      for (let k = earlier.starts[i]; k < earlier.starts[i + 1]; k++) {
        const before = earlier.items[k]
        if (!done[before] && !dropped.has(keyOf(before, i, count))) return before
      }
      return undefined
    })
    dropped.add(keyOf(pair.first, pair.second, count))
    givenUp.push(pair)
    if (--waiting[pair.second] === 0) ready.push(pair.second)
  }
  return dropped.size === 0 ? { precedence, givenUp } : { precedence: without(precedence, dropped), givenUp }
}

const keyOf = (before: number, after: number, count: number): number => before * count + after

/** Goes back from dot to dot until one comes again: the last pair of that ring. Each dot that is left waits for another that is left. */
function ringFrom(start: number, earlierOf: (i: number) => number | undefined): Pair {
  const seen = new Set([start])
  for (let i = start; ;) {
    const before = earlierOf(i)
    if (before === undefined) throw new Error('A dot that waits has nothing that it waits for.')
    if (seen.has(before)) return { first: before, second: i }
    seen.add(before)
    i = before
  }
}

function without(precedence: Precedence, dropped: ReadonlySet<number>): Precedence {
  const { later } = precedence
  const count = later.starts.length - 1
  const before: number[] = []
  const after: number[] = []
  for (let i = 0; i < count; i++)
    for (let k = later.starts[i]; k < later.starts[i + 1]; k++) {
      const next = later.items[k]
      if (dropped.has(keyOf(i, next, count))) continue
      before.push(i)
      after.push(next)
    }
  return { ...precedence, later: listsOf(count, before, after), earlier: listsOf(count, after, before) }
}
