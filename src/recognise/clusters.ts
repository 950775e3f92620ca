import { medianOf } from '../geometry/fit.js'
import { distance } from '../geometry/point.js'
import type { Dot } from './dots.js'
import { nearbyOf } from './nearby.js'

/**
 * Dots that stand near enough to belong to the same braille. First the nearest are joined, which shows how far apart dots
 * stand there; then what lies within a blank cell or a line of that is joined too.
 */

/** Dots of one block are alike: greatest ratio of two diameters. */
const MOST_UNLIKE = 1.5
/** The first reach: diameters, and at least the millimetres that two steps of true braille take. */
const FIRST_REACH = 3.2
const FIRST_REACH_LEAST = 5
/** The second reach in dot spacings: two cells and a dot spacing (one blank between) at the widest cell pitch in use. */
const SECOND_REACH = 8.4
/** Share of the pair distances below which the dot spacing is looked for: a displaced dot may be nearer than it. */
const LOW_SHARE = 0.1
/** Dots do not overlap: a pair nearer than this many diameters tells nothing of the spacing. */
const TOUCHING = 1.05
/** Usual dot spacing in diameters (NLS Specification 800: 0.092 in over 0.057 in), for dots that have no near neighbour. */
export const USUAL_SPACING = 1.6
const SPACING_OF_DIAMETER = [1.2, 2.6] as const

/** Pairs of one dot that are weighed for the spacing: true braille has fewer within the first reach. */
const MOST_PAIRS = 64

/** Sizes of the first fragments from which on they are not joined further: they are past what is read at all. */
const HUGE = 4000

/** Groups of dots, each in the order of the input. Linear in the number of dots for a bounded density. */
export function clustersOf(dots: readonly Dot[]): Dot[][] {
  if (dots.length === 0) return []
  const nearby = nearbyOf(dots)
  const sets = new DisjointSets(dots.length)
  const distances: number[][] = dots.map(() => [])
  dots.forEach((dot, i) => {
    for (const j of nearby(dot.x, dot.y, Math.max(FIRST_REACH * dot.diameter, FIRST_REACH_LEAST))) {
      if (j === i || !alike(dot, dots[j])) continue
      sets.join(i, j)
      const apart = distance(dots[j], dot)
      if (apart > TOUCHING * dot.diameter && distances[i].length < MOST_PAIRS) distances[i].push(apart)
    }
  })
  const spacing = spacingsOf(dots, sets, distances)
  const fragment = dots.map((_, i) => sets.find(i))
  for (const [i, dot] of dots.entries()) {
    if (sets.size(i) === dots.length) break
    if (sets.size(fragment[i]) > HUGE) continue
    for (const j of nearby(dot.x, dot.y, SECOND_REACH * (spacing[i] || USUAL_SPACING * dot.diameter))) {
      if (fragment[j] === fragment[i] || !alike(dot, dots[j])) continue
      const reach = SECOND_REACH * reachOf(spacing[i], spacing[j], dot)
      if (distance(dots[j], dot) <= reach) sets.join(i, j)
    }
  }
  return sets.groups().map((group) => group.map((i) => dots[i]))
}

/** The smaller spacing of two dots, the known one of them, or the usual one. */
const reachOf = (a: number, b: number, dot: Dot): number =>
  a > 0 && b > 0 ? Math.min(a, b) : a || b || USUAL_SPACING * dot.diameter

const alike = (a: Dot, b: Dot): boolean =>
  a.diameter <= MOST_UNLIKE * b.diameter && b.diameter <= MOST_UNLIKE * a.diameter

/** A first idea of the dot spacing about each dot, from the nearer pairs of its fragment; 0 where it has none. */
function spacingsOf(dots: readonly Dot[], sets: DisjointSets, distances: number[][]): number[] {
  const spacing = new Array<number>(dots.length).fill(0)
  for (const group of sets.groups()) {
    // As an array of numbers, because that sorts many times faster.
    const pairs = Float64Array.from(group.flatMap((i) => distances[i])).sort()
    const diameter = medianOf(group.map((i) => dots[i].diameter))
    const low = pairs[Math.floor(pairs.length * LOW_SHARE)]
    if (low === undefined) continue
    const bounded = Math.min(Math.max(low, SPACING_OF_DIAMETER[0] * diameter), SPACING_OF_DIAMETER[1] * diameter)
    for (const i of group) spacing[i] = bounded
  }
  return spacing
}

/** Union and find with path halving and union by size (R. E. Tarjan, J. ACM 22, 1975). */
class DisjointSets {
  private readonly parent: Int32Array
  private readonly count: Int32Array

  constructor(size: number) {
    this.parent = Int32Array.from({ length: size }, (_, i) => i)
    this.count = new Int32Array(size).fill(1)
  }

  find(i: number): number {
    while (this.parent[i] !== i) {
      this.parent[i] = this.parent[this.parent[i]]
      i = this.parent[i]
    }
    return i
  }

  join(a: number, b: number): void {
    let large = this.find(a)
    let small = this.find(b)
    if (large === small) return
    if (this.count[large] < this.count[small]) [large, small] = [small, large]
    this.parent[small] = large
    this.count[large] += this.count[small]
  }

  size(i: number): number {
    return this.count[this.find(i)]
  }

  groups(): number[][] {
    const groups = new Map<number, number[]>()
    for (let i = 0; i < this.parent.length; i++) {
      const root = this.find(i)
      const group = groups.get(root)
      if (group) group.push(i)
      else groups.set(root, [i])
    }
    return [...groups.values()]
  }
}
