import Flatbush from 'flatbush'
import { boxContains, boxesOverlap, unionOfBoxes, type Box } from '../geometry/box.js'
import { boxOfContours } from '../geometry/curve.js'
import type { Shape } from './drawing.js'
import { overlapOf } from './overlap.js'
import { grown } from './edges.js'
import { EDGE, isWithin, keepApart, Region } from './region.js'

/**
 * What is seen of a shape through a clip (SVG 1.1, 14.3: the union of the clip's shapes). Exact wherever the outlines of the
 * two do not cross: then the outline of what is seen is made of whole contours of either. What is cut is told by its box.
 */
export class Clip {
  private readonly index: Flatbush | undefined

  constructor(readonly regions: readonly Region[]) {
    if (regions.length <= FEW) return
    this.index = new Flatbush(regions.length)
    for (const { box } of regions) this.index.add(box.x, box.y, box.x + box.width, box.y + box.height)
    this.index.finish()
  }

  /** The regions that a box meets or touches. */
  near(box: Box): Region[] {
    const { x, y, width, height } = grown(box, EDGE)
    if (this.index)
      return this.index
        .search(x, y, x + width, y + height)
        .sort((a, b) => a - b)
        .map((i) => this.regions[i])
    return this.regions.filter((region) => boxesOverlap(grown(region.box, EDGE), { x, y, width, height }))
  }
}

const FEW = 32

export type ClipEffect = 'none' | 'hides' | 'cuts'

/** What a clip does to something of which only a box is known: live text, a picture. */
export function effectOfClip(clip: Clip, box: Box): ClipEffect {
  const near = clip.near(box)
  if (near.length === 0) return 'hides'
  return near.some((region) => isWithin(Region.ofBox(box), region)) ? 'none' : 'cuts'
}

export interface Seen {
  shapes: Shape[]
  /** Boxes of what is cut and not worked out. */
  cut: Box[]
}

/**
 * @param spend counts the edges that are looked at.
 */
export function seenThrough(clip: Clip, shape: Shape, spend: (edges: number) => void): Seen {
  const half = (shape.stroke?.width ?? 0) / 2
  const reach = grown(shape.box, half)
  const near = clip.near(reach)
  if (near.length === 0) return { shapes: [], cut: [] }
  if (near.some((region) => region.isBox && boxContains(region.box, reach, EDGE))) return { shapes: [shape], cut: [] }
  const area = Region.of(shape.contours, shape.fillRule)
  if (!area) return { shapes: [], cut: [reach] }
  for (const region of [area, ...near]) region.count = spend
  if (near.some((region) => holdsWhole(region, area, reach, half))) return { shapes: [shape], cut: [] }
  if (!shape.fill) return linesThrough(near, shape, half)
  if (half > 0 && near.some((region) => !keepApart(area, region, half - EDGE))) return { shapes: [], cut: [reach] }
  return fillThrough(near, shape, area)
}

function holdsWhole(region: Region, area: Region, reach: Box, half: number): boolean {
  if (!boxContains(region.box, reach, EDGE)) return false
  if (half === 0) return isWithin(area, region)
  return isWithin(Region.ofBox(reach), region) || (isWithin(area, region) && keepApart(area, region, half - EDGE))
}

/** Contours that are only stroked: each is seen whole, or not at all, or is cut. */
function linesThrough(near: readonly Region[], shape: Shape, half: number): Seen {
  const cut: Box[] = []
  const contours = shape.contours.filter((contour) => {
    const box = boxOfContours([contour])
    const reach = grown(box ?? shape.box, half)
    const close = near.filter((region) => boxesOverlap(grown(region.box, EDGE), reach))
    if (close.some((region) => isWithin(Region.ofBox(reach), region))) return true
    if (close.length > 0) cut.push(reach)
    return false
  })
  return { shapes: contours.length > 0 ? [lessThan(shape, contours)] : [], cut }
}

const lessThan = (shape: Shape, contours: Shape['contours']): Shape => ({
  ...shape,
  contours,
  circle: undefined,
  box: boxOfContours(contours) ?? shape.box,
})

/** The stroke of the shape is known to be wholly inside or wholly outside of each region. */
function fillThrough(near: readonly Region[], shape: Shape, area: Region): Seen {
  const seen: Seen = { shapes: [], cut: [] }
  for (const region of near) {
    if (isWithin(region, area)) {
      seen.shapes.push(paintedRegion(shape, region))
      continue
    }
    const { own, other, both, cut } = overlapOf(area, region)
    if (own.length > 0) seen.shapes.push(lessThan(shape, own))
    if (other.length > 0) seen.shapes.push(paintedRegion(shape, new Region(other, region.rule, boxAround(other))))
    if (both.length > 0) seen.shapes.push(paintedRegion(shape, new Region(both, 'evenodd', boxAround(both))))
    seen.cut.push(...cut)
  }
  const veiled = (shape.fill?.opacity ?? 1) < 1 && seen.shapes.length > 1 && anyOverlap(seen.shapes.map((s) => s.box))
  return veiled ? { shapes: [], cut: [unionOfBoxes(seen.shapes.map((s) => s.box)) ?? shape.box] } : seen
}

const boxAround = (contours: Shape['contours']): Box => boxOfContours(contours) ?? { x: 0, y: 0, width: 0, height: 0 }

/** A region of the clip, painted as the shape behind it is. */
const paintedRegion = (shape: Shape, { contours, rule, box, circle, source }: Region): Shape => ({
  contours: [...contours],
  fill: shape.fill,
  fillRule: rule,
  source: source ?? shape.source,
  labels: shape.labels,
  box,
  ...(circle ? { circle } : {}),
})

/** Boxes sorted from left to right: only those that begin before one ends can meet it. */
function anyOverlap(boxes: readonly Box[]): boolean {
  const sorted = [...boxes].sort((a, b) => a.x - b.x)
  return sorted.some((box, i) => {
    for (let j = i + 1; j < sorted.length && sorted[j].x < box.x + box.width; j++)
      if (boxesOverlap(box, sorted[j])) return true
    return false
  })
}
