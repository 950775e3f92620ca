import Flatbush from 'flatbush'
import type { Box } from '../geometry/box.js'
import type { Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'

/** The edges of closed polylines, filed so that those near a place are found without looking at all. Millimetres. */

export interface Edge {
  from: Point
  to: Point
  /** Which of the polylines it belongs to. */
  of?: number
}

/** So few edges are looked through faster than they are filed. */
const FEW = 96

export class Edges {
  readonly list: Edge[]
  private readonly index: Flatbush | undefined

  /**
   * Edges that cancel each other are left out: see `withoutInner`.
   * @param count told how many edges are looked at, each time.
   */
  constructor(
    polylines: readonly Polyline[],
    private readonly rule: 'nonzero' | 'evenodd',
    private readonly count: (edges: number) => void,
  ) {
    const all = polylines.length === 1 ? edgesOf(polylines[0], 0) : polylines.flatMap(edgesOf)
    this.list = polylines.length > 1 ? withoutInner(all, rule) : all
    if (this.list.length <= FEW) return
    this.index = new Flatbush(this.list.length)
    for (const { from, to } of this.list)
      this.index.add(Math.min(from.x, to.x), Math.min(from.y, to.y), Math.max(from.x, to.x), Math.max(from.y, to.y))
    this.index.finish()
  }

  /** The edges whose own boxes meet this one. */
  near({ x, y, width, height }: Box): Edge[] {
    const [right, bottom] = [x + width, y + height]
    if (this.index) {
      const found = this.index.search(x, y, right, bottom)
      this.count(found.length + 1)
      return found.map((i) => this.list[i])
    }
    const found: Edge[] = []
    for (const edge of this.list) {
      const { from, to } = edge
      if (from.x < x ? to.x < x : from.x > right && to.x > right) continue
      if (from.y < y ? to.y < y : from.y > bottom && to.y > bottom) continue
      found.push(edge)
    }
    this.count(found.length + 1)
    return found
  }

  /** Whether a point lies inside, by the fill rule (SVG 1.1, 11.3): the edges that a ray to the right meets are counted. */
  contains({ x, y }: Point): boolean {
    let winding = 0
    let crossings = 0
    for (const { from, to } of this.near({ x, y, width: Infinity, height: 0 })) {
      if (from.y <= y === to.y <= y) continue
      const side = (to.x - from.x) * (y - from.y) - (x - from.x) * (to.y - from.y)
      const down = to.y > from.y
      if (side === 0 || side < 0 === down) continue
      crossings++
      winding += down ? 1 : -1
    }
    return this.rule === 'nonzero' ? winding !== 0 : crossings % 2 === 1
  }

  /** Whether an edge passes a point within this distance. */
  touches(point: Point, within: number): boolean {
    const near = this.near({ x: point.x - within, y: point.y - within, width: 2 * within, height: 2 * within })
    return near.some((edge) => distanceToEdge(point, edge) <= within)
  }
}

/** A point that stands alone has none. */
function edgesOf(polyline: Polyline, of: number): Edge[] {
  if (polyline.length < 2) return []
  return polyline.map((from, i) => ({ from, to: polyline[(i + 1) % polyline.length], of }))
}

/**
 * Drops edges that are drawn along each other, once each way (`evenodd`: twice in any way): both sides of them are alike, so
 * they bound nothing. Programs that draw a shade as rings draw every inner edge so.
 */
function withoutInner(edges: Edge[], rule: 'nonzero' | 'evenodd'): Edge[] {
  const open = new Map<string, number[]>()
  const dropped = new Set<number>()
  const key = (a: Point, b: Point) => `${a.x} ${a.y} ${b.x} ${b.y}`
  edges.forEach(({ from, to }, i) => {
    const partners = open.get(key(to, from)) ?? (rule === 'evenodd' ? open.get(key(from, to)) : undefined)
    const partner = partners?.pop()
    if (partner !== undefined) {
      dropped.add(partner).add(i)
      return
    }
    const own = open.get(key(from, to))
    if (own) own.push(i)
    else open.set(key(from, to), [i])
  })
  return dropped.size === 0 ? edges : edges.filter((_, i) => !dropped.has(i))
}

function distanceToEdge({ x, y }: Point, { from, to }: Edge): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const square = dx * dx + dy * dy
  const t = square > 0 ? Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / square)) : 0
  return Math.hypot(x - from.x - t * dx, y - from.y - t * dy)
}

/** Where along the first edge (0 at its start, 1 at its end) the two cross; undefined when they do not, or run along each other. */
export function crossingAlong(first: Edge, second: Edge): number | undefined {
  const [ax, ay] = [first.to.x - first.from.x, first.to.y - first.from.y]
  const [bx, by] = [second.to.x - second.from.x, second.to.y - second.from.y]
  const cross = ax * by - ay * bx
  if (cross === 0) return undefined
  const [dx, dy] = [second.from.x - first.from.x, second.from.y - first.from.y]
  const t = (dx * by - dy * bx) / cross
  const u = (dx * ay - dy * ax) / cross
  return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? t : undefined
}

/** Those of the edges in a box that come as near to any of the others as this. */
export const edgesWithin = (edges: Edges, box: Box, others: Edges, distance: number): Edge[] =>
  edges.near(grown(box, distance)).filter((edge) => {
    const own = grown(boxOfEdge(edge), distance)
    return others.near(own).some((other) => areWithin(edge, other, distance))
  })

const boxOfEdge = ({ from, to }: Edge): Box => ({
  x: Math.min(from.x, to.x),
  y: Math.min(from.y, to.y),
  width: Math.abs(to.x - from.x),
  height: Math.abs(to.y - from.y),
})

/** Two edges that do not cross are nearest to each other at an end of one of them. */
const areWithin = (a: Edge, b: Edge, distance: number): boolean =>
  crossingAlong(a, b) !== undefined ||
  [a.from, a.to].some((point) => distanceToEdge(point, b) <= distance) ||
  [b.from, b.to].some((point) => distanceToEdge(point, a) <= distance)

export const grown = (b: Box, by: number): Box => ({
  x: b.x - by,
  y: b.y - by,
  width: b.width + 2 * by,
  height: b.height + 2 * by,
})
