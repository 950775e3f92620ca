import type Flatbush from 'flatbush'
import { raisedBound } from './ascent.js'
import { approachBound, treeLength } from './bound.js'
import { shortestWayTo } from './neighbours.js'
import type { Ways } from './way.js'

/** A length that no order of the dots can go below: the best of the bounds that hold. */

/** What the arithmetic of a long sum may lose, as a share. */
const ROUNDING = 1e-9

/** @param travel the length of some order */
export function lowestTravel(ways: Ways, index: Flatbush, travel: number): number {
  if (ways.count < 2) return 0
  const bound = ways.isSymmetric
    ? Math.max(treeLength(ways.dots), raisedBound(ways, travel))
    : approachBound(ways, (j) => shortestWayTo(ways, index, j))
  return bound * (1 - ROUNDING)
}
