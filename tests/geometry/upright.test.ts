import { describe, expect, it } from 'vitest'
import { boxOfPoints } from '../../src/geometry/box.js'
import type { Point } from '../../src/geometry/point.js'
import { cornersOf, uprightOf } from '../../src/geometry/upright.js'

/** A turn by an angle whose cosine and sine are exact: the triangle of sides 3, 4 and 5. Its other corners are worked by hand. */
const [COS, SIN] = [4 / 5, 3 / 5]
const DEGREES = (Math.atan2(3, 4) * 180) / Math.PI

const turned = ({ x, y }: Point): Point => ({ x: COS * x - SIN * y, y: SIN * x + COS * y })
const rectangle = (width: number, height: number): Point[] => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
]
const upright = (outline: Point[]) => uprightOf(outline, boxOfPoints(outline) ?? { x: 0, y: 0, width: 0, height: 0 })

describe('a shape put upright', () => {
  it('has the size of its sides, not of the box round it, and its own corners', () => {
    const found = upright(rectangle(200, 50).map(turned))
    expect(found).toMatchObject({ isSided: true })
    expect(found.rotation).toBeCloseTo(DEGREES, 9)
    expect(found.box.width).toBeCloseTo(200, 9)
    expect(found.box.height).toBeCloseTo(50, 9)
    const corners = cornersOf(found)
    for (const [i, [x, y]] of [
      [0, 0],
      [160, 120],
      [130, 160],
      [-30, 40],
    ].entries()) {
      expect(corners[i].x).toBeCloseTo(x, 9)
      expect(corners[i].y).toBeCloseTo(y, 9)
    }
  })

  it('is left as it is when it is upright already', () => {
    const box = { x: 0, y: 0, width: 200, height: 50 }
    expect(uprightOf(rectangle(200, 50), box)).toMatchObject({ rotation: 0, isSided: true, box })
  })

  it('lies within an eighth of a turn, whichever side is the longer', () => {
    for (const [width, height] of [
      [200, 50],
      [50, 200],
    ]) {
      const found = upright(rectangle(width, height).map(turned))
      expect(found.rotation).toBeCloseTo(DEGREES, 9)
      expect(found.box.width).toBeCloseTo(width, 9)
    }
  })

  it('has no sides when it is round, a triangle or a slanted plate', () => {
    const round = Array.from({ length: 60 }, (_, i) => ({ x: Math.cos(i / 9.55), y: Math.sin(i / 9.55) }))
    const triangle = [
      { x: 0, y: 0 },
      { x: 10, y: 3 },
      { x: 2, y: 12 },
    ]
    const slanted = rectangle(100, 90).map(({ x, y }) => turned({ x: x + 0.3 * y, y }))
    for (const outline of [round, triangle, slanted])
      expect(upright(outline)).toMatchObject({ rotation: 0, isSided: false, box: boxOfPoints(outline) })
  })
})
