/** A point or vector; x to the right, y down; millimetres unless said otherwise. */
export interface Point {
  x: number
  y: number
}

export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y)
