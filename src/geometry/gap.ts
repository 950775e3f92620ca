import { loopOf, type Loop } from './loop.js'
import type { Polyline } from './outline.js'
import type { Point } from './point.js'

/** The shortest way between two sets of closed outlines, by branch and bound over boxes round runs of edges. Millimetres. */
export interface Gap {
  distance: number
  /** On the first. */
  from: Point
  /** On the second. */
  to: Point
}

/** The edges of closed outlines in runs of consecutive ones: made once for many questions. */
export interface Edges {
  /** x, y of the corners in order, those at which one run ends and the next begins twice. */
  corners: Float64Array
  /** For each run the numbers of its first corner and of the one after its last, one pair after another. */
  runs: Int32Array
  /** Left, top, right and bottom of each run. */
  boxes: Float64Array
}

const LEAST_RUN = 8

/** Cuts the edges into runs of about the square root of their number: pairs of runs then cost about as much as pairs in a run. */
export function edgesOf(loops: readonly Loop[]): Edges {
  const count = loops.reduce((n, loop) => n + loop.length / 2, 0)
  const size = Math.max(LEAST_RUN, Math.ceil(Math.sqrt(count) / 2))
  const number = loops.reduce((n, loop) => n + Math.ceil(loop.length / 2 / size), 0)
  const edges: Edges = {
    corners: new Float64Array(2 * (count + number)),
    runs: new Int32Array(2 * number),
    boxes: new Float64Array(4 * number),
  }
  let [run, at] = [0, 0]
  for (const loop of loops) {
    const length = loop.length / 2
    for (let first = 0; first < length; first += size) {
      const last = Math.min(first + size, length)
      edges.runs[2 * run] = at
      let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity]
      for (let i = first; i <= last; i++) {
        const corner = i === length ? 0 : i
        const x = loop[2 * corner]
        const y = loop[2 * corner + 1]
        edges.corners[2 * at] = x
        edges.corners[2 * at + 1] = y
        at++
        if (x < left) left = x
        if (x > right) right = x
        if (y < top) top = y
        if (y > bottom) bottom = y
      }
      edges.runs[2 * run + 1] = at
      edges.boxes[4 * run] = left
      edges.boxes[4 * run + 1] = top
      edges.boxes[4 * run + 2] = right
      edges.boxes[4 * run + 3] = bottom
      run++
    }
  }
  return edges
}

/** Square of the least possible distance of two boxes. */
function betweenBoxes(a: Float64Array, i: number, b: Float64Array, j: number): number {
  const across = Math.max(0, a[i] - b[j + 2], b[j] - a[i + 2])
  const down = Math.max(0, a[i + 1] - b[j + 3], b[j + 1] - a[i + 3])
  return across * across + down * down
}

/** The way found so far, by the square of its length. */
class Way {
  square = Infinity
  private fromX = NaN
  private fromY = NaN
  private toX = NaN
  private toY = NaN

  offer(fromX: number, fromY: number, toX: number, toY: number): void {
    const square = (toX - fromX) * (toX - fromX) + (toY - fromY) * (toY - fromY)
    if (!(square < this.square)) return
    this.square = square
    this.fromX = fromX
    this.fromY = fromY
    this.toX = toX
    this.toY = toY
  }

  /** From the point (x, y) to the nearest point of the edge (x1, y1)–(x2, y2), or the other way round. */
  offerEdge(x: number, y: number, x1: number, y1: number, x2: number, y2: number, backwards: boolean): void {
    const dx = x2 - x1
    const dy = y2 - y1
    const square = dx * dx + dy * dy
    const t = square > 0 ? Math.min(1, Math.max(0, ((x - x1) * dx + (y - y1) * dy) / square)) : 0
    if (backwards) this.offer(x1 + t * dx, y1 + t * dy, x, y)
    else this.offer(x, y, x1 + t * dx, y1 + t * dy)
  }

  get gap(): Gap {
    return {
      distance: this.square === Infinity ? Infinity : Math.hypot(this.toX - this.fromX, this.toY - this.fromY),
      from: { x: this.fromX, y: this.fromY },
      to: { x: this.toX, y: this.toY },
    }
  }
}

/** Where two edges cross, if they do: both ends of a way of no length. Parallel edges have no crossing: their ends decide. */
function offerCrossing(way: Way, a: Float64Array, i: number, b: Float64Array, j: number): void {
  const ax = a[i + 2] - a[i]
  const ay = a[i + 3] - a[i + 1]
  const bx = b[j + 2] - b[j]
  const by = b[j + 3] - b[j + 1]
  const cross = ax * by - ay * bx
  if (cross === 0) return
  const dx = b[j] - a[i]
  const dy = b[j + 1] - a[i + 1]
  const t = (dx * by - dy * bx) / cross
  const u = (dx * ay - dy * ax) / cross
  if (t < 0 || t > 1 || u < 0 || u > 1) return
  const [x, y] = [a[i] + t * ax, a[i + 1] + t * ay]
  way.offer(x, y, x, y)
}

