import svgpath from 'svgpath'
import type { Matrix } from '../geometry/matrix.js'
import type { Contour } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import { arcFromEnds, cubicsOfArc, type Arc } from './arc.js'

/** Path data to contours: SVG 1.1, 8.3, parsed by svgpath; what stands before an error is drawn (SVG 1.1, F.2). */

/** What an element outlines, in its own user units. */
export interface Outline {
  contours: Contour[]
  /** When the whole is one full ellipse: the map from the unit circle to it. */
  ellipse?: Matrix
  /** What was wrong with the geometry as written; the contours are what is drawn all the same. */
  fault?: string
}

/** @param scale millimetres per user unit, for the fineness of arcs. */
export function outlineOfPath(data: string, scale: number): Outline {
  const { path, fault } = parsePath(data)
  const pen = new Pen(scale)
  path.iterate((segment, _, x, y) => {
    const from = { x, y }
    switch (segment[0]) {
      case 'M':
        return pen.move({ x: segment[1], y: segment[2] })
      case 'L':
        return pen.line({ x: segment[1], y: segment[2] })
      case 'H':
        return pen.line({ x: segment[1], y })
      case 'V':
        return pen.line({ x, y: segment[1] })
      case 'C':
        return pen.cubic(at(segment, 1), at(segment, 3), at(segment, 5))
      case 'Q':
        return pen.quadratic(from, at(segment, 1), at(segment, 3))
      case 'A':
        return pen.arc(from, segment[1], segment[2], segment[3], segment[4] !== 0, segment[5] !== 0, at(segment, 6))
      default:
        return pen.close()
    }
  })
  return { ...pen.finish(), fault }
}

const at = (segment: readonly (string | number)[], index: number): Point => ({
  x: Number(segment[index]),
  y: Number(segment[index + 1]),
})

/** svgpath also reads a command `R` that SVG does not have, and takes leading zeros for an error, which SVG does not. */
function parsePath(data: string): { path: ReturnType<typeof svgpath>; fault?: string } {
  const foreign = data.search(/[rR]/)
  const legal = foreign < 0 ? data : data.slice(0, foreign)
  let path = svgpath(legal)
  let error = errorOf(path)
  if (/started with `0`/.test(error) && !/[aA]/.test(legal)) {
    path = svgpath(legal.replace(/(^|[^\d.])0+(?=\d)/g, '$1'))
    error = errorOf(path)
  }
  const broken = foreign >= 0 || (error !== '' && data.trim() !== 'none')
  return { path: path.abs().unshort(), fault: broken ? 'The path data break off at an error.' : undefined }
}

/** svgpath keeps its message in a property that its types leave out. */
const errorOf = (path: ReturnType<typeof svgpath>): string =>
  'err' in path && typeof path.err === 'string' ? path.err : ''

/** Two arcs belong to one circle when their centres and radii differ by less than this share of the radius. */
const SAME_CIRCLE = 1e-3

class Pen {
  private readonly contours: Contour[] = []
  private readonly arcs: Arc[] = []
  private current: Contour | undefined
  private start: Point = { x: 0, y: 0 }
  private onlyArcs = true

  constructor(private readonly scale: number) {}

  move(to: Point): void {
    this.start = to
    this.current = undefined
  }

  line(to: Point): void {
    const contour = this.open()
    if (distanceFromEnd(contour, to) > 0) this.onlyArcs = false
    contour.segments.push({ kind: 'line', to })
  }

  cubic(c1: Point, c2: Point, to: Point): void {
    this.onlyArcs = false
    this.open().segments.push({ kind: 'cubic', c1, c2, to })
  }

  /** A quadratic as the cubic that it is: its controls lie two thirds of the way to the one control. */
  quadratic(from: Point, control: Point, to: Point): void {
    const towards = (p: Point) => ({ x: p.x + (2 / 3) * (control.x - p.x), y: p.y + (2 / 3) * (control.y - p.y) })
    this.cubic(towards(from), towards(to), to)
  }

  arc(from: Point, rx: number, ry: number, rotation: number, large: boolean, positive: boolean, to: Point): void {
    const arc = arcFromEnds(from, to, { rx, ry }, rotation, large, positive)
    if (!arc) return this.line(to)
    this.arcs.push(arc)
    this.open().segments.push(...cubicsOfArc(arc, this.scale, to))
  }

  close(): void {
    const contour = this.open()
    // A subpath that is closed at once still paints the cap of a point.
    if (contour.segments.length === 0) contour.segments.push({ kind: 'line', to: contour.start })
    contour.closed = true
    this.current = undefined
  }

  finish(): { contours: Contour[]; ellipse?: Matrix } {
    return { contours: this.contours, ellipse: this.fullEllipse() }
  }

  private open(): Contour {
    if (!this.current) {
      this.current = { start: this.start, segments: [], closed: false }
      this.contours.push(this.current)
    }
    return this.current
  }

  /** The ellipse whose arcs, in one sense, make one whole turn and nothing else. */
  private fullEllipse(): Matrix | undefined {
    const [first] = this.arcs
    if (!first || !this.onlyArcs || this.contours.length !== 1) return undefined
    const radius = Math.hypot(first.frame.a, first.frame.b)
    const turn = this.arcs.reduce((sum, arc) => sum + arc.sweep, 0)
    if (Math.abs(Math.abs(turn) - 2 * Math.PI) > SAME_CIRCLE) return undefined
    const close = (p: number, q: number) => Math.abs(p - q) <= SAME_CIRCLE * radius
    const same = this.arcs.every(
      ({ frame: f, sweep }) =>
        sweep > 0 === turn > 0 &&
        (['a', 'b', 'c', 'd', 'e', 'f'] as const).every((key) => close(f[key], first.frame[key])),
    )
    if (!same) return undefined
    const mean = (key: 'e' | 'f') => this.arcs.reduce((sum, { frame }) => sum + frame[key], 0) / this.arcs.length
    return { ...first.frame, e: mean('e'), f: mean('f') }
  }
}

function distanceFromEnd(contour: Contour, to: Point): number {
  const end = contour.segments[contour.segments.length - 1]?.to ?? contour.start
  return Math.hypot(to.x - end.x, to.y - end.y)
}
