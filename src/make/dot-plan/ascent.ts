import type { Ways } from './way.js'

/**
 * Raises the bound of the shortest tree for few dots. A weight on each dot makes the ways from it longer; every order passes each dot once,
 * but a tree may touch it often, so the tree with weights, less twice the weights, still is no longer than any order, whatever the weights
 * are: those at the two ends count once only, hence the two least are added back. The weights grow where the tree has many branches
 * (M. Held and R. M. Karp, 1971; step sizes by M. Held, P. Wolfe and H. P. Crowder, 1974; from memory).
 */

/** The work grows with the square of the dots. */
export const MOST_FOR_ASCENT = 400
const ROUNDS = 80
const FIRST_STEP = 1.5
const SHRINK = 0.96

/** @param shortest the length of some order: how far the bound could rise at most */
export function raisedBound(ways: Ways, shortest: number): number {
  const { count } = ways
  if (count > MOST_FOR_ASCENT || count < 3) return 0
  const weights = new Float64Array(count)
  let best = 0
  let step = FIRST_STEP
  for (let round = 0; round < ROUNDS; round++, step *= SHRINK) {
    const { length, degrees } = tree(ways, weights)
    const [least, second] = twoLeast(weights)
    let sum = 0
    for (const weight of weights) sum += weight
    const bound = length - 2 * sum + least.weight + second.weight
    if (bound > best) best = bound
    degrees[least.dot]++
    degrees[second.dot]++
    let square = 0
    for (const degree of degrees) square += (degree - 2) ** 2
    if (square === 0 || bound >= shortest) break
    const move = (step * (shortest - bound)) / square
    for (let i = 0; i < count; i++) weights[i] += move * (degrees[i] - 2)
  }
  return Math.min(best, shortest)
}

/** The shortest tree over all pairs, with the weights of both dots on each way (R. C. Prim, 1957). */
function tree(ways: Ways, weights: Float64Array): { length: number; degrees: Int32Array } {
  const { count } = ways
  const degrees = new Int32Array(count)
  const near = new Float64Array(count).fill(Infinity)
  const from = new Int32Array(count)
  const done = new Uint8Array(count)
  let length = 0
  for (let k = 0, at = 0; k < count; k++) {
    done[at] = 1
    if (k > 0) {
      length += near[at]
      degrees[at]++
      degrees[from[at]]++
    }
    let next = -1
    for (let j = 0; j < count; j++) {
      if (done[j]) continue
      const way = ways.between(at, j) + weights[at] + weights[j]
      if (way < near[j]) {
        near[j] = way
        from[j] = at
      }
      if (next < 0 || near[j] < near[next]) next = j
    }
    at = next
  }
  return { length, degrees }
}

interface Weighed {
  dot: number
  weight: number
}

function twoLeast(weights: Float64Array): [Weighed, Weighed] {
  let [first, second] = weights[0] <= weights[1] ? [0, 1] : [1, 0]
  for (let i = 2; i < weights.length; i++)
    if (weights[i] < weights[first]) [second, first] = [first, i]
    else if (weights[i] < weights[second]) second = i
  return [
    { dot: first, weight: weights[first] },
    { dot: second, weight: weights[second] },
  ]
}
