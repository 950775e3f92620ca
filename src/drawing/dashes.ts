import { flatten } from '../geometry/curve.js'
import type { Matrix } from '../geometry/matrix.js'
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

/** A line with its dashes, none of them made yet. */
export interface Dashing {
  contours: readonly Contour[]
  dashes: readonly number[]
  offset: number
  /** From millimetres to the space in which lengths count, without the shift. */
  measure: Measure
  /** How many dashes there are, about. */
  count: number
}

type Measure = (x: number, y: number) => number

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
  const measure = measureOf(space)
  const ways = contours.map((contour) => wayAlong(contour, measure))
  const stated = pathLength === undefined ? undefined : parseNumber(pathLength)
  const stretch = stated !== undefined && stated > 0 ? lengthOf(contours, measure) / stated : 1
  const stretched = dashes.map((length) => length * stretch)
  const period = stretched.reduce((sum, length) => sum + length, 0)
  const count = ways.reduce((n, way) => n + (Math.ceil(way / period) + 1) * (dashes.length / 2), 0)
  const offset = (parseLength(style.strokeDashoffset, 'diagonal', lengths) ?? 0) * stretch
  return { contours, dashes: stretched, offset, measure, count: Math.min(count, Number.MAX_SAFE_INTEGER) }
}

function measureOf({ a, b, c, d }: Matrix): Measure {
  const area = Math.abs(a * d - b * c)
  return (x, y) => Math.hypot(d * x - c * y, a * y - b * x) / area
}

/** The way along a contour's control points: no curve is longer. */
function wayAlong({ start, segments, closed }: Contour, measure: Measure): number {
  let way = 0
  let at = start
  const go = (to: Point) => {
    way += measure(to.x - at.x, to.y - at.y)
    at = to
  }
  for (const segment of segments) {
    if (segment.kind === 'cubic') [segment.c1, segment.c2].forEach(go)
    go(segment.to)
  }
  if (closed) go(start)
  return way
}

function lengthOf(contours: readonly Contour[], measure: Measure): number {
  let length = 0
  for (const contour of contours)
    eachEdge(contour, (from, to) => {
      length += measure(to.x - from.x, to.y - from.y)
    })
  return length
}

/** Goes along a contour in straight steps, one curve at a time: long outlines are never held as a whole. */
function eachEdge({ start, segments, closed }: Contour, step: (from: Point, to: Point) => void): void {
  let at = start
  for (const segment of segments) {
    flatten({ start: at, segments: [segment], closed: false }).reduce((from, to) => {
      step(from, to)
      return to
    })
    at = segment.to
  }
  if (closed) step(at, start)
}

/** Each dash as a contour of its own, from where it starts to where it ends, in millimetres. */
export const contoursOfDashes = (dashing: Dashing): Contour[] =>
  dashing.contours.flatMap((contour) => dashed(contour, dashing))

function dashed(contour: Contour, { dashes, offset, measure }: Dashing): Contour[] {
  const contours: Contour[] = []
  const period = dashes.reduce((sum, length) => sum + length, 0)
  // The list starts before the line does, by the offset: the first dash that reaches the line is looked for.
  let next = -(((offset % period) + period) % period)
  let index = 0
  const skip = () => {
    next += dashes[index] + dashes[index + 1]
    index = (index + 2) % dashes.length
  }
  while (next + dashes[index] < 0) skip()
  let passed = 0
  eachEdge(contour, (from, to) => {
    const length = measure(to.x - from.x, to.y - from.y)
    const at = (way: number): Point => {
      const t = length > 0 ? Math.min(1, Math.max(0, (way - passed) / length)) : 0
      return { x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) }
    }
    for (; next < passed + length; skip())
      contours.push({
        start: at(next),
        segments: [{ kind: 'line', to: at(next + dashes[index]) }],
        closed: false,
      })
    passed += length
  })
  return contours
}
