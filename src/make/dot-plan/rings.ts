import { listsOf, type Pair, type Precedence } from './precedence.js'

/**
 * Where the head reaches to two sides at once, dots may have to come before one another in a ring: a before b before c before a. No order
 * keeps all of a ring; one of its pairs is given up and told. Found by going back from each dot to those that must come before it, in
 * depth: a pair that leads back to a dot of the way closes a ring with pairs that are kept, and without all such pairs there is none
 * (R. E. Tarjan, Depth-first search and linear graph algorithms, SIAM Journal on Computing 1, 1972; from memory).
 */
export function withoutRings(precedence: Precedence): { precedence: Precedence; givenUp: Pair[] } {
  const { starts, items } = precedence.earlier
  const count = starts.length - 1
  const next = starts.slice(0, count)
  const state = new Uint8Array(count)
  const isGivenUp = new Uint8Array(items.length)
  const givenUp: Pair[] = []
  const way = new Int32Array(count)
  for (let root = 0; root < count; root++) {
    if (state[root] !== UNSEEN) continue
    let length = 1
    way[0] = root
    state[root] = ON_THE_WAY
    while (length > 0) {
      const dot = way[length - 1]
      if (next[dot] === starts[dot + 1]) {
        state[dot] = DONE
        length--
        continue
      }
      const k = next[dot]++
      const before = items[k]
      if (state[before] === ON_THE_WAY) {
        isGivenUp[k] = 1
        givenUp.push({ first: before, second: dot })
      } else if (state[before] === UNSEEN) {
        state[before] = ON_THE_WAY
        way[length++] = before
      }
    }
  }
  return { precedence: givenUp.length === 0 ? precedence : without(precedence, isGivenUp), givenUp }
}

const UNSEEN = 0
const ON_THE_WAY = 1
const DONE = 2

/** @param isGivenUp for each entry of `earlier.items` */
function without(precedence: Precedence, isGivenUp: Uint8Array): Precedence {
  const { starts, items } = precedence.earlier
  const count = starts.length - 1
  const before: number[] = []
  const after: number[] = []
  for (let dot = 0; dot < count; dot++)
    for (let k = starts[dot]; k < starts[dot + 1]; k++) {
      if (isGivenUp[k]) continue
      before.push(items[k])
      after.push(dot)
    }
  return { ...precedence, later: listsOf(count, before, after), earlier: listsOf(count, after, before) }
}
