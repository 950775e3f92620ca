import type { Point } from '../geometry/point.js'
import { arcFromEnds, type Arc } from './arc.js'
import type { Read } from './basic-shapes.js'
import { parseLength, type LengthContext } from './length.js'
import { parseNumbers } from './numbers.js'
import { readPathData, type PathSink } from './path-data.js'

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
  at: Point

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
  const collector = new SubpathCollector()
  readPathData(data, collector)
  return collector.subpaths
}

class SubpathCollector implements PathSink {
  readonly subpaths: Subpath[] = []
  private builder: Builder | undefined

  move(x: number, y: number): void {
    this.begin({ x, y })
  }

  line(x: number, y: number): void {
    this.open().line({ x, y })
  }

  cubic(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void {
    this.open().curve(
      [
        { x: x1, y: y1 },
        { x: x2, y: y2 },
      ],
      { x, y },
    )
  }

  quadratic(x1: number, y1: number, x: number, y: number): void {
    this.open().curve([{ x: x1, y: y1 }], { x, y })
  }

  arc(rx: number, ry: number, rotation: number, large: boolean, positive: boolean, x: number, y: number): void {
    const builder = this.open()
    const arc = arcFromEnds(builder.at, { x, y }, { rx, ry }, rotation, large, positive)
    if (arc) builder.arc(arc, { x, y })
    else builder.line({ x, y })
  }

  close(): void {
    this.open().close()
  }

  private begin(start: Point): Builder {
    this.builder = new Builder(start)
    this.subpaths.push(this.builder.subpath)
    return this.builder
  }

  /** The subpath that goes on; behind a closed one, a new one from the same start. */
  private open(): Builder {
    const before = this.builder
    if (before && !before.subpath.closed) return before
    const builder = this.begin(before?.subpath.start ?? { x: 0, y: 0 })
    builder.subpath.continued = true
    return builder
  }
}

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
