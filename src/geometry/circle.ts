import type { Point } from './point.js'

/**
 * Circles round points and through points. Coordinates and radii in millimetres.
 * Least enclosing circle: E. Welzl, "Smallest enclosing disks (balls and ellipsoids)", in: New Results and New Trends in
 * Computer Science, LNCS 555, 1991; the incremental form, expected linear time when the points come in no particular order.
 * Fit: G. Taubin, "Estimation of planar curves, surfaces, and nonplanar space curves defined by implicit equations", IEEE
 * Trans. PAMI 13, 1991, solved by Newton's method as in N. Chernov, "Circular and Linear Regression", 2010.
 */
export interface Circle {
  x: number
  y: number
  radius: number
}

/** Relative slack when asking whether a point lies in a circle that it may itself have defined. */
const INSIDE_SLACK = 1e-12

/** Multiplier and increment of a full-period linear congruential generator modulo 2^32 (Knuth, TAOCP 2, 3.3.4). */
const SHUFFLE_MULTIPLIER = 1664525
const SHUFFLE_INCREMENT = 1013904223

const MOST_NEWTON_STEPS = 50
const NEWTON_TOLERANCE = 1e-14

/** The smallest circle that holds all points; undefined for none. Deterministic: the shuffle has a fixed seed. */
export function leastEnclosingCircle(points: readonly Point[]): Circle | undefined {
  if (points.length === 0) return undefined
  const p = shuffled(points)
  let circle: Circle = { ...p[0], radius: 0 }
  for (let i = 1; i < p.length; i++) {
    if (holds(circle, p[i])) continue
    circle = { ...p[i], radius: 0 }
    for (let j = 0; j < i; j++) {
      if (holds(circle, p[j])) continue
      circle = onDiameter(p[i], p[j])
      for (let k = 0; k < j; k++) if (!holds(circle, p[k])) circle = throughThree(p[i], p[j], p[k])
    }
  }
  return circle
}

/** The circle nearest to the points (at least three, not on one line) in Taubin's sense; undefined when there is none. */
export function fitCircle(points: readonly Point[]): Circle | undefined {
  const n = points.length
  if (n < 3) return undefined
  const meanX = points.reduce((sum, q) => sum + q.x, 0) / n
  const meanY = points.reduce((sum, q) => sum + q.y, 0) / n
  let xx = 0
  let yy = 0
  let xy = 0
  let xz = 0
  let yz = 0
  let zz = 0
  for (const q of points) {
    const x = q.x - meanX
    const y = q.y - meanY
    const z = x * x + y * y
    xx += (x * x) / n
    yy += (y * y) / n
    xy += (x * y) / n
    xz += (x * z) / n
    yz += (y * z) / n
    zz += (z * z) / n
  }
  const z = xx + yy
  const covariance = xx * yy - xy * xy
  const varianceOfZ = zz - z * z
  const a3 = 4 * z
  const a2 = -3 * z * z - zz
  const a1 = varianceOfZ * z + 4 * covariance * z - xz * xz - yz * yz
  const a0 = xz * (xz * yy - yz * xy) + yz * (yz * xx - xz * xy) - varianceOfZ * covariance
  const eta = smallestRoot(a0, a1, a2, a3)
  const determinant = eta * eta - eta * z + covariance
  const centreX = (xz * (yy - eta) - yz * xy) / determinant / 2
  const centreY = (yz * (xx - eta) - xz * xy) / determinant / 2
  const radius = Math.sqrt(centreX * centreX + centreY * centreY + z)
  return Number.isFinite(radius) && radius > 0 ? { x: centreX + meanX, y: centreY + meanY, radius } : undefined
}

/** The root of a0 + a1 η + a2 η² + a3 η³ next to zero, by Newton's method from zero. */
function smallestRoot(a0: number, a1: number, a2: number, a3: number): number {
  let root = 0
  let value = Infinity
  for (let step = 0; step < MOST_NEWTON_STEPS; step++) {
    const next = a0 + root * (a1 + root * (a2 + root * a3))
    if (Math.abs(next) > Math.abs(value)) return 0
    value = next
    const slope = a1 + root * (2 * a2 + 3 * root * a3)
    const better = root - value / slope
    if (!Number.isFinite(better)) return root
    if (Math.abs(better - root) <= NEWTON_TOLERANCE * Math.abs(better)) return better
    root = better
  }
  return root
}

function holds(c: Circle, p: Point): boolean {
  const x = p.x - c.x
  const y = p.y - c.y
  const reach = c.radius + INSIDE_SLACK * (1 + c.radius)
  return x * x + y * y <= reach * reach
}

const onDiameter = (a: Point, b: Point): Circle => ({
  x: (a.x + b.x) / 2,
  y: (a.y + b.y) / 2,
  radius: Math.hypot(a.x - b.x, a.y - b.y) / 2,
})

/** The circle through three points, or on the longest side when they lie on one line. */
function throughThree(a: Point, b: Point, c: Point): Circle {
  const bx = b.x - a.x
  const by = b.y - a.y
  const cx = c.x - a.x
  const cy = c.y - a.y
  const twice = 2 * (bx * cy - by * cx)
  const x = (cy * (bx * bx + by * by) - by * (cx * cx + cy * cy)) / twice
  const y = (bx * (cx * cx + cy * cy) - cx * (bx * bx + by * by)) / twice
  const radius = Math.hypot(x, y)
  if (Number.isFinite(radius)) return { x: a.x + x, y: a.y + y, radius }
  const sides = [onDiameter(a, b), onDiameter(b, c), onDiameter(c, a)]
  return sides.reduce((longest, side) => (side.radius > longest.radius ? side : longest))
}

/** Fisher and Yates's shuffle with a fixed linear congruential sequence: no order of the input makes it slow. */
function shuffled(points: readonly Point[]): Point[] {
  const result = [...points]
  let state = points.length >>> 0
  for (let i = result.length - 1; i > 0; i--) {
    state = (Math.imul(state, SHUFFLE_MULTIPLIER) + SHUFFLE_INCREMENT) >>> 0
    const j = Math.floor((state / 2 ** 32) * (i + 1))
    ;[result[i], result[j]] = [result[j], result[i]]
  }
  return result
}
