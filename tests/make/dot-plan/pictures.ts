/** Fields of dots for the tests. All values are invented, with the spacings of the 2010 ADA Standards, Table 703.3.1. */

export const HEAD = { tipDiameter: 1, bodyDiameter: 12, bodyClearance: 6, lift: 3, plunge: 2.5 }
export const MACHINE = { travelRate: 3000, plungeRate: 1000, dwell: 0.2 }
export const DOT = { baseDiameter: 1.55, height: 0.7 }

const DOT_SPACING = 2.4
const CELL_SPACING = 6.2
const LINE_SPACING = 10

/** Always the same numbers from 0 to below 1. */
export function numbers(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

/** Cells of braille, some blank, in about as many columns as fit a square. */
export function picture(count: number, seed = 1): [number, number][] {
  const next = numbers(seed)
  const columns = Math.ceil(Math.sqrt(count / 3) * 1.25)
  const dots: [number, number][] = []
  for (let line = 0; dots.length < count; line++)
    for (let cell = 0; cell < columns; cell++) {
      if (next() < 0.15) continue
      for (let dot = 0; dot < 6 && dots.length < count; dot++)
        if (next() < 0.6)
          dots.push([cell * CELL_SPACING + (dot > 2 ? DOT_SPACING : 0), line * LINE_SPACING + (dot % 3) * DOT_SPACING])
    }
  return dots
}

export const points = (dots: readonly (readonly [number, number])[]) => dots.map(([x, y]) => ({ x, y }))

/** The columns from left to right, each from top to bottom: the order of common practice, written a second time. */
export const leftToRight = (dots: readonly [number, number][]): [number, number][] =>
  [...dots].sort((a, b) => a[0] - b[0] || a[1] - b[1])

/** From dot to dot, when the tip is let down at `entry` from each. */
export const travelOf = (
  order: readonly (readonly [number, number])[],
  entry: readonly [number, number] = [0, 0],
): number =>
  order.slice(1).reduce((sum, [x, y], k) => sum + Math.hypot(x + entry[0] - order[k][0], y + entry[1] - order[k][1]), 0)
