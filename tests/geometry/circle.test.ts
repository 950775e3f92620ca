import { describe, expect, it } from 'vitest'
import { fitCircle, leastEnclosingCircle } from '../../src/geometry/circle.js'

const ring = (x: number, y: number, r: number, n: number, from = 0, to = 2 * Math.PI) =>
  Array.from({ length: n }, (_, i) => {
    const t = from + ((to - from) * i) / n
    return { x: x + r * Math.cos(t), y: y + r * Math.sin(t) }
  })

/** A seeded generator (Park and Miller, CACM 31, 1988: 48271 modulo 2^31 - 1). */
const seeded = (seed: number) => () => (seed = (seed * 48271) % 2147483647) / 2147483647

describe('least enclosing circle', () => {
  it('of nothing is nothing, of one point a point', () => {
    expect(leastEnclosingCircle([])).toBeUndefined()
    expect(leastEnclosingCircle([{ x: 3, y: -2 }])).toEqual({ x: 3, y: -2, radius: 0 })
  })

  // Jung's theorem, the extreme case (H. Jung 1901): an equilateral triangle of side 1 needs the radius 1/√3.
  it('of an equilateral triangle has the radius that Jung gives', () => {
    const triangle = [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 0.5, y: Math.sqrt(3) / 2 },
    ]
    expect(leastEnclosingCircle(triangle)?.radius).toBeCloseTo(1 / Math.sqrt(3), 12)
  })

  // Thales: of an obtuse or a right triangle the longest side is the diameter.
  it('of an obtuse triangle stands on the longest side, also when the points lie on one line', () => {
    expect(leastEnclosingCircle([{ x: 0, y: 0 }, { x: 10, y: 0 }, { x: 4, y: 1 }])?.radius).toBeCloseTo(5, 12) // prettier-ignore
    expect(leastEnclosingCircle([{ x: 0, y: 0 }, { x: 10, y: 10 }, { x: 4, y: 4 }])?.radius).toBeCloseTo(Math.hypot(5, 5), 12) // prettier-ignore
  })

  // Definition, against brute force over all pairs and triples (invented points).
  it('is the smallest of all circles on two or three of the points that hold the rest', () => {
    const next = seeded(7)
    for (let round = 0; round < 20; round++) {
      const points = Array.from({ length: 12 }, () => ({ x: next() * 10, y: next() * 10 }))
      const found = leastEnclosingCircle(points)
      if (!found) throw new Error('no circle')
      let smallest = Infinity
      for (const a of points)
        for (const b of points)
          for (const c of points) {
            const circle = leastEnclosingCircle([a, b, c])
            if (circle && points.every((p) => Math.hypot(p.x - circle.x, p.y - circle.y) <= circle.radius + 1e-9))
              smallest = Math.min(smallest, circle.radius)
          }
      expect(found.radius).toBeCloseTo(smallest, 9)
    }
  })
})

describe('circle fit', () => {
  it('finds the circle that points lie on, also from an arc', () => {
    for (const points of [ring(12, -7, 0.775, 24), ring(12, -7, 0.775, 12, 0, 1.5)]) {
      const fit = fitCircle(points)
      expect(fit?.x).toBeCloseTo(12, 8)
      expect(fit?.y).toBeCloseTo(-7, 8)
      expect(fit?.radius).toBeCloseTo(0.775, 8)
    }
  })

  it('has nothing to say of fewer than three points or of a line', () => {
    expect(fitCircle(ring(0, 0, 1, 2))).toBeUndefined()
    expect(fitCircle([0, 1, 2, 3].map((x) => ({ x, y: 2 * x })))).toBeUndefined()
  })

  // Chernov, Circular and Linear Regression (2010), section 5: for full circles the centre's error is sigma * sqrt(2/n).
  it('centres noisy full circles as well as theory allows', () => {
    const next = seeded(11)
    const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next())
    const [sigma, n, rounds] = [0.01, 32, 400]
    let squares = 0
    for (let round = 0; round < rounds; round++) {
      const fit = fitCircle(ring(0, 0, 1, n).map((p) => ({ x: p.x + sigma * normal(), y: p.y + sigma * normal() })))
      if (!fit) throw new Error('no fit')
      squares += fit.x ** 2
    }
    const ratio = Math.sqrt(squares / rounds) / (sigma * Math.sqrt(2 / n))
    expect(ratio).toBeGreaterThan(0.85)
    expect(ratio).toBeLessThan(1.15)
  })
})
