import type { Shape } from '../drawing/drawing.js'
import { boxOfContour } from '../geometry/curve.js'
import type { Contour, Segment } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'

/**
 * Outlines that a program wrote edge by edge, each as a path of its own, put together again where their ends meet. Only what
 * leaves no choice is joined: at each end exactly two edges of the same stroke, all the way round.
 */

/** Ends that are no farther apart than this are one, in millimetres: CAD programs write three or four decimals. */
const SAME_PLACE = 0.01

export interface Stroked<T> {
  shape: Shape
  /** What goes along with the shape. */
  rest: T
}

/** The same shapes, with closed loops of open strokes made one shape each, at the place of their first edge. */
export function stitched<T>(items: readonly Stroked<T>[]): Stroked<T>[] {
  const edges = items.filter(({ shape }) => isEdge(shape))
  const loops = loopsOf(edges)
  const first = new Map(loops.map((loop) => [loop[0].item, loop]))
  const swallowed = new Set(loops.flatMap((loop) => loop.slice(1).map((edge) => edge.item)))
  return items.flatMap((item) => {
    if (swallowed.has(item)) return []
    const loop = first.get(item)
    return loop ? [{ ...item, shape: closedShape(loop) }] : [item]
  })
}

const isEdge = ({ contours, fill, stroke }: Shape): boolean =>
  stroke !== undefined &&
  (fill === undefined || fill.opacity <= 0) &&
  contours.length === 1 &&
  !contours[0].closed &&
  contours[0].segments.length > 0 &&
  keyOf(contours[0].start) !== keyOf(endOf(contours[0]))

const endOf = ({ segments }: Contour): Point => segments[segments.length - 1].to
const keyOf = ({ x, y }: Point): string => `${Math.round(x / SAME_PLACE)} ${Math.round(y / SAME_PLACE)}`
const strokeOf = ({ stroke }: Shape): string => `${stroke?.written ?? ''} ${stroke?.width ?? 0}`

interface Edge<T> {
  item: Stroked<T>
  /** Whether it is walked from its end to its start. */
  backwards: boolean
}

function loopsOf<T>(edges: readonly Stroked<T>[]): Edge<T>[][] {
  const meeting = new Map<string, Stroked<T>[]>()
  const at = ({ shape }: Stroked<T>, p: Point) => `${strokeOf(shape)} ${keyOf(p)}`
  for (const item of edges)
    for (const p of [item.shape.contours[0].start, endOf(item.shape.contours[0])]) {
      const here = meeting.get(at(item, p))
      if (here) here.push(item)
      else meeting.set(at(item, p), [item])
    }
  /** The only other edge that meets this one at a point. */
  const partner = (item: Stroked<T>, p: Point): Stroked<T> | undefined => {
    const here = meeting.get(at(item, p)) ?? []
    return here.length === 2 ? here.find((one) => one !== item) : undefined
  }
  const used = new Set<Stroked<T>>()
  return edges.flatMap((item) => {
    if (used.has(item)) return []
    const chain = walk(item, partner)
    for (const edge of chain.edges) used.add(edge.item)
    const { start } = item.shape.contours[0]
    const round = keyOf(chain.tip) === keyOf(start) && partner(item, start) === chain.edges.at(-1)?.item
    return round ? [chain.edges] : []
  })
}

/** From an edge on, as long as there is one way to go. */
function walk<T>(first: Stroked<T>, partner: (item: Stroked<T>, p: Point) => Stroked<T> | undefined) {
  const edges: Edge<T>[] = [{ item: first, backwards: false }]
  const seen = new Set([first])
  let tip = endOf(first.shape.contours[0])
  let next = partner(first, tip)
  while (next && !seen.has(next)) {
    const contour = next.shape.contours[0]
    const backwards = keyOf(contour.start) !== keyOf(tip)
    edges.push({ item: next, backwards })
    seen.add(next)
    tip = backwards ? contour.start : endOf(contour)
    next = partner(next, tip)
  }
  return { edges, tip }
}

function closedShape<T>(loop: readonly Edge<T>[]): Shape {
  const { shape } = loop[0].item
  const segments = loop.flatMap(({ item, backwards }) => {
    const contour = item.shape.contours[0]
    return backwards ? reversed(contour) : contour.segments
  })
  const contour: Contour = { start: shape.contours[0].start, segments, closed: true }
  return { ...shape, contours: [contour], circle: undefined, box: boxOfContour(contour) }
}

function reversed({ start, segments }: Contour): Segment[] {
  const points = [start, ...segments.map((s) => s.to)]
  return segments
    .map((s, i): Segment =>
      s.kind === 'line' ? { kind: 'line', to: points[i] } : { kind: 'cubic', c1: s.c2, c2: s.c1, to: points[i] },
    )
    .reverse()
}
