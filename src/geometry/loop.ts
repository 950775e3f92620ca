import type { Box } from './box.js'
import type { Polyline } from './outline.js'

/**
 * A closed outline as x, y, x, y, … in millimetres; its last corner is joined to the first. The same as a polyline, in a fraction
 * of its memory: for what looks at every corner of a drawing.
 */
export type Loop = Float64Array

const loops = new WeakMap<Polyline, Loop>()
const polylines = new WeakMap<Loop, Polyline>()

/** The corners of an outline as numbers; made once, as an outline stays as it is. */
export function loopOf(polyline: Polyline): Loop {
  const before = loops.get(polyline)
  if (before?.length === 2 * polyline.length) return before
  const loop = new Float64Array(2 * polyline.length)
  for (let i = 0; i < polyline.length; i++) {
    loop[2 * i] = polyline[i].x
    loop[2 * i + 1] = polyline[i].y
  }
  loops.set(polyline, loop)
  return loop
}

export function pointsOf(loop: Loop): Polyline {
  const points: Polyline = []
  for (let i = 0; i < loop.length; i += 2) points.push({ x: loop[i], y: loop[i + 1] })
  return points
}

/** The same loop as points; made once. */
export function polylineOf(loop: Loop): Polyline {
  const before = polylines.get(loop)
  if (before) return before
  const polyline = pointsOf(loop)
  polylines.set(loop, polyline)
  loops.set(polyline, loop)
  return polyline
}

/** The smallest box round all corners of all loops; undefined for none. */
export function boxOfLoops(all: readonly Loop[]): Box | undefined {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const loop of all)
    for (let i = 0; i < loop.length; i += 2) {
      const x = loop[i]
      const y = loop[i + 1]
      if (x < left) left = x
      if (x > right) right = x
      if (y < top) top = y
      if (y > bottom) bottom = y
    }
  return left <= right ? { x: left, y: top, width: right - left, height: bottom - top } : undefined
}

/** Area by the shoelace formula, whichever way round the corners run. */
export function areaOfLoop(loop: Loop): number {
  const [originX, originY] = loop
  let twice = 0
  let ax = loop[loop.length - 2] - originX
  let ay = loop[loop.length - 1] - originY
  for (let i = 0; i < loop.length; i += 2) {
    const bx = loop[i] - originX
    const by = loop[i + 1] - originY
    twice += ax * by - bx * ay
    ax = bx
    ay = by
  }
  return Math.abs(twice / 2)
}

/** How often a loop winds round a point, and thereby whether it holds it: see `contains` of polyline.ts. */
export function windsRound(loop: Loop, x: number, y: number): boolean {
  let winding = 0
  let ax = loop[loop.length - 2]
  let ay = loop[loop.length - 1]
  for (let i = 0; i < loop.length; i += 2) {
    const bx = loop[i]
    const by = loop[i + 1]
    if (ay <= y !== by <= y) {
      const side = (bx - ax) * (y - ay) - (x - ax) * (by - ay)
      const downwards = by > ay
      if (side < 0 === downwards && side !== 0) winding += downwards ? 1 : -1
    }
    ax = bx
    ay = by
  }
  return winding !== 0
}
