/** A point or vector; x to the right, y down; millimetres unless said otherwise. */
export interface Point {
  x: number
  y: number
}

/** By the plain formula: `Math.hypot` guards against numbers that no sign has, and takes ten times as long. */
export const distance = (a: Point, b: Point): number => lengthOf(a.x - b.x, a.y - b.y)

export const lengthOf = (x: number, y: number): number => Math.sqrt(x * x + y * y)
