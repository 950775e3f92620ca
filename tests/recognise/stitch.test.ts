import { describe, expect, it } from 'vitest'
import type { Contour } from '../../src/geometry/outline.js'
import { stitched } from '../../src/recognise/stitch.js'
import { paint, rectangle, shape } from './built.js'

/** Invented: outlines as CAD programs write them, edge by edge, in any order and direction. */
const line = (x1: number, y1: number, x2: number, y2: number): Contour => ({
  start: { x: x1, y: y1 },
  segments: [{ kind: 'line', to: { x: x2, y: y2 } }],
  closed: false,
})
const stroke = (width: number) =>
  ({ ...paint('#000000'), width, linecap: 'butt', linejoin: 'miter', dashed: false }) as const
const edge = (contour: Contour, width = 0.1) => ({
  shape: shape([contour], { fill: undefined, stroke: stroke(width) }),
  rest: null,
})

const SQUARE = [line(0, 0, 10, 0), line(10, 10, 10, 0), line(10, 10, 0, 10), line(0, 0, 0, 10)]

describe('edges that meet all the way round', () => {
  it('become one closed outline, whatever way each was drawn', () => {
    const joined = stitched(SQUARE.map((c) => edge(c)))
    expect(joined).toHaveLength(1)
    const [contour] = joined[0].shape.contours
    expect(contour.closed).toBe(true)
    expect(contour.segments.map((s) => s.to)).toEqual([
      { x: 10, y: 0 },
      { x: 10, y: 10 },
      { x: 0, y: 10 },
      { x: 0, y: 0 },
    ])
    expect(joined[0].shape.box).toEqual({ x: 0, y: 0, width: 10, height: 10 })
  })
  it('keep their curves when they are walked backwards', () => {
    const curve: Contour = {
      start: { x: 10, y: 10 },
      segments: [{ kind: 'cubic', c1: { x: 14, y: 7 }, c2: { x: 14, y: 3 }, to: { x: 10, y: 0 } }],
      closed: false,
    }
    const [{ shape: joined }] = stitched([SQUARE[0], curve, SQUARE[2], SQUARE[3]].map((c) => edge(c)))
    expect(joined.contours[0].segments[1]).toEqual({
      kind: 'cubic',
      c1: { x: 14, y: 3 },
      c2: { x: 14, y: 7 },
      to: { x: 10, y: 10 },
    })
  })
  it('are left as they are when something leaves a choice', () => {
    expect(stitched(SQUARE.slice(1).map((c) => edge(c)))).toHaveLength(3)
    expect(stitched([...SQUARE, line(0, 0, -5, -5)].map((c) => edge(c)))).toHaveLength(5)
    expect(stitched(SQUARE.map((c, i) => edge(c, i ? 0.1 : 0.5)))).toHaveLength(4)
  })
  it('are not joined with what is filled or closed already', () => {
    const filled = SQUARE.map((c) => ({ shape: shape([c]), rest: null }))
    expect(stitched(filled)).toHaveLength(4)
    expect(
      stitched([{ shape: shape([rectangle(0, 0, 5, 5)], { fill: undefined, stroke: stroke(0.1) }), rest: null }]),
    ).toHaveLength(1)
  })
})
