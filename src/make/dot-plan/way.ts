import type { Point } from '../../geometry/point.js'
import type { Lists, Dots } from './precedence.js'

/**
 * The way from dot to dot. The head leaves a dot straight up and goes to where the next dot is entered, which with a sideways
 * approach is not above that dot: the way there and the way back then differ.
 */
export class Ways {
  readonly isSymmetric: boolean

  /** @param entry where a dot is entered, as seen from the dot */
  constructor(
    readonly dots: Dots,
    readonly entry: Point,
  ) {
    this.isSymmetric = entry.x === 0 && entry.y === 0
  }

  get count(): number {
    return this.dots.x.length
  }

  /** From dot i to dot j, millimetres. */
  between(i: number, j: number): number {
    const { x, y } = this.dots
    const dx = x[j] + this.entry.x - x[i]
    const dy = y[j] + this.entry.y - y[i]
    return Math.sqrt(dx * dx + dy * dy)
  }

  along(order: Int32Array): number {
    let sum = 0
    for (let k = 1; k < order.length; k++) sum += this.between(order[k - 1], order[k])
    return sum
  }
}

export function placesIn(order: Int32Array): Int32Array {
  const places = new Int32Array(order.length)
  for (let k = 0; k < order.length; k++) places[order[k]] = k
  return places
}

/** Whether every dot comes before those that must come later. */
export function keeps(order: Int32Array, later: Lists): boolean {
  const places = placesIn(order)
  for (let i = 0; i < order.length; i++)
    for (let k = later.starts[i]; k < later.starts[i + 1]; k++) if (places[later.items[k]] < places[i]) return false
  return true
}
