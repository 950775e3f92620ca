import type { Polyline } from './outline.js'
import type { Point } from './point.js'

/** Areas, insides and distances of closed polylines: the last point is joined to the first. Millimetres. */

/** Area by the shoelace formula: positive when the points run clockwise as seen (y down), negative otherwise. */
export function signedArea(polyline: Polyline): number {
  const origin = polyline[0]
  if (!origin) return 0
  let twice = 0
  for (let i = 0; i < polyline.length; i++) {
    const a = polyline[i]
    const b = polyline[(i + 1) % polyline.length]
    twice += (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y)
  }
  return twice / 2
}

/**
 * Whether a point lies inside the area that the polylines bound together, by the fill rule of SVG 1.1, 11.3: `nonzero`
 * counts how often the edges wind round the point, `evenodd` how often a ray crosses them.
 */
export function contains(polylines: readonly Polyline[], point: Point, rule: 'nonzero' | 'evenodd'): boolean {
  let winding = 0
  let crossings = 0
  for (const polyline of polylines) {
    let a = polyline[polyline.length - 1]
    for (const b of polyline) {
      if (a && a.y <= point.y !== b.y <= point.y) {
        const side = (b.x - a.x) * (point.y - a.y) - (point.x - a.x) * (b.y - a.y)
        const downwards = b.y > a.y
        if (side < 0 === downwards && side !== 0) {
          crossings++
          winding += downwards ? 1 : -1
        }
      }
      a = b
    }
  }
  return rule === 'nonzero' ? winding !== 0 : crossings % 2 === 1
}

/** The shortest way between two outlines. */
export interface Gap {
  distance: number
  /** On the first. */
  from: Point
  /** On the second. */
  to: Point
}

/** Consecutive edges with the box round them; `ends` holds each edge as x1, y1, x2, y2. */
interface Run {
  ends: number[]
  left: number
  top: number
  right: number
  bottom: number
}

const LEAST_RUN = 8

/** Cuts the edges into runs of about the square root of their number: pairs of runs then cost about as much as pairs in a run. */
function runsOf(polylines: readonly Polyline[]): Run[] {
  const edges = polylines.reduce((n, p) => n + p.length, 0)
  const size = Math.max(LEAST_RUN, Math.ceil(Math.sqrt(edges) / 2))
  const runs: Run[] = []
  for (const polyline of polylines) {
    let run: Run | undefined
    for (let i = 0; i < polyline.length; i++) {
      const a = polyline[i]
      const b = polyline[(i + 1) % polyline.length]
      if (!run || run.ends.length >= 4 * size) {
        run = { ends: [], left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity }
        runs.push(run)
      }
      run.ends.push(a.x, a.y, b.x, b.y)
      run.left = Math.min(run.left, a.x, b.x)
      run.right = Math.max(run.right, a.x, b.x)
      run.top = Math.min(run.top, a.y, b.y)
      run.bottom = Math.max(run.bottom, a.y, b.y)
    }
  }
  return runs
}

const boxDistance = (a: Run, b: Run): number =>
  Math.hypot(Math.max(0, a.left - b.right, b.left - a.right), Math.max(0, a.top - b.bottom, b.top - a.bottom))

/** The point of the edge (x1, y1)–(x2, y2) that is nearest to (x, y). */
function nearestOnEdge(x: number, y: number, x1: number, y1: number, x2: number, y2: number): Point {
  const dx = x2 - x1
  const dy = y2 - y1
  const square = dx * dx + dy * dy
  const t = square > 0 ? Math.min(1, Math.max(0, ((x - x1) * dx + (y - y1) * dy) / square)) : 0
  return { x: x1 + t * dx, y: y1 + t * dy }
}

/** Where two edges cross, if they do. Parallel edges have no crossing: their ends decide. */
function crossing(a: number[], i: number, b: number[], j: number): Point | undefined {
  const ax = a[i + 2] - a[i]
  const ay = a[i + 3] - a[i + 1]
  const bx = b[j + 2] - b[j]
  const by = b[j + 3] - b[j + 1]
  const cross = ax * by - ay * bx
  if (cross === 0) return undefined
  const dx = b[j] - a[i]
  const dy = b[j + 1] - a[i + 1]
  const t = (dx * by - dy * bx) / cross
  const u = (dx * ay - dy * ax) / cross
  return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? { x: a[i] + t * ax, y: a[i + 1] + t * ay } : undefined
}

/** Improves `best` with the edges of two runs. Two edges that do not cross are nearest at an end of one of them. */
function compareRuns(a: Run, b: Run, best: Gap): Gap {
  for (let i = 0; i < a.ends.length; i += 4) {
    const [ax1, ay1, ax2, ay2] = [a.ends[i], a.ends[i + 1], a.ends[i + 2], a.ends[i + 3]]
    for (let j = 0; j < b.ends.length; j += 4) {
      const [bx1, by1, bx2, by2] = [b.ends[j], b.ends[j + 1], b.ends[j + 2], b.ends[j + 3]]
      const apartX = Math.max(Math.min(ax1, ax2) - Math.max(bx1, bx2), Math.min(bx1, bx2) - Math.max(ax1, ax2))
      const apartY = Math.max(Math.min(ay1, ay2) - Math.max(by1, by2), Math.min(by1, by2) - Math.max(ay1, ay2))
      if (Math.max(apartX, apartY) >= best.distance) continue
      const meeting = crossing(a.ends, i, b.ends, j)
      if (meeting) return { distance: 0, from: meeting, to: meeting }
      const pairs: [Point, Point][] = [
        [{ x: ax1, y: ay1 }, nearestOnEdge(ax1, ay1, bx1, by1, bx2, by2)],
        [{ x: ax2, y: ay2 }, nearestOnEdge(ax2, ay2, bx1, by1, bx2, by2)],
        [nearestOnEdge(bx1, by1, ax1, ay1, ax2, ay2), { x: bx1, y: by1 }],
        [nearestOnEdge(bx2, by2, ax1, ay1, ax2, ay2), { x: bx2, y: by2 }],
      ]
      for (const [from, to] of pairs) {
        const distance = Math.hypot(to.x - from.x, to.y - from.y)
        if (distance < best.distance) best = { distance, from, to }
      }
    }
  }
  return best
}

/**
 * The least distance between the edges of two sets of closed polylines, with the two points where it is. 0 where they
 * cross; an outline that lies inside the other without touching it is as far away as its edges are. Infinity when one is empty.
 */
export function distanceBetween(a: readonly Polyline[], b: readonly Polyline[]): Gap {
  const runsOfB = runsOf(b)
  const pairs = runsOf(a).flatMap((p) => runsOfB.map((q) => ({ p, q, bound: boxDistance(p, q) })))
  pairs.sort((x, y) => x.bound - y.bound)
  const nowhere = { x: NaN, y: NaN }
  let best: Gap = { distance: Infinity, from: nowhere, to: nowhere }
  for (const { p, q, bound } of pairs) {
    if (bound >= best.distance) break
    best = compareRuns(p, q, best)
  }
  return best
}

/** The least distance of a point from the edges of closed polylines, from either side. Infinity for no polylines. */
export function distanceToPoint(polylines: readonly Polyline[], point: Point): number {
  let best = Infinity
  for (const polyline of polylines) {
    let a = polyline[polyline.length - 1]
    for (const b of polyline) {
      if (a) {
        const near = nearestOnEdge(point.x, point.y, a.x, a.y, b.x, b.y)
        best = Math.min(best, Math.hypot(near.x - point.x, near.y - point.y))
      }
      a = b
    }
  }
  return best
}
