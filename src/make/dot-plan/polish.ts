import { LEAST_GAIN, type Improvement } from './improve.js'

/**
 * Gets an order out of where the exchanges end: two neighbouring pieces change places somewhere, the exchanges settle what that left, and
 * if the whole is not shorter all is taken back (O. Martin, S. W. Otto and E. W. Felten, Large-step Markov chains for the traveling
 * salesman problem, 1991; from memory). The places come from a fixed sequence, so that the same dots have the same order.
 */

const KICKS_PER_DOT = 30
const MOST_KICKS = 8_000
/** More dots than this are left as they are: the kicks would be too few to tell. */
const MOST_DOTS_KICKED = 20_000
const LONGEST_PIECE = 30

export function polish(improvement: Improvement): void {
  const { line } = improvement
  const count = line.order.length
  if (count < 4 || count > MOST_DOTS_KICKED) return
  const next = sequence()
  const longest = Math.min(LONGEST_PIECE, Math.floor(count / 2))
  for (let kick = Math.min(MOST_KICKS, KICKS_PER_DOT * count); kick > 0; kick--) {
    const first = next(count - 1)
    const last = first + next(Math.min(longest, count - 1 - first))
    const gap = last + 1 + next(Math.min(longest, count - 1 - last))
    if (!line.mayMove(first, last, gap, false)) continue
    const before = improvement.gained
    improvement.move(first, last, gap, false, gainOf(improvement, first, last, gap))
    improvement.settle()
    if (improvement.gained - before > LEAST_GAIN) line.keep()
    else {
      line.undo()
      improvement.gained = before
    }
  }
}

/** What is gained when the piece goes between the places `gap` and `gap + 1`; mostly less than nothing. */
const gainOf = (improvement: Improvement, first: number, last: number, gap: number): number =>
  improvement.way(first - 1, first) +
  improvement.way(last, last + 1) +
  improvement.way(gap, gap + 1) -
  improvement.way(first - 1, last + 1) -
  improvement.way(gap, first) -
  improvement.way(last, gap + 1)

/** Whole numbers from 0 to below a bound, always the same ones (a linear congruential generator; constants of Numerical Recipes). */
function sequence(): (bound: number) => number {
  let state = 1
  return (bound) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return Math.floor((state / 2 ** 32) * Math.max(1, bound))
  }
}