/** Improves the way with the edges of two runs. Two edges that do not cross are nearest at an end of one of them. */
function compareRuns(way: Way, a: Edges, p: number, b: Edges, q: number): void {
  const [first, second] = [a.corners, b.corners]
  for (let i = 2 * a.runs[2 * p]; i < 2 * a.runs[2 * p + 1] - 2; i += 2) {
    const ax1 = first[i]
    const ay1 = first[i + 1]
    const ax2 = first[i + 2]
    const ay2 = first[i + 3]
    const left = Math.min(ax1, ax2)
    const right = Math.max(ax1, ax2)
    const top = Math.min(ay1, ay2)
    const bottom = Math.max(ay1, ay2)
    const aside = Math.max(0, left - b.boxes[4 * q + 2], b.boxes[4 * q] - right)
    const apart = Math.max(0, top - b.boxes[4 * q + 3], b.boxes[4 * q + 1] - bottom)
    if (aside * aside + apart * apart >= way.square) continue
    for (let j = 2 * b.runs[2 * q]; j < 2 * b.runs[2 * q + 1] - 2; j += 2) {
      const bx1 = second[j]
      const by1 = second[j + 1]
      const bx2 = second[j + 2]
      const by2 = second[j + 3]
      const across = Math.max(0, left - Math.max(bx1, bx2), Math.min(bx1, bx2) - right)
      const down = Math.max(0, top - Math.max(by1, by2), Math.min(by1, by2) - bottom)
      if (across * across + down * down >= way.square) continue
      if (across === 0 && down === 0) offerCrossing(way, first, i, second, j)
      if (way.square === 0) return
      way.offerEdge(ax1, ay1, bx1, by1, bx2, by2, false)
      way.offerEdge(ax2, ay2, bx1, by1, bx2, by2, false)
      way.offerEdge(bx1, by1, ax1, ay1, ax2, ay2, true)
      way.offerEdge(bx2, by2, ax1, ay1, ax2, ay2, true)
    }
  }
}

/** For each run of `a` the square of the least possible distance from the box round all of `b`. */
function bounds(a: Edges, b: Edges): Float64Array {
  const whole = Float64Array.of(Infinity, Infinity, -Infinity, -Infinity)
  for (let i = 0; i < b.boxes.length; i += 4) {
    whole[0] = Math.min(whole[0], b.boxes[i])
    whole[1] = Math.min(whole[1], b.boxes[i + 1])
    whole[2] = Math.max(whole[2], b.boxes[i + 2])
    whole[3] = Math.max(whole[3], b.boxes[i + 3])
  }
  const found = new Float64Array(a.boxes.length / 4)
  for (let p = 0; p < found.length; p++) found[p] = betweenBoxes(a.boxes, 4 * p, whole, 0)
  return found
}

function indexOfLeast(values: Float64Array): number {
  let least = 0
  for (let i = 1; i < values.length; i++) if (values[i] < values[least]) least = i
  return least
}

/** The way between the first corners of two runs. */
function offerCorners(way: Way, a: Edges, p: number, b: Edges, q: number): void {
  const i = 2 * a.runs[2 * p]
  const j = 2 * b.runs[2 * q]
  way.offer(a.corners[i], a.corners[i + 1], b.corners[j], b.corners[j + 1])
}

/** The least distance between the edges of two sets of closed outlines, with the two points where it is. See `distanceBetween`. */
export function gapBetween(a: Edges, b: Edges): Gap {
  const way = new Way()
  const [toB, toA] = [bounds(a, b), bounds(b, a)]
  // Corners of the runs that lie nearest give a way that is short enough to pass over most pairs of runs.
  const [p0, q0] = [indexOfLeast(toB), indexOfLeast(toA)]
  for (let q = 0; q < toA.length; q++) offerCorners(way, a, p0, b, q)
  for (let p = 0; p < toB.length; p++) offerCorners(way, a, p, b, q0)
  const near: { p: number; q: number; bound: number }[] = []
  for (let p = 0; p < toB.length; p++) {
    if (toB[p] >= way.square) continue
    for (let q = 0; q < toA.length; q++) {
      if (toA[q] >= way.square) continue
      const bound = betweenBoxes(a.boxes, 4 * p, b.boxes, 4 * q)
      if (bound < way.square) near.push({ p, q, bound })
    }
  }
  near.sort((x, y) => x.bound - y.bound)
  for (const { p, q, bound } of near) {
    if (bound >= way.square) break
    compareRuns(way, a, p, b, q)
  }
  return way.gap
}

/**
 * The least distance between the edges of two sets of closed polylines, with the two points where it is. 0 where they
 * cross; an outline that lies inside the other without touching it is as far away as its edges are. Infinity when one is empty.
 */
export const distanceBetween = (a: readonly Polyline[], b: readonly Polyline[]): Gap =>
  gapBetween(edgesOf(a.map(loopOf)), edgesOf(b.map(loopOf)))
