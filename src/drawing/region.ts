import { boxContains, boxOfPoints, type Box } from '../geometry/box.js'
import { boxOfContours, flatten } from '../geometry/curve.js'
import { apply, type Matrix } from '../geometry/matrix.js'
import type { Contour, Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import type { Shape, Source } from './drawing.js'
import { edgesWithin, crossingAlong, Edges, type Edge } from './edges.js'

/** Areas that contours bound, in millimetres, and how two of them lie to each other. */

/** Outlines that follow one another, to the last digit that files write, are one edge. Millimetres. */
export const EDGE = 0.002

/** A quarter of it is left to the flattening of curves. */
const FLATTENING = EDGE / 4

export class Region {
  /** Where it stands in the file, and its exact circle when it is one. */
  source?: Source
  circle?: Shape['circle']
  /** Told how many edges are looked at. */
  count?: (edges: number) => void
  private flat: Polyline[] | undefined
  private contourBoxes: (Box | undefined)[] | undefined
  private filed: Edges | undefined
  private box4: boolean | undefined

  constructor(
    readonly contours: readonly Contour[],
    readonly rule: 'nonzero' | 'evenodd',
    readonly box: Box,
  ) {}

  /** Undefined for contours without a finite box. */
  static of(contours: readonly Contour[], rule: 'nonzero' | 'evenodd'): Region | undefined {
    const box = boxOfContours(contours)
    return box && Object.values(box).every(Number.isFinite) ? new Region(contours, rule, box) : undefined
  }

  static ofBox(box: Box): Region {
    const [start, ...rest] = cornersOf(box)
    return new Region([{ start, segments: rest.map((to) => ({ kind: 'line', to })), closed: true }], 'nonzero', box)
  }

  get polylines(): Polyline[] {
    this.flat ??= this.contours.map((contour) => flatten(contour, FLATTENING))
    return this.flat
  }

  /** Round each contour, as it is flattened. */
  get boxes(): (Box | undefined)[] {
    this.contourBoxes ??= this.polylines.map(boxOfPoints)
    return this.contourBoxes
  }

  get edges(): Edges {
    this.filed ??= new Edges(this.polylines, this.rule, (edges) => this.count?.(edges))
    return this.filed
  }

  /** One rectangle along the axes: each corner of its box is one of its four points. */
  get isBox(): boolean {
    this.box4 ??= isRectangle(this)
    return this.box4
  }
}

export const cornersOf = ({ x, y, width, height }: Box): Polyline => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
]

function isRectangle({ contours, box }: Region): boolean {
  const [contour] = contours
  if (contours.length !== 1 || contour.segments.some((segment) => segment.kind !== 'line')) return false
  const corners = flatten(contour)
  const near = (p: number, q: number) => Math.abs(p - q) <= EDGE / 2
  const end = corners[corners.length - 1]
  if (corners.length === 5 && near(end.x, corners[0].x) && near(end.y, corners[0].y)) corners.pop()
  if (corners.length !== 4) return false
  const squared = corners.every((p, i) => {
    const next = corners[(i + 1) % corners.length]
    return near(p.x, next.x) !== near(p.y, next.y)
  })
  return squared && cornersOf(box).every((c) => corners.some((p) => near(p.x, c.x) && near(p.y, c.y)))
}

/** The box in millimetres round a rectangle in user units. */
export const boxOfFrame = (box: Box, matrix: Matrix): Box =>
  boxOfPoints(cornersOf(box).map((corner) => apply(matrix, corner))) ?? box

/** The region of a rectangle in user units. */
export function frameRegion(frame: Box, matrix: Matrix): Region {
  const [start, ...rest] = cornersOf(frame).map((corner) => apply(matrix, corner))
  const segments = rest.map((to) => ({ kind: 'line', to }) as const)
  return new Region([{ start, segments, closed: true }], 'nonzero', boxOfFrame(frame, matrix))
}

/** Whether the outlines of two areas are nowhere as near to each other as this. */
export const keepApart = (a: Region, b: Region, distance: number): boolean =>
  edgesWithin(a.edges, b.box, b.edges, distance).length === 0

/** Whether all of `inner` lies in `outer`; edges may be `EDGE` beyond each other. */
export function isWithin(inner: Region, outer: Region): boolean {
  if (!boxContains(outer.box, inner.box, EDGE)) return false
  if (outer.isBox) return true
  if (outer.edges.near(inner.box).some((edge) => runsDeepIn(edge, inner))) return false
  return inner.contours.every((_, i) => {
    const point = pointInside(inner, i)
    return point === undefined || outer.edges.contains(point)
  })
}

/** Shares of the way between two crossings at which the depth of an edge is looked at. */
const SHARES = [0.25, 0.5, 0.75]

/** Whether an edge passes through the inside of a region, further from its outline than `EDGE`. */
function runsDeepIn(edge: Edge, { edges }: Region): boolean {
  const stops = [0, 1]
  const box = boxOfPoints([edge.from, edge.to])
  for (const other of box ? edges.near(box) : []) {
    const t = crossingAlong(edge, other)
    if (t !== undefined) stops.push(t)
  }
  stops.sort((a, b) => a - b)
  return stops.some((stop, i) =>
    SHARES.some((share) => {
      const next = stops[i + 1] ?? stop
      const point = along(edge, stop + share * (next - stop))
      return edges.contains(point) && !edges.touches(point, EDGE)
    }),
  )
}

const along = ({ from, to }: Edge, t: number): Point => ({
  x: from.x + t * (to.x - from.x),
  y: from.y + t * (to.y - from.y),
})

/** A point well inside a region at half the height of one of its contours; undefined when there is none. */
function pointInside({ edges, boxes }: Region, contour: number): Point | undefined {
  const box = boxes[contour]
  if (!box || box.height === 0) return undefined
  const y = box.y + box.height / 2
  const row: Edge = { from: { x: box.x - 1, y }, to: { x: box.x + box.width + 1, y } }
  const stops = edges
    .near({ x: box.x, y, width: box.width, height: 0 })
    .flatMap((edge) => crossingAlong(row, edge) ?? [])
    .sort((a, b) => a - b)
  let widest = 0
  let found: Point | undefined
  for (let i = 1; i < stops.length; i++) {
    const middle = along(row, (stops[i] + stops[i - 1]) / 2)
    if (stops[i] - stops[i - 1] <= widest || !edges.contains(middle)) continue
    widest = stops[i] - stops[i - 1]
    found = middle
  }
  return found
}
