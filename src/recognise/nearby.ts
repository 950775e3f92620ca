import KDBush from 'kdbush'
import type { Point } from '../geometry/point.js'

/** Up to so many points each is looked at, which is sooner done than an index is built. */
const FEW = 256

/** Which of the points are no farther from a place than a distance: their numbers. */
export type Nearby = (x: number, y: number, reach: number) => number[]

export function nearbyOf(points: readonly Point[]): Nearby {
  if (points.length <= FEW) return (x, y, reach) => lookedThrough(points, x, y, reach)
  const index = new KDBush(points.length)
  for (const { x, y } of points) index.add(x, y)
  index.finish()
  return (x, y, reach) => index.within(x, y, reach)
}

function lookedThrough(points: readonly Point[], x: number, y: number, reach: number): number[] {
  const found: number[] = []
  const square = reach * reach
  for (let i = 0; i < points.length; i++) {
    const across = points[i].x - x
    const down = points[i].y - y
    if (across * across + down * down <= square) found.push(i)
  }
  return found
}
