import { apply, multiply, type Matrix } from '../geometry/matrix.js'
import type { Contour } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import { cubicsOfArc, type Arc } from './arc.js'

/** What an element outlines, in millimetres. */
export interface Outline {
  contours: Contour[]
  /** When the whole is one full ellipse: the map from the unit circle to it. */
  ellipse?: Matrix
  /** What was wrong with the geometry as written; the contours are what is drawn all the same. */
  fault?: string
}

/** Two arcs belong to one ellipse when nothing of them differs by more than this share of its radius. */
const SAME_ELLIPSE = 1e-3

/** Draws in an element's user units what comes out as contours in millimetres. */
export class Pen {
  private readonly contours: Contour[] = []
  private readonly arcs: Arc[] = []
  private current: Contour | undefined
  private start: Point
  private curved = false
  private longestLine = 0

  constructor(private readonly matrix: Matrix) {
    this.start = { x: matrix.e, y: matrix.f }
  }

  move(to: Point): void {
    this.start = apply(this.matrix, to)
    this.current = undefined
  }

  line(to: Point): void {
    const contour = this.open()
    const end = contour.segments[contour.segments.length - 1]?.to ?? contour.start
    const there = apply(this.matrix, to)
    this.longestLine = Math.max(this.longestLine, Math.hypot(there.x - end.x, there.y - end.y))
    contour.segments.push({ kind: 'line', to: there })
  }

  cubic(c1: Point, c2: Point, to: Point): void {
    this.curved = true
    const m = this.matrix
    this.open().segments.push({ kind: 'cubic', c1: apply(m, c1), c2: apply(m, c2), to: apply(m, to) })
  }

  /** A quadratic as the cubic that it is: its controls lie two thirds of the way to the one control. */
  quadratic(from: Point, control: Point, to: Point): void {
    const towards = (p: Point) => ({ x: p.x + (2 / 3) * (control.x - p.x), y: p.y + (2 / 3) * (control.y - p.y) })
    this.cubic(towards(from), towards(to), to)
  }

  /** An arc that starts where the pen is. `to` is its end, when that is known better than from the arc. */
  arc(arc: Arc, to?: Point): void {
    const mapped: Arc = { ...arc, frame: multiply(this.matrix, arc.frame) }
    this.arcs.push(mapped)
    const { segments } = this.open()
    for (const segment of cubicsOfArc(mapped, to && apply(this.matrix, to))) segments.push(segment)
  }

  close(): void {
    const contour = this.open()
    // A subpath that is closed at once still paints the cap of a point.
    if (contour.segments.length === 0) contour.segments.push({ kind: 'line', to: contour.start })
    contour.closed = true
    this.current = undefined
  }

  finish(): Outline {
    if (!this.contours.every(isSomewhere)) return { contours: [], fault: 'It has coordinates that no number can hold.' }
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
    if (!first || this.curved || this.contours.length !== 1) return undefined
    const { a, b, c, d } = first.frame
    const slack = SAME_ELLIPSE * Math.max(Math.hypot(a, b), Math.hypot(c, d))
    const turn = this.arcs.reduce((sum, arc) => sum + arc.sweep, 0)
    if (Math.abs(Math.abs(turn) - 2 * Math.PI) > SAME_ELLIPSE || this.longestLine > slack) return undefined
    if (this.arcs.length === 1) return first.frame
    const same = this.arcs.every(
      ({ frame, sweep }) =>
        sweep > 0 === turn > 0 &&
        (['a', 'b', 'c', 'd', 'e', 'f'] as const).every((key) => Math.abs(frame[key] - first.frame[key]) <= slack),
    )
    if (!same) return undefined
    const mean = (key: 'e' | 'f') => this.arcs.reduce((sum, { frame }) => sum + frame[key], 0) / this.arcs.length
    return { ...first.frame, e: mean('e'), f: mean('f') }
  }
}

/** Numbers of any size can be written; what comes of them in millimetres may be none. */
const isSomewhere = ({ start, segments }: Contour): boolean =>
  isThere(start) &&
  segments.every(
    (segment) => isThere(segment.to) && (segment.kind === 'line' || (isThere(segment.c1) && isThere(segment.c2))),
  )

const isThere = ({ x, y }: Point): boolean => Number.isFinite(x) && Number.isFinite(y)
