import type { Box } from './box.js'
import { edgesOf, gapBetween } from './gap.js'
import { boxOfLoops, loopOf } from './loop.js'
import type { Polyline } from './outline.js'

/**
 * The least distance between the edges of many closed outlines and those of a few that run round them or past them, as a border
 * does. Branch and bound: the box of an outline cannot be nearer to an edge than what it holds, so that only the outlines next to
 * the edges are looked at. Infinity when there are none. Millimetres.
 */
export function leastGap(many: readonly Polyline[], few: readonly Polyline[]): number {
  const edges = edgesOf(few.map(loopOf))
  const edgeBoxes = few.flatMap(boxesOfEdges)
  const near = many
    .map((polyline) => ({ polyline, bound: squareToNearest(boxOfLoops([loopOf(polyline)]), edgeBoxes) }))
    .sort((a, b) => a.bound - b.bound)
  let best = Infinity
  for (const { polyline, bound } of near) {
    if (bound >= best * best) break
    best = Math.min(best, gapBetween(edgesOf([loopOf(polyline)]), edges).distance)
  }
  return best
}

function boxesOfEdges(polyline: Polyline): Box[] {
  return polyline.map((from, i) => {
    const to = polyline[i + 1 < polyline.length ? i + 1 : 0]
    return {
      x: Math.min(from.x, to.x),
      y: Math.min(from.y, to.y),
      width: Math.abs(to.x - from.x),
      height: Math.abs(to.y - from.y),
    }
  })
}

/** Square of the distance of a box from the nearest of others. */
function squareToNearest(box: Box | undefined, others: readonly Box[]): number {
  let least = Infinity
  if (!box) return least
  for (const other of others) {
    const across = Math.max(0, box.x - other.x - other.width, other.x - box.x - box.width)
    const down = Math.max(0, box.y - other.y - other.height, other.y - box.y - box.height)
    least = Math.min(least, across * across + down * down)
  }
  return least
}
