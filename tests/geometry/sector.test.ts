import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { largestSquareBeside, type Sector } from '../../src/geometry/sector.js'

const points = ({ hinge, radius, from, to }: Sector, steps = 60): { x: number; y: number }[] =>
  Array.from({ length: steps + 1 }, (_, i) => ((from + (i * (to - from)) / steps) * Math.PI) / 180).flatMap((angle) =>
    Array.from({ length: steps + 1 }, (_, k) => ({
      x: hinge.x + ((radius * k) / steps) * Math.cos(angle),
      y: hinge.y + ((radius * k) / steps) * Math.sin(angle),
    })),
  )

/** Sampled points that lie inside the square of a side, which stands on y = 0 with its middle at the origin. */
const inside = (sector: Sector, side: number) =>
  points(sector).filter(({ x, y }) => Math.abs(x) < side / 2 - 1e-6 && y > 1e-6 && y < side - 1e-6)

describe('the largest square beside what a leaf sweeps', () => {
  // 2010 ADA Standards 703.4.2: 18 inches, so 9 inches from the latch edge of a leaf in one plane with the wall
  test.each([50, 228.6, 400])('a leaf whose latch edge is %d mm from the middle leaves twice as much', (near) => {
    const sector = { hinge: { x: -near - 915, y: 0 }, radius: 915, from: 0, to: 45 }
    expect(largestSquareBeside(sector)).toBeCloseTo(2 * near, 9)
  })

  test('a leaf that turns away from the square does so from its hinge on', () => {
    expect(largestSquareBeside({ hinge: { x: 300, y: 0 }, radius: 915, from: 0, to: 45 })).toBeCloseTo(600, 9)
  })

  // By hand: the closed leaf stands on x = 500, from y = 100 to 1000, and opens about y = 100 to 45 degrees; its outer end is then at
  // (500 - 900 / √2, 100 + 900 / √2) = (-136.4, 736.4). The leaf then runs along x + y = 600, which the squares first reach at their
  // corner (s/2, s) where 3s/2 = 600.
  test('a leaf in the wall beyond a corner, hinged at the corner', () => {
    expect(largestSquareBeside({ hinge: { x: 500, y: 100 }, radius: 900, from: 90, to: 135 })).toBeCloseTo(400, 9)
  })

  // By hand: hinged at y = 1000 on x = 500, the leaf of 900 reaches down to y = 100 when closed and turns about the far end.
  // The squares first reach the arc at their corner (x, 2x), where (x - 500)² + (2x - 1000)² = 900², so x = 500 - 900 / √5.
  test('a leaf in the wall beyond a corner, hinged at its far end', () => {
    const side = 2 * (500 - 900 / Math.sqrt(5))
    expect(largestSquareBeside({ hinge: { x: 500, y: 1000 }, radius: 900, from: 225, to: 270 })).toBeCloseTo(side, 9)
  })

  test('is none where the leaf lies over the middle', () => {
    expect(largestSquareBeside({ hinge: { x: -100, y: 0 }, radius: 915, from: 0, to: 45 })).toBe(0)
  })

  test('holds no point of the sector, and the next larger one does', () => {
    const doors = fc.record({
      x: fc.integer({ min: -1500, max: 1500 }),
      y: fc.integer({ min: 0, max: 1500 }),
      radius: fc.integer({ min: 300, max: 1200 }),
      from: fc.integer({ min: 0, max: 135 }),
    })
    fc.assert(
      fc.property(doors, ({ x, y, radius, from }) => {
        const sector = { hinge: { x, y }, radius, from, to: from + 45 }
        const side = largestSquareBeside(sector)
        expect(inside(sector, side)).toEqual([])
        // Samples lie up to a step of the leaf apart.
        const step = radius / 30
        expect(inside(sector, side + 4 * step).length).toBeGreaterThan(0)
      }),
      { numRuns: 100, seed: 7 },
    )
  })
})
