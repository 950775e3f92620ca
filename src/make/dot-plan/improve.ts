import type { Line } from './line.js'
import type { Lists } from './precedence.js'
import type { Ways } from './way.js'

/**
 * Makes an order shorter by two exchanges until neither helps: a piece of up to three dots is put elsewhere, either way round (I. Or,
 * 1976), and a piece of any length is turned round (G. A. Croes, 1958). Only the nearest dots of each dot are tried, and dots round which
 * nothing changed are not tried again (J. L. Bentley, Fast algorithms for geometric traveling salesman problems, ORSA Journal on
 * Computing 4, 1992). Sources from memory.
 */

const LONGEST_PIECE = 3
/** A gain must be more than the arithmetic can invent, millimetres. */
export const LEAST_GAIN = 1e-7

export class Improvement {
  /** What was gained so far, millimetres. */
  gained = 0
  private readonly queued: Uint8Array
  private readonly queue: number[] = []

  constructor(
    readonly line: Line,
    private readonly ways: Ways,
    private readonly neighbours: Lists,
  ) {
    this.queued = new Uint8Array(ways.count)
  }

  /** Tries the dots at the places that were woken, and those round every change, until nothing helps. */
  settle(): void {
    const { line, queue, queued, ways } = this
    for (let head = 0; head < queue.length; head++) {
      const dot = queue[head]
      queued[dot] = 0
      while (this.putElsewhere(dot) || (ways.isSymmetric && this.turnRound(dot)));
    }
    queue.length = 0
    if (line.order.length !== ways.count) throw new Error('Dots were lost from the order.')
  }

  wake(place: number): void {
    const { order } = this.line
    if (place < 0 || place >= order.length) return
    const dot = order[place]
    if (this.queued[dot]) return
    this.queued[dot] = 1
    this.queue.push(dot)
  }

  /** The way from the dot at one place to the dot at another; beyond either end there is none. */
  way(from: number, to: number): number {
    const { order } = this.line
    return from < 0 || to >= order.length ? 0 : this.ways.between(order[from], order[to])
  }

  /** Moves a piece, whatever that gains, and wakes what stands round it. */
  move(first: number, last: number, gap: number, turned: boolean, gain: number): void {
    this.line.move(first, last, gap, turned)
    this.gained += gain
    const length = last - first + 1
    const start = gap > last ? gap - length + 1 : gap + 1
    const [from, to] = gap > last ? [first, gap] : [gap + 1, last]
    for (const at of [from - 1, from, start - 1, start, start + length - 1, start + length, to, to + 1]) this.wake(at)
  }

  /** Tries every piece that begins or ends at the dot, beside each neighbour. */
  private putElsewhere(dot: number): boolean {
    const place = this.line.places[dot]
    for (let length = 1; length <= LONGEST_PIECE; length++) {
      if (place + length <= this.ways.count && this.putPiece(place, place + length - 1, dot)) return true
      if (length > 1 && place - length + 1 >= 0 && this.putPiece(place - length + 1, place, dot)) return true
    }
    return false
  }

  private putPiece(first: number, last: number, dot: number): boolean {
    const { neighbours, ways, line } = this
    const taken = this.way(first - 1, first) + this.way(last, last + 1) - this.way(first - 1, last + 1)
    if (taken <= LEAST_GAIN) return false
    for (let k = neighbours.starts[dot]; k < neighbours.starts[dot + 1]; k++) {
      const other = neighbours.items[k]
      if (ways.isSymmetric && ways.between(dot, other) >= taken) return false
      const at = line.places[other]
      if (at >= first && at <= last) continue
      // Between `other` and the dot after it, and between the dot before it and `other`; each either way round.
      for (const gap of [at, at - 1]) {
        if (gap === first - 1 || (gap >= first && gap <= last)) continue
        if (this.tryGap(first, last, gap, false, taken)) return true
        if (last > first && this.tryGap(first, last, gap, true, taken)) return true
      }
    }
    return false
  }

  /** Puts the piece between the places `gap` and `gap + 1` if that is shorter and keeps the rules. */
  private tryGap(first: number, last: number, gap: number, turned: boolean, taken: number): boolean {
    const [head, tail] = turned ? [last, first] : [first, last]
    const added = this.way(gap, head) + this.way(tail, gap + 1) - this.way(gap, gap + 1)
    const gain = taken - added - (turned ? this.turnedWay(first, last) : 0)
    if (gain <= LEAST_GAIN || !this.line.mayMove(first, last, gap, turned)) return false
    this.move(first, last, gap, turned, gain)
    return true
  }

  /** How much longer a piece becomes when it is turned round. */
  private turnedWay(first: number, last: number): number {
    if (this.ways.isSymmetric) return 0
    let more = 0
    for (let k = first; k < last; k++) more += this.way(k + 1, k) - this.way(k, k + 1)
    return more
  }

  /** Turns a piece that begins or ends at the dot, so that the dot comes to stand beside a neighbour. */
  private turnRound(dot: number): boolean {
    const { line, neighbours, ways } = this
    const place = line.places[dot]
    const after = place === ways.count - 1 ? Infinity : this.way(place, place + 1)
    const before = place === 0 ? Infinity : this.way(place - 1, place)
    for (let k = neighbours.starts[dot]; k < neighbours.starts[dot + 1]; k++) {
      const other = neighbours.items[k]
      const way = ways.between(dot, other)
      if (way >= after && way >= before) return false
      const at = line.places[other]
      // Beside the dot comes `other`: after it when a piece after it is turned, before it when one before it is.
      if (way < after && (at > place ? this.tryTurn(place + 1, at) : this.tryTurn(at + 1, place))) return true
      if (way < before && (at < place ? this.tryTurn(at, place - 1) : this.tryTurn(place, at - 1))) return true
    }
    return false
  }

  private tryTurn(first: number, last: number): boolean {
    if (first >= last) return false
    const now = this.way(first - 1, first) + this.way(last, last + 1)
    const gain = now - this.way(first - 1, last) - this.way(first, last + 1)
    if (gain <= LEAST_GAIN || !this.line.mayTurn(first, last)) return false
    this.line.turn(first, last)
    this.gained += gain
    for (const at of [first - 1, first, last, last + 1]) this.wake(at)
    return true
  }
}

/** Makes an order shorter, in place, from every dot. */
export function improve(line: Line, ways: Ways, neighbours: Lists): Improvement {
  const improvement = new Improvement(line, ways, neighbours)
  for (let k = 0; k < ways.count; k++) improvement.wake(k)
  improvement.settle()
  line.keep()
  return improvement
}
