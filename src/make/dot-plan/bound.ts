import Delaunator from 'delaunator'
import { sizeOf, type Dots } from './precedence.js'
import type { Ways } from './way.js'

/**
 * Lengths that no order of the dots can go below, so that a plan can say how much it may be longer than need be.
 *
 * Straight down: a way through all dots is a tree that spans them, so none is shorter than the shortest such tree. That tree lies in the
 * Delaunay triangulation (M. I. Shamos and D. Hoey, Closest-point problems, 1975). For few dots the bound is raised by weights on the
 * dots (M. Held and R. M. Karp, The traveling-salesman problem and minimum spanning trees: Part II, 1971), in `ascent.ts`.
 *
 * With a sideways approach: each way is at least as long as its share in the direction of the approach, and each dot but the first is
 * come to from the dot whose way to it is the shortest. Sources from memory.
 */

/** The bound for ways without an approach, millimetres. */
export function treeLength(dots: Dots): number {
  const edges = triangulationEdges(dots)
  const way = (e: number) =>
    Math.hypot(dots.x[edges[e]] - dots.x[edges[e + 1]], dots.y[edges[e]] - dots.y[edges[e + 1]])
  const lengths = Float64Array.from({ length: edges.length / 2 }, (_, e) => way(2 * e))
  const sorted = Uint32Array.from(lengths.keys()).sort((a, b) => lengths[a] - lengths[b])
  const roots = Int32Array.from({ length: sizeOf(dots) }, (_, i) => i)
  const rootOf = (i: number): number => {
    while (roots[i] !== i) i = roots[i] = roots[roots[i]]
    return i
  }
  let sum = 0
  for (const e of sorted) {
    const [a, b] = [rootOf(edges[2 * e]), rootOf(edges[2 * e + 1])]
    if (a === b) continue
    roots[a] = b
    sum += lengths[e]
  }
  return sum
}

/** Pairs of dots, one after another, among which the shortest tree is: dots in one place are joined by no length and left out. */
function triangulationEdges({ x, y }: Dots): number[] {
  const coordinates = new Float64Array(2 * x.length)
  for (let i = 0; i < x.length; i++) {
    coordinates[2 * i] = x[i]
    coordinates[2 * i + 1] = y[i]
  }
  const { triangles, hull } = new Delaunator(coordinates)
  const edges: number[] = []
  // Dots in one line have no triangles, and are sorted along the line.
  if (triangles.length === 0) for (let i = 1; i < hull.length; i++) edges.push(hull[i - 1], hull[i])
  for (let i = 0; i < triangles.length; i++) {
    const next = i % 3 === 2 ? i - 2 : i + 1
    edges.push(triangles[i], triangles[next])
  }
  return edges
}

/** The bound for ways with an approach, millimetres. */
export function approachBound(ways: Ways, nearestTo: (j: number) => number): number {
  const { dots, entry, count } = ways
  const length = Math.hypot(entry.x, entry.y)
  let [least, most] = [Infinity, -Infinity]
  for (let i = 0; i < count; i++) {
    const along = (dots.x[i] * entry.x + dots.y[i] * entry.y) / length
    if (along < least) least = along
    if (along > most) most = along
  }
  // All ways together go (count - 1) times the approach in its direction, and from the first dot to the last.
  const forward = (count - 1) * length - (most - least)
  let [sum, longest] = [0, 0]
  for (let j = 0; j < count && count > 1; j++) {
    const way = nearestTo(j)
    sum += way
    if (way > longest) longest = way
  }
  return Math.max(0, forward, sum - longest)
}
