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

/** Edges of closed polylines, filed in runs of neighbours with the boxes round them. */
interface Runs {
  /** Each edge as x1, y1, x2, y2. */
  ends: Float64Array
  /** Each run as the number of its first edge; one more for the end of the last. */
  starts: number[]
  /** The box of each run as left, top, right, bottom. */
  boxes: number[]
}

const RUN = 8

function runsOf(polylines: readonly Polyline[]): Runs {
  const ends = new Float64Array(4 * polylines.reduce((n, p) => n + p.length, 0))
  const runs: Runs = { ends, starts: [], boxes: [] }
  let edge = 0
  for (const polyline of polylines) {
    for (let from = 0; from < polyline.length; from += RUN) {
      const to = Math.min(from + RUN, polyline.length)
      runs.starts.push(edge)
      let a = polyline[from]
      let [left, top, right, bottom] = [a.x, a.y, a.x, a.y]
      for (let i = from; i < to; i++, edge++) {
        const b = polyline[i + 1 < polyline.length ? i + 1 : 0]
        ends[4 * edge] = a.x
        ends[4 * edge + 1] = a.y
        ends[4 * edge + 2] = b.x
        ends[4 * edge + 3] = b.y
        if (b.x < left) left = b.x
        if (b.x > right) right = b.x
        if (b.y < top) top = b.y
        if (b.y > bottom) bottom = b.y
        a = b
      }
      runs.boxes.push(left, top, right, bottom)
    }
  }
  runs.starts.push(edge)
  return runs
}

/** Square of the least possible distance between anything in two boxes, each the four numbers at an index. */
function squareBetweenBoxes(a: readonly number[], i: number, b: readonly number[], j: number): number {
  const across = Math.max(0, a[i] - b[j + 2], b[j] - a[i + 2])
  const down = Math.max(0, a[i + 1] - b[j + 3], b[j + 1] - a[i + 3])
  return across * across + down * down
}

/**
 * The search for the nearest points of two outlines by branch and bound: no two runs are compared that lie farther apart than
 * what was found before.
 */
class NearestPair {
  private square = Infinity
  private from: Point = { x: NaN, y: NaN }
  private to: Point = { x: NaN, y: NaN }

  constructor(
    private readonly a: Runs,
    private readonly b: Runs,
  ) {}

  find(): Gap {
    const { a, b } = this
    const all = [Infinity, Infinity, -Infinity, -Infinity]
    for (let j = 0; j < b.boxes.length; j += 4) {
      all[0] = Math.min(all[0], b.boxes[j])
      all[1] = Math.min(all[1], b.boxes[j + 1])
      all[2] = Math.max(all[2], b.boxes[j + 2])
      all[3] = Math.max(all[3], b.boxes[j + 3])
    }
    const bounds = Array.from({ length: a.starts.length - 1 }, (_, p) => squareBetweenBoxes(a.boxes, 4 * p, all, 0))
    const order = bounds.map((_, p) => p).sort((p, q) => bounds[p] - bounds[q])
    for (const p of order) {
      if (bounds[p] >= this.square) break
      this.compareWithAll(p)
    }
    const { from, to } = this
    const distance = this.square < Infinity ? Math.hypot(to.x - from.x, to.y - from.y) : Infinity
    return { distance, from, to }
  }

  /** The run of the second outline that may be nearest goes first: it leaves least for the others. */
  private compareWithAll(p: number): void {
    const { a, b } = this
    let first = -1
    let least = this.square
    for (let q = 0; q + 1 < b.starts.length; q++) {
      const bound = squareBetweenBoxes(a.boxes, 4 * p, b.boxes, 4 * q)
      if (bound >= least) continue
      least = bound
      first = q
    }
    if (first < 0) return
    this.compare(p, first)
    for (let q = 0; q + 1 < b.starts.length; q++)
      if (q !== first && squareBetweenBoxes(a.boxes, 4 * p, b.boxes, 4 * q) < this.square) this.compare(p, q)
  }

