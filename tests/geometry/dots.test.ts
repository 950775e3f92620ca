import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxed, nearestTo } from '../../src/geometry/dots.js'
import { contains, distanceToPoint } from '../../src/geometry/polyline.js'

/** The search with bounds against looking at every point and every edge. Shapes and sizes are invented. */

const square = (x: number, y: number, size: number) => [
  { x, y },
  { x: x + size, y },
  { x: x + size, y: y + size },
  { x, y: y + size },
]
const coordinate = fc.double({ min: -50, max: 50, noNaN: true })
const point = fc.record({ x: coordinate, y: coordinate })
const outline = fc.oneof(
  fc.array(point, { minLength: 3, maxLength: 7 }),
  fc
    .tuple(coordinate, coordinate, fc.double({ min: 0.1, max: 40, noNaN: true }))
    .map(([x, y, size]) => square(x, y, size)),
)
const MUCH = 1_000_000

describe('the point that is nearest to filled outlines', () => {
  it('is that which looking at everything finds', () => {
    fc.assert(
      fc.property(
        fc.array(outline, { minLength: 1, maxLength: 6 }),
        fc.array(point, { minLength: 1, maxLength: 12 }),
        (outlines, points) => {
          const distances = points.map((p) => (contains(outlines, p, 'evenodd') ? 0 : distanceToPoint(outlines, p)))
          const found = nearestTo(boxed(outlines), points, MUCH)
          if (found === undefined || found === 'too-much') throw new Error('nothing found')
          expect(found.distance).toBeCloseTo(Math.min(...distances), 9)
          expect(distances[points.indexOf(found.point)]).toBeCloseTo(found.distance, 9)
        },
      ),
      { numRuns: 300 },
    )
  })

  it('is no part of a hole', () => {
    const ring = boxed([square(0, 0, 10), square(2, 2, 6)])
    expect(nearestTo(ring, [{ x: 5, y: 5 }], MUCH)).toEqual({ distance: 3, point: { x: 5, y: 5 } })
    expect(nearestTo(ring, [{ x: 1, y: 5 }], MUCH)).toMatchObject({ distance: 0 })
  })

  it('is none without outlines or points, and is not looked for when there are too many', () => {
    expect(nearestTo(boxed([[]]), [{ x: 0, y: 0 }], MUCH)).toBeUndefined()
    expect(nearestTo(boxed([square(0, 0, 1)]), [], MUCH)).toBeUndefined()
    expect(nearestTo(boxed([square(0, 0, 1)]), [{ x: 5, y: 5 }], 3)).toBe('too-much')
  })
})
