import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxOfContour, flatten, pointOfCubic } from '../../src/geometry/curve.js'
import type { Contour } from '../../src/geometry/outline.js'
import { distanceToPoint, signedArea } from '../../src/geometry/polyline.js'

const cubic = (...v: number[]): Contour => ({
  start: { x: v[0], y: v[1] },
  segments: [{ kind: 'cubic', c1: { x: v[2], y: v[3] }, c2: { x: v[4], y: v[5] }, to: { x: v[6], y: v[7] } }],
  closed: false,
})

describe('curves', () => {
  it('reaches three quarters of the height of its controls (calculus: B(1/2) of 0, h, h, 0)', () => {
    expect(boxOfContour(cubic(0, 0, 0, 10, 10, 10, 10, 0))).toEqual({ x: 0, y: 0, width: 10, height: 7.5 })
  })

  it('finds the extreme of a cubic that is really a quadratic', () => {
    // Degree elevation of the quadratic 0, 6, 0: its top is 3 at the middle.
    const box = boxOfContour(cubic(0, 0, 1, 4, 2, 4, 3, 0))
    expect(box.height).toBeCloseTo(3, 12)
  })

  it('stays within the tolerance it names, for any cubic', () => {
    const n = fc.integer({ min: -50, max: 50 })
    fc.assert(
      fc.property(fc.array(n, { minLength: 8, maxLength: 8 }), (v) => {
        const contour = cubic(...v)
        const tolerance = 0.01
        const line = flatten(contour, tolerance)
        const segment = contour.segments[0]
        const box = boxOfContour(contour)
        for (let t = 0; t <= 1; t += 0.037) {
          if (segment.kind !== 'cubic') throw new Error('not a cubic')
          const p = pointOfCubic(contour.start, segment, t)
          expect(distanceToPoint([line], p)).toBeLessThanOrEqual(tolerance * 1.0001)
          expect(p.x).toBeGreaterThanOrEqual(box.x - 1e-9)
          expect(p.x).toBeLessThanOrEqual(box.x + box.width + 1e-9)
          expect(p.y).toBeGreaterThanOrEqual(box.y - 1e-9)
          expect(p.y).toBeLessThanOrEqual(box.y + box.height + 1e-9)
        }
      }),
      { numRuns: 60, seed: 3 },
    )
  })

  it('does not repeat the start of a closed contour, and drops repeated points', () => {
    const to = (x: number, y: number) => ({ kind: 'line' as const, to: { x, y } })
    const contour: Contour = { start: { x: 0, y: 0 }, segments: [to(1, 0), to(1, 0), to(1, 1), to(0, 0)], closed: true }
    const line = flatten(contour)
    expect(line).toHaveLength(3)
    expect(signedArea(line)).toBe(0.5)
    expect(flatten({ start: { x: 2, y: 2 }, segments: [to(2, 2)], closed: true })).toEqual([{ x: 2, y: 2 }])
  })
})
