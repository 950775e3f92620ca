import type { Shape } from '../drawing/drawing.js'
import type { Box } from '../geometry/box.js'
import { boxOfContour } from '../geometry/curve.js'

const known = new WeakMap<Shape, readonly Box[]>()

/** The exact box of each contour of a shape, in millimetres; worked out once, as a shape stays as it is. */
export function boxesOfContours(shape: Shape): readonly Box[] {
  if (shape.contours.length === 1) return [shape.box]
  const before = known.get(shape)
  if (before) return before
  const boxes = shape.contours.map(boxOfContour)
  known.set(shape, boxes)
  return boxes
}
