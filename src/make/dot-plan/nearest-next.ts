import { boxOfPoints } from '../../geometry/box.js'
import type { Lists } from './precedence.js'
import type { Ways } from './way.js'

/**
 * A first order: from each dot to the nearest one that may be set next. The dots that may be set are filed in squares, and the squares are
 * searched in rings round the place, so that a step costs about the same however many dots there are.
 */

/** Dots in one square, about. */
const DOTS_IN_SQUARE = 2

/** @param start the dot to begin with; it must wait for none */
export function nearestNext(ways: Ways, later: Lists, earlier: Lists, start: number): Int32Array {
  const { count } = ways
  const ready = new ReadyDots(ways)
  const waiting = new Int32Array(count)
  for (let i = 0; i < count; i++) {
    waiting[i] = earlier.starts[i + 1] - earlier.starts[i]
    if (waiting[i] === 0) ready.add(i)
  }
  const order = new Int32Array(count)
  for (let k = 0, at = start; k < count; k++) {
    order[k] = at
    ready.remove(at)
    for (let n = later.starts[at]; n < later.starts[at + 1]; n++) {
      const next = later.items[n]
      if (--waiting[next] === 0) ready.add(next)
    }
    if (k + 1 < count) at = ready.nearestFrom(at)
  }
  return order
}

class ReadyDots {
  private readonly left: number
  private readonly top: number
  private readonly side: number
  private readonly across: number
  private readonly down: number
  private readonly squares: (number[] | undefined)[]

  constructor(private readonly ways: Ways) {
    const { x, y } = ways.dots
    const box = boxOfPoints(Array.from(x, (value, i) => ({ x: value, y: y[i] })))
    const { x: left, y: top, width, height } = box ?? { x: 0, y: 0, width: 0, height: 0 }
    const squares = Math.max(1, x.length / DOTS_IN_SQUARE)
    this.left = left
    this.top = top
    this.side = Math.max(Math.sqrt((width * height) / squares), Math.max(width, height) / squares) || 1
    this.across = Math.floor(width / this.side) + 1
    this.down = Math.floor(height / this.side) + 1
    this.squares = new Array<number[] | undefined>(this.across * this.down)
  }

  add(i: number): void {
    const at = this.squareOf(i)
    const square = this.squares[at]
    if (square) square.push(i)
    else this.squares[at] = [i]
  }

  remove(i: number): void {
    const square = this.squares[this.squareOf(i)]
    const at = square?.indexOf(i) ?? -1
    if (!square || at < 0) throw new Error('A dot was taken that may not be set yet.')
    const last = square.pop()
    if (last !== undefined && at < square.length) square[at] = last
  }

  /** The ready dot with the shortest way from dot i; of several the first by number. */
  nearestFrom(i: number): number {
    const { dots, entry } = this.ways
    const column = this.columnOf(dots.x[i] - entry.x)
    const row = this.rowOf(dots.y[i] - entry.y)
    const farthest = Math.max(this.across, this.down)
    let best = -1
    let length = Infinity
    // The place may lie outside the squares, whose nearest then is within a ring that is counted from the edge.
    for (let ring = 0; ring <= farthest && (ring - 1) * this.side <= length; ring++)
      this.eachInRing(column, row, ring, (j) => {
        const way = this.ways.between(i, j)
        if (way < length || (way === length && j < best)) [best, length] = [j, way]
      })
    if (best < 0) throw new Error('No dot may be set next.')
    return best
  }

  private eachInRing(column: number, row: number, ring: number, visit: (i: number) => void): void {
    const look = (c: number, r: number) => {
      if (c < 0 || r < 0 || c >= this.across || r >= this.down) return
      const square = this.squares[r * this.across + c]
      if (square) for (const i of square) visit(i)
    }
    if (ring === 0) return look(column, row)
    for (let c = column - ring; c <= column + ring; c++) {
      look(c, row - ring)
      look(c, row + ring)
    }
    for (let r = row - ring + 1; r < row + ring; r++) {
      look(column - ring, r)
      look(column + ring, r)
    }
  }

  private squareOf(i: number): number {
    const { x, y } = this.ways.dots
    return this.rowOf(y[i]) * this.across + this.columnOf(x[i])
  }

  private columnOf = (x: number): number => clamp(Math.floor((x - this.left) / this.side), this.across)
  private rowOf = (y: number): number => clamp(Math.floor((y - this.top) / this.side), this.down)
}

const clamp = (value: number, count: number): number => Math.min(count - 1, Math.max(0, value))
