import type { Lists } from './precedence.js'
import { placesIn } from './way.js'

/** An order of dots that can be changed in two ways, without breaking a rule of what comes first, and changed back. */

export interface Rules {
  later: Lists
  earlier: Lists
}

/** No more dots than this change their place in one change, so that the work grows with the number of dots. */
export const MOST_MOVED = 50_000

/** Numbers in the log for one change. */
const LOGGED = 4
const TURNED = 1
const MOVED = 2
const MOVED_AND_TURNED = 3

export class Line {
  readonly places: Int32Array
  private readonly log: number[] = []
  private piece = new Int32Array(LOGGED)

  /** @param order is changed in place */
  constructor(
    readonly order: Int32Array,
    private readonly rules: Rules,
  ) {
    this.places = placesIn(order)
  }

  /** Whether the piece from place `first` to `last` may be put between the places `gap` and `gap + 1`. */
  mayMove(first: number, last: number, gap: number, turned: boolean): boolean {
    const { order, rules } = this
    if ((gap > last ? gap - last : first - gap - 1) > MOST_MOVED) return false
    for (let k = first; k <= last; k++) {
      if (turned && this.meets(rules.later, order[k], k + 1, last)) return false
      if (gap > last && this.meets(rules.later, order[k], last + 1, gap)) return false
      if (gap < first && this.meets(rules.earlier, order[k], gap + 1, first - 1)) return false
    }
    return true
  }

  move(first: number, last: number, gap: number, turned: boolean): void {
    const { order } = this
    const length = last - first + 1
    if (this.piece.length < length) this.piece = new Int32Array(2 * length)
    const { piece } = this
    for (let k = 0; k < length; k++) piece[k] = order[turned ? last - k : first + k]
    const isLater = gap > last
    const start = isLater ? gap - length + 1 : gap + 1
    if (isLater) order.copyWithin(first, last + 1, gap + 1)
    else order.copyWithin(gap + 1 + length, gap + 1, first)
    for (let k = 0; k < length; k++) order[start + k] = piece[k]
    this.renumber(isLater ? first : gap + 1, isLater ? gap : last)
    // What brings it back: the piece from where it is now to where it was.
    this.log.push(turned ? MOVED_AND_TURNED : MOVED, start, start + length - 1, isLater ? first - 1 : last)
  }

  /** Whether the piece from place `first` to `last` may be turned round. */
  mayTurn(first: number, last: number): boolean {
    if (last - first > MOST_MOVED) return false
    for (let k = first; k < last; k++) if (this.meets(this.rules.later, this.order[k], k + 1, last)) return false
    return true
  }

  turn(first: number, last: number): void {
    this.order.subarray(first, last + 1).reverse()
    this.renumber(first, last)
    this.log.push(TURNED, first, last, 0)
  }

  /** Forgets how it came to be as it is. */
  keep(): void {
    this.log.length = 0
  }

  /** Takes back all changes since it was last kept. */
  undo(): void {
    for (let at = this.log.length - LOGGED; at >= 0; at -= LOGGED) {
      const [kind, first, last, gap] = this.log.slice(at, at + LOGGED)
      if (kind === TURNED) this.turn(first, last)
      else this.move(first, last, gap, kind === MOVED_AND_TURNED)
    }
    this.keep()
  }

  private renumber(first: number, last: number): void {
    for (let k = first; k <= last; k++) this.places[this.order[k]] = k
  }

  /** Whether one of the dots in the list of `dot` stands at a place from `from` to `to`. */
  private meets({ starts, items }: Lists, dot: number, from: number, to: number): boolean {
    for (let n = starts[dot]; n < starts[dot + 1]; n++) {
      const place = this.places[items[n]]
      if (place >= from && place <= to) return true
    }
    return false
  }
}
