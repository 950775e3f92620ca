import type { Point } from '../geometry/point.js'
import { arcFromEnds, type Arc } from './arc.js'
import type { Read } from './basic-shapes.js'
import { parseLength, type LengthContext } from './length.js'
import { parseNumbers } from './numbers.js'
import { parsePath } from './path.js'

/**
 * The vertices of an element that bears markers, in its user space, with the direction of the outline at each. Which ends are
 * vertices: SVG 1.1, 11.6.2; directions: SVG 2, 13.7.4 and, for segments without a length, appendix F.5 of SVG 1.1.
 */
export interface Vertex extends Point {
  /** Radians, from the x axis to the y axis; halfway between the outline's two directions where it bends. */
  angle: number
}

export const MARKED_NAMES: ReadonlySet<string> = new Set(['path', 'line', 'polyline', 'polygon'])

/** One segment: its end, and the directions in which it leaves its start and comes to its end; none without a length. */
interface Step {
  to: Point
  leaves?: Point
  arrives?: Point
}

interface Subpath {
  start: Point
  steps: Step[]
  closed: boolean
  /** It starts where the one before was closed, which is a vertex already. */
  continued?: boolean
}

export function verticesOf(name: string, read: Read, lengths: LengthContext): Vertex[] {
  return subpathsOf(name, read, lengths).flatMap(verticesOfSubpath)
}

function subpathsOf(name: string, read: Read, lengths: LengthContext): Subpath[] {
  if (name === 'path') return subpathsOfPath(read('d') ?? '')
  if (name === 'line') {
    const place = (x: string, y: string): Point => ({
      x: parseLength(read(x) ?? '0', 'x', lengths) ?? 0,
      y: parseLength(read(y) ?? '0', 'y', lengths) ?? 0,
    })
    return [throughPoints([place('x1', 'y1'), place('x2', 'y2')], false)]
  }
  const { numbers } = parseNumbers(read('points') ?? '')
  const points: Point[] = []
  for (let i = 0; i + 1 < numbers.length; i += 2) points.push({ x: numbers[i], y: numbers[i + 1] })
  return points.length === 0 ? [] : [throughPoints(points, name === 'polygon')]
}

function throughPoints([start, ...rest]: Point[], closed: boolean): Subpath {
  const builder = new Builder(start)
  for (const to of rest) builder.line(to)
  if (closed) builder.close()
  return builder.subpath
}

class Builder {
  readonly subpath: Subpath
  private at: Point

  constructor(start: Point) {
    this.subpath = { start, steps: [], closed: false }
    this.at = start
  }

  line(to: Point): void {
    this.step(to, [to], [this.at])
  }

  /** The direction of a curve at an end is that to the nearest control point that does not lie there. */
  curve(controls: Point[], to: Point): void {
    this.step(to, [...controls, to], [...controls].reverse().concat(this.at))
  }

  arc(arc: Arc, to: Point): void {
    const tangent = (angle: number): Point => {
      const { a, b, c, d } = arc.frame
      const [x, y] = [-Math.sin(angle) * Math.sign(arc.sweep), Math.cos(angle) * Math.sign(arc.sweep)]
      return { x: a * x + c * y, y: b * x + d * y }
    }
    this.subpath.steps.push({ to, leaves: tangent(arc.start), arrives: tangent(arc.start + arc.sweep) })
    this.at = to
  }

  close(): void {
    this.line(this.subpath.start)
    this.subpath.closed = true
  }

  private step(to: Point, after: Point[], before: Point[]): void {
    const next = after.find((p) => !same(p, this.at))
    const last = before.find((p) => !same(p, to))
    const leaves = next && { x: next.x - this.at.x, y: next.y - this.at.y }
    const arrives = last && { x: to.x - last.x, y: to.y - last.y }
    this.subpath.steps.push({ to, leaves, arrives })
    this.at = to
  }
}

const same = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y

function subpathsOfPath(data: string): Subpath[] {
  const subpaths: Subpath[] = []
  let builder: Builder | undefined
  parsePath(data).path.iterate((segment, _, x, y) => {
    const from = { x, y }
    const to = endOf(segment, from)
    if (segment[0] === 'M' || !builder || builder.subpath.closed) {
      builder = new Builder(segment[0] === 'M' ? to : from)
      subpaths.push(builder.subpath)
      if (segment[0] === 'M') return
      builder.subpath.continued = true
    }
    if (segment[0] === 'Z' || segment[0] === 'z') builder.close()
    else if (segment[0] === 'C') builder.curve([pointAt(segment, 1), pointAt(segment, 3)], to)
    else if (segment[0] === 'Q') builder.curve([pointAt(segment, 1)], to)
    else {
      const arc = segment[0] === 'A' ? arcOf(from, segment.map(Number), to) : undefined
      if (arc) builder.arc(arc, to)
      else builder.line(to)
    }
  })
  return subpaths
}

const pointAt = (segment: readonly (string | number)[], index: number): Point => ({
  x: Number(segment[index]),
  y: Number(segment[index + 1]),
})

function endOf(segment: readonly (string | number)[], from: Point): Point {
  if (segment[0] === 'H') return { x: Number(segment[1]), y: from.y }
  if (segment[0] === 'V') return { x: from.x, y: Number(segment[1]) }
  return segment.length < 3 ? from : pointAt(segment, segment.length - 2)
}

const arcOf = (from: Point, [, rx, ry, rotation, large, positive]: number[], to: Point): Arc | undefined =>
  arcFromEnds(from, to, { rx, ry }, rotation, large !== 0, positive !== 0)

function verticesOfSubpath({ start, steps, closed, continued }: Subpath): Vertex[] {
  const ends = directed(steps)
  const points = [start, ...steps.map(({ to }) => to)]
  const vertices = points.map((point, i) => {
    const before = i > 0 ? ends[i - 1].arrives : closed ? ends.at(-1)?.arrives : undefined
    const after = i < steps.length ? ends[i].leaves : closed ? ends.at(0)?.leaves : undefined
    return { ...point, angle: between(before ?? after, after ?? before) }
  })
  return continued ? vertices.slice(1) : vertices
}

/** A segment without a length runs on as the one before it, or, at the start, as the first that has a length. */
function directed(steps: readonly Step[]): Pick<Step, 'leaves' | 'arrives'>[] {
  let last = steps.find(({ leaves }) => leaves)?.leaves
  return steps.map(({ leaves = last, arrives = last }) => {
    last = arrives
    return { leaves, arrives }
  })
}

function between(before: Point | undefined, after: Point | undefined): number {
  if (!before || !after) return 0
  const first = Math.atan2(before.y, before.x)
  const turn = Math.atan2(after.y, after.x) - first
  return first + Math.atan2(Math.sin(turn), Math.cos(turn)) / 2
}
