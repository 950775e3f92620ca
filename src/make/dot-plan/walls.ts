import Flatbush from 'flatbush'
import { boxOfPoints } from '../../geometry/box.js'
import { edgesOf, gapBetween, type Edges } from '../../geometry/gap.js'
import { loopOf } from '../../geometry/loop.js'
import type { Polyline } from '../../geometry/outline.js'
import type { Point } from '../../geometry/point.js'
import { contains } from '../../geometry/polyline.js'
import { isKnown, type Fact, type Sign } from '../../sign/sign.js'
import type { LowPart } from './head.js'

/** What stands up from the panel beside the dots: raised characters and borders. The head must not meet their walls. */

export interface Wall {
  outlines: Polyline[]
  /** Above the surface; undefined when nobody said. */
  height: number | undefined
}

/** Raised characters and borders whose outlines are known. */
export function wallsOf({ lettering, borders }: Sign): Wall[] {
  return [
    ...lettering
      .filter(({ part }) => part !== 'visual')
      .map(({ lines, relief }) => ({ outlines: lines.flatMap((line) => line.outlines), height: valueOf(relief) })),
    ...borders
      .filter(({ raised }) => !isKnown(raised) || raised.value)
      .map(({ outlines }) => ({ outlines, height: undefined })),
  ].filter(({ outlines }) => outlines.length > 0)
}

const valueOf = (fact: Fact<number>): number | undefined => (isKnown(fact) ? (fact.max ?? fact.value) : undefined)

/**
 * The dots at which a low part of the head would meet a wall. A part whose lower end stays above the wall meets none; a wall of unknown
 * height is taken to be higher.
 */
export function dotsAtWalls(dots: readonly Point[], walls: readonly Wall[], parts: readonly LowPart[]): number[] {
  const met = new Set<number>()
  for (const { outlines, height } of walls) {
    const meeting = parts.filter((part) => height === undefined || part.height < height)
    if (meeting.length === 0) continue
    const near = indexOf(outlines)
    dots.forEach((dot, i) => {
      if (!met.has(i) && meeting.some((part) => meets(part, dot, near))) met.add(i)
    })
  }
  return [...met].sort((a, b) => a - b)
}

interface Outlines {
  index: Flatbush
  outlines: Polyline[]
  edges: Edges[]
}

function indexOf(all: readonly Polyline[]): Outlines {
  const outlines = all.filter((outline) => outline.length > 0)
  const index = new Flatbush(outlines.length)
  for (const outline of outlines) {
    const box = boxOfPoints(outline)
    if (box) index.add(box.x, box.y, box.x + box.width, box.y + box.height)
  }
  index.finish()
  return { index, outlines, edges: outlines.map((outline) => edgesOf([loopOf(outline)])) }
}

function meets({ from, to, radius }: LowPart, dot: Point, { index, outlines, edges }: Outlines): boolean {
  const piece = [from, to].map(({ x, y }) => ({ x: dot.x + x, y: dot.y + y }))
  const box = boxOfPoints(piece)
  if (!box) return false
  const { x, y, width, height } = box
  const near = index.search(x - radius, y - radius, x + width + radius, y + height + radius)
  const swept = edgesOf([loopOf(piece)])
  if (near.some((i) => gapBetween(swept, edges[i]).distance < radius)) return true
  return contains(
    near.map((i) => outlines[i]),
    piece[0],
    'evenodd',
  )
}
