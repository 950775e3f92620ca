import type { Point } from './point.js'

/** An axis-parallel box: its left and top edge and its size, in millimetres. */
export interface Box {
  x: number
  y: number
  width: number
  height: number
}

/** The smallest box round all points; undefined for no points. */
export function boxOfPoints(points: Iterable<Point>): Box | undefined {
  let left = Infinity
  let top = Infinity
  let right = -Infinity
  let bottom = -Infinity
  for (const { x, y } of points) {
    if (x < left) left = x
    if (x > right) right = x
    if (y < top) top = y
    if (y > bottom) bottom = y
  }
  return left <= right ? { x: left, y: top, width: right - left, height: bottom - top } : undefined
}

/** The smallest box round all points of all outlines; undefined for no points. */
export function boxOfOutlines(outlines: readonly (readonly Point[])[]): Box | undefined {
  let left = Infinity
  let top = Infinity
  let right = -Infinity
  let bottom = -Infinity
  for (const outline of outlines)
    for (const { x, y } of outline) {
      if (x < left) left = x
      if (x > right) right = x
      if (y < top) top = y
      if (y > bottom) bottom = y
    }
  return left <= right ? { x: left, y: top, width: right - left, height: bottom - top } : undefined
}

/** The smallest box round all boxes; undefined for none. */
export function unionOfBoxes(boxes: Iterable<Box | undefined>): Box | undefined {
  let left = Infinity
  let top = Infinity
  let right = -Infinity
  let bottom = -Infinity
  for (const b of boxes) {
    if (!b) continue
    if (b.x < left) left = b.x
    if (b.y < top) top = b.y
    if (b.x + b.width > right) right = b.x + b.width
    if (b.y + b.height > bottom) bottom = b.y + b.height
  }
  return left <= right ? { x: left, y: top, width: right - left, height: bottom - top } : undefined
}

export const centreOfBox = (b: Box): Point => ({ x: b.x + b.width / 2, y: b.y + b.height / 2 })

/** Whether `inner` lies within `outer`, give or take `slack` millimetres. */
export const boxContains = (outer: Box, inner: Box, slack = 0): boolean =>
  inner.x >= outer.x - slack &&
  inner.y >= outer.y - slack &&
  inner.x + inner.width <= outer.x + outer.width + slack &&
  inner.y + inner.height <= outer.y + outer.height + slack

export const boxesOverlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height
