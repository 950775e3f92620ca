import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Polyline } from '../../src/geometry/outline.js'
import { distanceBetween } from '../../src/geometry/gap.js'
import { contains, distanceToPoint, signedArea } from '../../src/geometry/polyline.js'

const square = (x: number, y: number, size: number): Polyline => [
  { x, y },
  { x: x + size, y },
  { x: x + size, y: y + size },
  { x, y: y + size },
]

describe('polylines', () => {
  it('has the area of a square, clockwise positive (elementary geometry)', () => {
    expect(signedArea(square(100, 100, 3))).toBe(9)
    expect(signedArea(square(0, 0, 3).reverse())).toBe(-9)
  })

  it('fills the five-pointed star of SVG 1.1, 11.3 by rule: the middle only with nonzero', () => {
    // Published example: SVG 1.1 Second Edition, 11.3 "Fill Properties", figure of the fill rules (pentagram).
    const star = [0, 2, 4, 1, 3].map((k) => {
      const angle = (2 * Math.PI * k) / 5
      return { x: Math.sin(angle), y: -Math.cos(angle) }
    })
    expect(contains([star], { x: 0, y: 0 }, 'nonzero')).toBe(true)
    expect(contains([star], { x: 0, y: 0 }, 'evenodd')).toBe(false)
    expect(contains([star], { x: 0, y: -0.8 }, 'evenodd')).toBe(true)
    expect(contains([star], { x: 0, y: 0.9 }, 'nonzero')).toBe(false)
  })

  it('respects holes that run the other way round', () => {
    const ring = [square(0, 0, 10), square(3, 3, 4).reverse()]
    expect(contains(ring, { x: 5, y: 5 }, 'nonzero')).toBe(false)
    expect(contains(ring, { x: 1, y: 5 }, 'nonzero')).toBe(true)
  })

  it('measures squares apart by Pythagoras', () => {
    const gap = distanceBetween([square(0, 0, 1)], [square(4, 5, 2)])
    expect(gap).toEqual({ distance: 5, from: { x: 1, y: 1 }, to: { x: 4, y: 5 } })
    expect(distanceToPoint([square(0, 0, 10)], { x: 5, y: 4 })).toBe(4)
  })

  it('is zero where outlines cross, though no corner lies on the other', () => {
    const upright = [{ x: 0, y: -5 }, { x: 1, y: -5 }, { x: 1, y: 5 }, { x: 0, y: 5 }] // prettier-ignore
    const lying = [{ x: -5, y: 0 }, { x: 5, y: 0 }, { x: 5, y: 1 }, { x: -5, y: 1 }] // prettier-ignore
    expect(distanceBetween([upright], [lying]).distance).toBe(0)
  })

  it('agrees with comparing every edge with every point, for any polygons', () => {
    const polygon = fc.array(fc.record({ x: fc.integer({ min: 0, max: 40 }), y: fc.integer({ min: 0, max: 40 }) }), {
      minLength: 1,
      maxLength: 60,
    })
    const shift = (p: Polyline) => p.map(({ x, y }) => ({ x: x + 60, y }))
    fc.assert(
      fc.property(polygon, polygon, (a, b) => {
        const far = shift(b)
        const plain = Math.min(...far.map((p) => distanceToPoint([a], p)), ...a.map((p) => distanceToPoint([far], p)))
        const gap = distanceBetween([a], [far])
        expect(gap.distance).toBeCloseTo(plain, 9)
        expect(Math.hypot(gap.to.x - gap.from.x, gap.to.y - gap.from.y)).toBe(gap.distance)
      }),
      { numRuns: 60, seed: 7 },
    )
  })

  it('is symmetric and infinite for nothing', () => {
    expect(distanceBetween([square(0, 0, 1)], [square(3, 0, 1)]).distance).toBe(2)
    expect(distanceBetween([square(3, 0, 1)], [square(0, 0, 1)]).distance).toBe(2)
    expect(distanceBetween([], [square(0, 0, 1)]).distance).toBe(Infinity)
  })
})
