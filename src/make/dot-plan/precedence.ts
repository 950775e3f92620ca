import KDBush from 'kdbush'
import { Refusal } from '../../refusal.js'
import { farthestReach, reachesOver, type LowPart } from './head.js'

/**
 * Which dots must be laid before which. While dot p is set, the low parts of the head reach over some places: a dot q there must not
 * have been laid, so p comes before q. Where p and q reach over one another no order helps: such a pair is listed, not ordered.
 */

/** Dots as x and y, millimetres. */
export interface Dots {
  x: Float64Array
  y: Float64Array
}

/** A list of neighbours for each dot: those of dot i are `items` from `starts[i]` to before `starts[i + 1]`. */
export interface Lists {
  starts: Int32Array
  items: Int32Array
}

export interface Pair {
  first: number
  second: number
}

export interface Precedence {
  /** For each dot those that must come later. */
  later: Lists
  /** For each dot those that must come before. */
  earlier: Lists
  /** Pairs over which a part of the head stands whichever is set first. */
  either: (Pair & { part: LowPart['name'] })[]
  /** Pairs whose bases run into one another. */
  merging: Pair[]
}

/** More pairs of a dot and a place that the head reaches over than this are not looked at. */
export const MOST_PAIRS = 4_000_000

export const sizeOf = (dots: Dots): number => dots.x.length

export function indexOf(dots: Dots): KDBush {
  const index = new KDBush(sizeOf(dots))
  for (let i = 0; i < sizeOf(dots); i++) index.add(dots.x[i], dots.y[i])
  return index.finish()
}

/**
 * @param dotDiameter of the base of a laid dot
 * @throws {Refusal} `too-complex` when the head reaches over so many dots at once that the pairs are too many
 */
export function precedenceOf(dots: Dots, parts: readonly LowPart[], dotDiameter: number, index: KDBush): Precedence {
  const radius = dotDiameter / 2
  const reach = Math.max(dotDiameter, farthestReach(parts, radius))
  const before: number[] = []
  const after: number[] = []
  const either: Precedence['either'] = []
  const merging: Pair[] = []
  let looked = 0
  for (let p = 0; p < sizeOf(dots); p++) {
    const near = index.within(dots.x[p], dots.y[p], reach)
    looked += near.length
    if (looked > MOST_PAIRS) throw tooMany(looked)
    for (const q of near) {
      if (q <= p) continue
      const dx = dots.x[q] - dots.x[p]
      const dy = dots.y[q] - dots.y[p]
      if (dx * dx + dy * dy < dotDiameter * dotDiameter) merging.push({ first: p, second: q })
      const overSecond = parts.find((part) => reachesOver(part, dx, dy, radius))
      const overFirst = parts.find((part) => reachesOver(part, -dx, -dy, radius))
      if (overFirst && overSecond) either.push({ first: p, second: q, part: bothBy(overFirst, overSecond) })
      else if (overSecond) {
        before.push(p)
        after.push(q)
      } else if (overFirst) {
        before.push(q)
        after.push(p)
      }
    }
  }
  return {
    later: listsOf(sizeOf(dots), before, after),
    earlier: listsOf(sizeOf(dots), after, before),
    either,
    merging,
  }
}

const bothBy = (a: LowPart, b: LowPart): LowPart['name'] => (a.name === 'tip' && b.name === 'tip' ? 'tip' : 'body')

const tooMany = (actual: number): Refusal =>
  new Refusal(
    'too-complex',
    'The head reaches over so many dots at once that their order cannot be worked out here. Plan fewer dots at a time, or check the sizes of the head.',
    [],
    { limit: MOST_PAIRS, actual },
  )

/** The pairs as one list for each dot. */
export function listsOf(count: number, from: readonly number[], to: readonly number[]): Lists {
  const starts = new Int32Array(count + 1)
  for (const i of from) starts[i + 1]++
  for (let i = 0; i < count; i++) starts[i + 1] += starts[i]
  const items = new Int32Array(from.length)
  const next = starts.slice(0, count)
  for (let k = 0; k < from.length; k++) items[next[from[k]]++] = to[k]
  return { starts, items }
}
