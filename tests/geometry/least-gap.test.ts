import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { distanceBetween } from '../../src/geometry/gap.js'
import { leastGap } from '../../src/geometry/least-gap.js'
import type { Polyline } from '../../src/geometry/outline.js'

const square = (x: number, y: number, size: number): Polyline => [
  { x, y },
  { x: x + size, y },
  { x: x + size, y: y + size },
  { x, y: y + size },
]

describe('the least gap between many outlines and a few', () => {
  it('is that of the outline next to the frame (elementary geometry)', () => {
    const frame = [square(0, 0, 100)]
    expect(leastGap([square(40, 40, 10), square(85, 50, 10), square(20, 70, 10)], frame)).toBe(5)
    expect(leastGap([square(-8, 40, 3), square(50, 50, 10)], frame)).toBe(5)
    expect(leastGap([square(95, 50, 10)], frame)).toBe(0)
  })

  it('is infinite for nothing', () => {
    expect(leastGap([], [square(0, 0, 1)])).toBe(Infinity)
    expect(leastGap([square(0, 0, 1)], [])).toBe(Infinity)
  })

  it('is what comparing all with all finds', () => {
    const polygon = fc.array(fc.record({ x: fc.integer({ min: 0, max: 90 }), y: fc.integer({ min: 0, max: 90 }) }), {
      minLength: 1,
      maxLength: 12,
    })
    const small = fc
      .tuple(polygon, fc.integer({ min: 0, max: 300 }))
      .map(([points, shift]) => points.map(({ x, y }) => ({ x: x / 10 + shift, y: y / 10 })))
    fc.assert(
      fc.property(fc.array(small, { maxLength: 12 }), fc.array(polygon, { maxLength: 3 }), (many, few) => {
        expect(leastGap(many, few)).toBe(distanceBetween(many, few).distance)
      }),
      { numRuns: 300, seed: 7 },
    )
  })
})
