/**
 * Where a function that only rises, or only falls, is zero: the Illinois form of false position (M. Dowell and P. Jarratt, BIT 11,
 * 1971, 168). It never leaves the bracket, and it needs no derivative.
 */

const MOST_STEPS = 200
/** How much a bracket grows on either side when the zero is not in it. */
const GROWTH = 2

interface Search {
  /** The zero is known to be no less than this. */
  least?: number
  /** How near to the zero is near enough. */
  precision: number
}

/**
 * @param from lower end of a first bracket, which is widened until it holds the zero
 * @param to its upper end
 * @throws {RangeError} when no zero is found
 */
export function rootOf(f: (x: number) => number, from: number, to: number, search: Search): number {
  const { least = -Infinity, precision } = search
  let [a, b] = [Math.max(from, least), to]
  let [fa, fb] = [f(a), f(b)]
  for (let steps = 0; fa * fb > 0; steps++) {
    if (steps >= MOST_STEPS) throw new RangeError('no bracket holds a zero')
    const width = GROWTH * (b - a)
    ;[a, b] = [Math.max(a - width, least), b + width]
    ;[fa, fb] = [f(a), f(b)]
  }
  for (let steps = 0; steps < MOST_STEPS; steps++) {
    if (fb === 0 || Math.abs(b - a) <= precision) return b
    const crossing = (a * fb - b * fa) / (fb - fa)
    const step = precision / 2
    const x = Math.abs(crossing - b) < step ? b + Math.sign(a - b) * step : crossing
    const fx = f(x)
    if (fx * fb < 0) [a, fa] = [b, fb]
    else fa /= 2
    ;[b, fb] = [x, fx]
  }
  throw new RangeError('the zero was not found')
}