  /** Two edges that do not cross are nearest at an end of one of them; each end is the start of an edge. */
  private compare(p: number, q: number): void {
    const { ends: e } = this.a
    const { ends: f } = this.b
    const [end, other] = [4 * this.a.starts[p + 1], 4 * this.b.starts[q + 1]]
    for (let i = 4 * this.a.starts[p]; i < end; i += 4) {
      for (let j = 4 * this.b.starts[q]; j < other; j += 4) {
        const apartX = Math.max(
          Math.min(e[i], e[i + 2]) - Math.max(f[j], f[j + 2]),
          Math.min(f[j], f[j + 2]) - Math.max(e[i], e[i + 2]),
        )
        const apartY = Math.max(
          Math.min(e[i + 1], e[i + 3]) - Math.max(f[j + 1], f[j + 3]),
          Math.min(f[j + 1], f[j + 3]) - Math.max(e[i + 1], e[i + 3]),
        )
        if (apartX > 0 && apartX * apartX >= this.square) continue
        if (apartY > 0 && apartY * apartY >= this.square) continue
        const meeting = apartX <= 0 && apartY <= 0 ? crossing(e, i, f, j) : undefined
        if (meeting) {
          this.square = 0
          this.from = this.to = meeting
          return
        }
        this.offer(e[i], e[i + 1], f, j, false)
        this.offer(f[j], f[j + 1], e, i, true)
      }
    }
  }

  /** Keeps a point and the nearest place on an edge, if they are the nearest so far. */
  private offer(x: number, y: number, edges: Float64Array, i: number, pointIsOnSecond: boolean): void {
    const t = nearestShare(x, y, edges[i], edges[i + 1], edges[i + 2], edges[i + 3])
    const nearX = edges[i] + t * (edges[i + 2] - edges[i])
    const nearY = edges[i + 1] + t * (edges[i + 3] - edges[i + 1])
    const square = (nearX - x) * (nearX - x) + (nearY - y) * (nearY - y)
    if (square >= this.square) return
    this.square = square
    const point = { x, y }
    const near = { x: nearX, y: nearY }
    this.from = pointIsOnSecond ? near : point
    this.to = pointIsOnSecond ? point : near
  }
}

/** How far along the edge (x1, y1)–(x2, y2), 0 to 1, the point lies that is nearest to (x, y). */
function nearestShare(x: number, y: number, x1: number, y1: number, x2: number, y2: number): number {
  const dx = x2 - x1
  const dy = y2 - y1
  const square = dx * dx + dy * dy
  return square > 0 ? Math.min(1, Math.max(0, ((x - x1) * dx + (y - y1) * dy) / square)) : 0
}

/** Where two edges cross, if they do. Parallel edges have no crossing: their ends decide. */
function crossing(a: Float64Array, i: number, b: Float64Array, j: number): Point | undefined {
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

/**
 * The least distance between the edges of two sets of closed polylines, with the two points where it is. 0 where they
 * cross; an outline that lies inside the other without touching it is as far away as its edges are. Infinity when one is empty.
 */
export const distanceBetween = (a: readonly Polyline[], b: readonly Polyline[]): Gap =>
  new NearestPair(runsOf(a), runsOf(b)).find()

/** The least distance of a point from the edges of closed polylines, from either side. Infinity for no polylines. */
export function distanceToPoint(polylines: readonly Polyline[], { x, y }: Point): number {
  let best = Infinity
  for (const polyline of polylines) {
    let a = polyline[polyline.length - 1]
    for (const b of polyline) {
      const t = nearestShare(x, y, a.x, a.y, b.x, b.y)
      const dx = a.x + t * (b.x - a.x) - x
      const dy = a.y + t * (b.y - a.y) - y
      best = Math.min(best, dx * dx + dy * dy)
      a = b
    }
  }
  return Math.sqrt(best)
}
