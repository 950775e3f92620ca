import type { Dots } from './precedence.js'

/** The order that practice uses: columns from left to right, so that laid dots are not squashed (common practice, no source). */

/** Dots whose middles are no farther apart across than this are in one column: a share of a dot's base. */
const COLUMN_SHARE = 0.25

/** @param back every second column from bottom to top, which saves the way back */
export function columns({ x, y }: Dots, dotDiameter: number, back: boolean): Int32Array {
  const order = Array.from(x.keys()).sort((a, b) => x[a] - x[b] || y[a] - y[b] || a - b)
  const within = COLUMN_SHARE * dotDiameter
  const whole = new Int32Array(order.length)
  let column = 0
  for (let start = 0; start < order.length; column++) {
    let end = start + 1
    while (end < order.length && x[order[end]] - x[order[start]] <= within) end++
    const down = order.slice(start, end).sort((a, b) => y[a] - y[b] || x[a] - x[b] || a - b)
    whole.set(back && column % 2 === 1 ? down.reverse() : down, start)
    start = end
  }
  return whole
}
