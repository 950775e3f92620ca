import type { Point } from './point.js'

/** An affine map: x' = a x + c y + e, y' = b x + d y + f (the order of SVG's `matrix(a b c d e f)`). */
export interface Matrix {
  a: number
  b: number
  c: number
  d: number
  e: number
  f: number
}

export const IDENTITY: Matrix = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 }

export const translation = (x: number, y: number): Matrix => ({ ...IDENTITY, e: x, f: y })

export const scaling = (x: number, y = x): Matrix => ({ a: x, b: 0, c: 0, d: y, e: 0, f: 0 })

/** The map that first applies `inner`, then `outer`. */
export const multiply = (outer: Matrix, inner: Matrix): Matrix => ({
  a: outer.a * inner.a + outer.c * inner.b,
  b: outer.b * inner.a + outer.d * inner.b,
  c: outer.a * inner.c + outer.c * inner.d,
  d: outer.b * inner.c + outer.d * inner.d,
  e: outer.a * inner.e + outer.c * inner.f + outer.e,
  f: outer.b * inner.e + outer.d * inner.f + outer.f,
})

export const apply = (m: Matrix, p: Point): Point => ({
  x: m.a * p.x + m.c * p.y + m.e,
  y: m.b * p.x + m.d * p.y + m.f,
})

/** The factor by which the map enlarges areas; negative when it mirrors. */
export const determinant = (m: Matrix): number => m.a * m.d - m.b * m.c

/** The factor by which the map enlarges lengths: the geometric mean over all directions. */
export const meanScale = (m: Matrix): number => Math.sqrt(Math.abs(determinant(m)))

/** Whether the map keeps circles circular, up to a relative error of `tolerance`. */
export function isSimilarity(m: Matrix, tolerance = 1e-9): boolean {
  const size = Math.hypot(m.a, m.b, m.c, m.d)
  const direct = Math.hypot(m.a - m.d, m.b + m.c)
  const mirrored = Math.hypot(m.a + m.d, m.b - m.c)
  return Math.min(direct, mirrored) <= tolerance * size
}

/** The map back; of a map that is not flat (its determinant is not 0). */
export function inverse(m: Matrix): Matrix {
  const area = determinant(m)
  return {
    a: m.d / area,
    b: -m.b / area,
    c: -m.c / area,
    d: m.a / area,
    e: (m.c * m.f - m.d * m.e) / area,
    f: (m.b * m.e - m.a * m.f) / area,
  }
}
