import { describe, expect, it } from 'vitest'
import type { Shape, Stroke } from '../../src/drawing/drawing.js'
import { dotsOf, withoutDots } from '../../src/recognise/dots.js'
import { circleShape, cubicCircle, dotPlaces, polygon, rectangle, shapeOf, twoHalves, USUAL } from './dotted.js'

// All sizes here are invented; what counts as the diameter is the project's own definition (least enclosing circle, half a
// painted stroke on each side included).

const stroke = (width: number, linecap: Stroke['linecap'] = 'butt'): Stroke => ({
  opacity: 1,
  written: '#000',
  width,
  linecap,
  linejoin: 'miter',
  dashed: false,
})
const point = (x: number, y: number, to = { x, y }) => ({
  start: { x, y },
  segments: [{ kind: 'line' as const, to }],
  closed: false,
})
const one = (shape: Shape) => {
  const { dots } = dotsOf([shape])
  expect(dots).toHaveLength(1)
  return dots[0]
}

describe('a dot of any construction', () => {
  it.each([
    ['four cubics', cubicCircle(30, 20, 1.55), 1.55],
    ['a polygon of eight corners', polygon(30, 20, 1.55, 8), 1.55],
    ['a polygon of twelve corners', polygon(30, 20, 1.55, 12), 1.55],
    ['a polygon of 64 corners', polygon(30, 20, 1.55, 64), 1.55],
    ['a squashed circle', cubicCircle(30, 20, 1.5, 1.1), 1.65],
  ])('%s', (_, contour, diameter) => {
    const dot = one(shapeOf([contour]))
    expect(dot.x).toBeCloseTo(30, 3)
    expect(dot.y).toBeCloseTo(20, 3)
    expect(dot.diameter).toBeCloseTo(diameter, 3)
  })

  // The largest distance of this cubic half circle from the circle is under 2 % of the radius (computed here, not published).
  it('two cubic half circles', () => {
    const dot = one(shapeOf([twoHalves(30, 20, 1.55)]))
    expect(dot.x).toBeCloseTo(30, 2)
    expect(dot.y).toBeCloseTo(20, 2)
    expect(dot.diameter / 1.55).toBeGreaterThan(1)
    expect(dot.diameter / 1.55).toBeLessThan(1.02)
  })

  it('with a stroke, which is counted half on each side, filled or not', () => {
    expect(one(shapeOf([cubicCircle(0, 0, 1.4)], { stroke: stroke(0.15) })).diameter).toBeCloseTo(1.55, 3)
    expect(one(shapeOf([cubicCircle(0, 0, 1.4)], { stroke: stroke(0.15), fill: undefined })).diameter).toBeCloseTo(
      1.55,
      3,
    )
    expect(one({ ...circleShape(0, 0, 1.4), stroke: stroke(0.15) }).diameter).toBeCloseTo(1.55, 12)
  })

  it('a stroke of no length with round caps, but not with butt caps and not a mere start', () => {
    const bare = { fill: undefined, stroke: stroke(1.55, 'round') }
    expect(one(shapeOf([point(5, 6)], bare))).toMatchObject({ x: 5, y: 6, diameter: 1.55 })
    expect(dotsOf([shapeOf([point(5, 6)], { ...bare, stroke: stroke(1.55) })]).dots).toHaveLength(0)
    expect(dotsOf([shapeOf([{ start: { x: 5, y: 6 }, segments: [], closed: false }], bare)]).dots).toHaveLength(0)
    expect(dotsOf([shapeOf([point(5, 6, { x: 9, y: 6 })], bare)]).dots).toHaveLength(0)
  })

  it('drawn twice, in rings or with a smaller one inside counts once, by its outer edge', () => {
    const shapes = [
      circleShape(0, 0, 1.5),
      circleShape(0, 0, 1.55),
      circleShape(0.1, 0, 0.8),
      circleShape(0.001, 0, 1.55),
    ]
    const dot = one(shapeOf(shapes.flatMap((s) => s.contours)))
    expect(dot.diameter).toBeCloseTo(1.55, 3)
    expect(dotsOf(shapes).dots).toHaveLength(1)
    expect(withoutDots(shapes, dotsOf(shapes).dots)).toHaveLength(0)
  })
})

describe('no dot', () => {
  it.each([
    ['a square', rectangle(0, 0, 1.5, 1.5)],
    ['a hexagon', polygon(0, 0, 1.5, 6)],
    ['an ellipse', cubicCircle(0, 0, 1.2, 1.25)],
    ['a large circle', cubicCircle(0, 0, 5)],
    ['a speck', cubicCircle(0, 0, 0.2)],
    [
      'an open arc',
      { ...cubicCircle(0, 0, 1.5), segments: cubicCircle(0, 0, 1.5).segments.slice(0, 3), closed: false },
    ],
  ])('%s', (_, contour) => {
    expect(dotsOf([shapeOf([contour], { fill: undefined, stroke: stroke(0.1) })]).dots).toHaveLength(0)
  })

  it('a round counter of a character', () => {
    const letter = shapeOf([rectangle(0, 0, 8, 8), cubicCircle(4, 4, 3)], { fillRule: 'evenodd' })
    expect(dotsOf([letter]).dots).toHaveLength(0)
    expect(dotsOf([letter]).rest).toEqual([letter])
  })
})

describe('what is left', () => {
  const cells = '⠗⠕⠕⠍'

  it('keeps the letters of a path that holds letters and dots', () => {
    const letters = [rectangle(20, 5, 10, 15), cubicCircle(60, 20, 2)]
    const path = shapeOf([...letters, ...dotPlaces([cells], USUAL).map(({ x, y }) => cubicCircle(x, y, 1.55))])
    const { dots, rest } = dotsOf([path])
    expect(dots).toHaveLength(dotPlaces([cells], USUAL).length + 1)
    expect(rest).toHaveLength(1)
    expect(rest[0].contours).toEqual(letters)
    expect(rest[0].box.y).toBeCloseTo(5, 9)
    expect(rest[0].box.x + rest[0].box.width).toBeCloseTo(61, 9)
  })

  it('keeps dots that stand on no lattice of braille', () => {
    const shapes = [circleShape(0, 0, 2), circleShape(30, 0, 2), circleShape(0, 50, 4), circleShape(8, 50, 4)]
    expect(dotsOf(shapes).rest).toEqual(shapes)
  })
})
