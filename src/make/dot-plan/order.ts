import type Flatbush from 'flatbush'
import { columns } from './columns.js'
import { improve } from './improve.js'
import { nearestNext } from './nearest-next.js'
import { Line } from './line.js'
import { neighboursOf } from './neighbours.js'
import { polish } from './polish.js'
import type { Precedence } from './precedence.js'
import { keeps, type Ways } from './way.js'

/** The order of a plan: the best of several beginnings, each made shorter, and never worse than the columns where those are allowed. */

export interface Ordered {
  order: Int32Array
  /** The columns from left to right that practice uses, and whether they keep the same rules. */
  baseline: Int32Array
  baselineAllowed: boolean
}

/** Of so few dots each is tried as the first. */
const FEW = 12

/**
 * @param precedence without rings
 * @param seconds what an order takes
 */
export function orderOf(
  ways: Ways,
  precedence: Precedence,
  dotDiameter: number,
  index: Flatbush,
  seconds: (order: Int32Array) => number,
): Ordered {
  const { later, earlier } = precedence
  const baseline = columns(ways.dots, dotDiameter, false)
  const baselineAllowed = keeps(baseline, later)
  const plain = [baseline, columns(ways.dots, dotDiameter, true)].filter((order) => keeps(order, later))
  const first = baseline.filter((i) => earlier.starts[i] === earlier.starts[i + 1])
  const begun = Array.from(first.slice(0, ways.count <= FEW ? FEW : 1), (start) =>
    nearestNext(ways, later, earlier, start),
  )
  const neighbours = neighboursOf(ways, index)
  const better = [...plain.slice(-1), ...begun].map((order) =>
    improve(new Line(order.slice(), precedence), ways, neighbours),
  )
  const best = better.reduce((a, b) => (ways.along(b.line.order) < ways.along(a.line.order) ? b : a))
  polish(best)
  return { order: quickest([...plain, best.line.order], seconds), baseline, baselineAllowed }
}

function quickest(orders: readonly Int32Array[], cost: (order: Int32Array) => number): Int32Array {
  let best = orders[0]
  for (const order of orders.slice(1)) if (cost(order) < cost(best)) best = order
  return best
}
