/**
 * The floor that a hinged door leaf sweeps, seen from above, and squares beside it.
 *
 * The leaf lies on the x axis when closed, from its hinge at x = -length to its latch edge at x = 0, and turns about the hinge to the
 * side of positive y. A square stands on the same axis: its middle is at x = centre, it reaches from the axis into positive y.
 */

/** How far the swept sector reaches along x at the distance y from the wall; -Infinity where it does not reach at all. */
export function reachOfLeaf(length: number, upTo: number, y: number): number {
  const angle = (upTo * Math.PI) / 180
  if (y < 0 || y > length * Math.sin(angle)) return -Infinity
  return Math.sqrt(length * length - y * y) - length
}

/**
 * The side of the largest such square that has no point inside the sector. The leaf reaches furthest, to x = 0, where it is closed (the
 * reach falls as y grows), and every square of this kind touches the axis there: its near edge must lie at x = 0 or beyond,
 * so half its side is at most `centre`.
 */
export const largestSquareBesideLeaf = (centre: number): number => Math.max(0, 2 * centre)
