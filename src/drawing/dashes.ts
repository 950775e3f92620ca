import { flatten } from '../geometry/curve.js'
import { determinant, type Matrix } from '../geometry/matrix.js'
import type { Contour } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import { parseLength, parseLengths, type LengthContext } from './length.js'
import { parseNumber } from './numbers.js'
import type { Style } from './style.js'

/**
 * Dashes: SVG 1.1, 11.4, and SVG 2, 13.5.6: each subpath is dashed from its start on, in the space of the stroke. With round
 * ends a dash of no length is a dot.
 */

/** The list of dashes and gaps, an even number of them, in user units; undefined for a solid line. */
export function dashesOf({ strokeDasharray: written }: Style, lengths: LengthContext): number[] | undefined {
  if (written === 'none') return undefined
  const list = parseLengths(written, 'diagonal', lengths)
  const numbers = list.filter((length) => length !== undefined)
  // A negative length is an error, and zeros alone are a solid line.
  if (numbers.length < list.length || numbers.some((n) => n < 0) || !numbers.some((n) => n > 0)) return undefined
  return numbers.length % 2 === 0 ? numbers : [...numbers, ...numbers]
}

/** A dash that is no longer than this share of the line's width is a dot when its ends are round. */
const DOT_SHARE = 0.05

export const areDots = (dashes: readonly number[], { strokeLinecap, strokeWidth }: Style): boolean =>
  strokeLinecap === 'round' && dashes.every((length, i) => i % 2 === 1 || length <= DOT_SHARE * strokeWidth)

interface Line {
  points: Point[]
  /** Of each edge, in the space of the stroke. */
  lengths: number[]
  length: number
}

export interface Dashing {
  dashes: readonly number[]
  offset: number
  lines: Line[]
  /** How many dashes there are, about; they are counted before they are made. */
  count: number
}

/**
 * @param space from the space in which the stroke's lengths count to millimetres.
 * @param pathLength the length that the file says that the whole outline has, in those lengths.
 */
export function dashingOf(
  contours: readonly Contour[],
  dashes: readonly number[],
  style: Style,
  lengths: LengthContext,
  space: Matrix,
  pathLength: string | undefined,
): Dashing {
  const lines = contours.map((contour) => lineOf(contour, space))
  const whole = lines.reduce((sum, { length }) => sum + length, 0)
  const stated = pathLength === undefined ? undefined : parseNumber(pathLength)
  const stretch = stated !== undefined && stated > 0 ? whole / stated : 1
  const stretched = dashes.map((length) => length * stretch)
  const period = stretched.reduce((sum, length) => sum + length, 0)
  const perPeriod = dashes.length / 2
  const count = lines.reduce((n, { length }) => n + (Math.ceil(length / period) + 1) * perPeriod, 0)
  const offset = (parseLength(style.strokeDashoffset, 'diagonal', lengths) ?? 0) * stretch
  return { dashes: stretched, offset, lines, count: Math.min(count, Number.MAX_SAFE_INTEGER) }
}

function lineOf(contour: Contour, { a, b, c, d }: Matrix): Line {
  const points = flatten(contour)
  if (contour.closed) points.push(points[0])
  const area = determinant({ a, b, c, d, e: 0, f: 0 })
  const lengths = points.slice(1).map((to, i) => {
    const [x, y] = [to.x - points[i].x, to.y - points[i].y]
    return Math.hypot(d * x - c * y, a * y - b * x) / Math.abs(area)
  })
  return { points, lengths, length: lengths.reduce((sum, length) => sum + length, 0) }
}

/** Each dash as a contour of its own, from where it starts to where it ends, in millimetres. */
export const contoursOfDashes = ({ dashes, offset, lines }: Dashing): Contour[] =>
  lines.flatMap((line) => dashed(line, dashes, offset))

function dashed(line: Line, dashes: readonly number[], offset: number): Contour[] {
  const contours: Contour[] = []
  const period = dashes.reduce((sum, length) => sum + length, 0)
  const walk = new Walk(line)
  // The pattern starts before the line does, by the offset.
  for (let start = -(((offset % period) + period) % period); start < line.length; start += period) {
    let at = start
    dashes.forEach((length, i) => {
      const end = Math.min(at + length, line.length)
      if (i % 2 === 0 && end >= 0 && at < line.length) {
        const from = walk.at(Math.max(at, 0))
        contours.push({ start: from, segments: [{ kind: 'line', to: walk.at(end) }], closed: false })
      }
      at += length
    })
  }
  return contours
}

/** Goes along a line, always forward. */
class Walk {
  private edge = 0
  private passed = 0

  constructor(private readonly line: Line) {}

  at(length: number): Point {
    const { points, lengths } = this.line
    while (this.edge < lengths.length - 1 && length > this.passed + lengths[this.edge]) {
      this.passed += lengths[this.edge]
      this.edge++
    }
    const [from, to] = [points[this.edge], points[this.edge + 1] ?? points[this.edge]]
    const own = lengths[this.edge] ?? 0
    const t = own > 0 ? Math.min(1, (length - this.passed) / own) : 0
    return { x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) }
  }
}
