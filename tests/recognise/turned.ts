import type { Matrix } from '../../src/geometry/matrix.js'

/** Turns clockwise as seen by so many degrees, enlarges, then moves. */
export function rotation(degrees: number, size: number, x: number, y: number): Matrix {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180) * size, Math.sin((degrees * Math.PI) / 180) * size]
  return { a: cos, b: sin, c: -sin, d: cos, e: x, f: y }
}
