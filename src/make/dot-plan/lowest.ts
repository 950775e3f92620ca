import type KDBush from 'kdbush'
import { raisedBound } from './ascent.js'
import { approachBound, treeLength } from './bound.js'
import type { Ways } from './way.js'

/** A length that no order of the dots can go below: the best of the bounds that hold. */

/** What the arithmetic of a long sum may lose, as a share. */
const ROUNDING = 1e-9

/** @param travel the length of some order */
export function lowestTravel(ways: Ways, index: KDBush, travel: number): number {
  if (ways.count < 2) return 0
  const bound = ways.isSymmetric
    ? Math.max(treeLength(ways.dots), raisedBound(ways, travel))
    : approachBound(ways, nearestWay(ways, index))
  return bound * (1 - ROUNDING)
}

const GROWTH = 2

/** The shortest way to a dot from any other. */
function nearestWay({ dots, entry, count }: Ways, index: KDBush): (j: number) => number {
  let radius = 1
  return (j) => {
    const [x, y] = [dots.x[j] + entry.x, dots.y[j] + entry.y]
    for (let reach = radius; ; reach *= GROWTH) {
      const near = index.within(x, y, reach)
      let least = Infinity
      for (const i of near) if (i !== j) least = Math.min(least, Math.hypot(x - dots.x[i], y - dots.y[i]))
      if (least < Infinity || near.length === count) {
        radius = reach / GROWTH
        return least
      }
    }
  }
}
