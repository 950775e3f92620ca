import type { Contour, Segment } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import { cubicsOfArc, ellipseFrame } from './arc.js'
import { parseLength, type Axis, type LengthContext } from './length.js'
import { parseNumbers } from './numbers.js'
import { outlineOfPath, type Outline } from './path.js'

/** The basic shapes as contours: SVG 1.1, chapter 9, with the automatic radii of SVG 2, 10.3. */

/** Reads a geometry property of the element, from its style or its attribute of the same name. */
export type Read = (name: string) => string | undefined

export const SHAPE_NAMES: ReadonlySet<string> = new Set([
  'circle',
  'ellipse',
  'rect',
  'line',
  'polyline',
  'polygon',
  'path',
])

/** Thrown inside when a value is written that is no length. */
class Unreadable extends Error {}

/**
 * What an element outlines, in user units; no contours when the standard says that it is not drawn (a radius of 0, say).
 * A value that cannot be read, or a negative size, makes a fault and no contours.
 * @param scale millimetres per user unit.
 */
export function outlineOf(name: string, read: Read, lengths: LengthContext, scale: number): Outline {
  try {
    return outline(name, read, lengths, scale)
  } catch (error) {
    if (error instanceof Unreadable) return { contours: [], fault: error.message }
    throw error
  }
}

function outline(name: string, read: Read, lengths: LengthContext, scale: number): Outline {
  const length = (attribute: string, axis: Axis): number => readLength(read(attribute), attribute, axis, lengths) ?? 0
  switch (name) {
    case 'circle': {
      const r = sizeOf(length('r', 'diagonal'), 'r')
      return ellipse({ x: length('cx', 'x'), y: length('cy', 'y') }, r, r, scale)
    }
    case 'ellipse': {
      const { rx, ry } = radii(read, lengths)
      return ellipse({ x: length('cx', 'x'), y: length('cy', 'y') }, rx, ry, scale)
    }
    case 'rect': {
      const width = sizeOf(length('width', 'x'), 'width')
      const height = sizeOf(length('height', 'y'), 'height')
      return rectangle({ x: length('x', 'x'), y: length('y', 'y') }, width, height, radii(read, lengths), scale)
    }
    case 'line':
      return joined([point(length('x1', 'x'), length('y1', 'y')), point(length('x2', 'x'), length('y2', 'y'))], false)
    case 'polyline':
      return polygon(read('points') ?? '', false)
    case 'polygon':
      return polygon(read('points') ?? '', true)
    default:
      return outlineOfPath(read('d') ?? '', scale)
  }
}

const point = (x: number, y: number): Point => ({ x, y })

function readLength(text: string | undefined, name: string, axis: Axis, lengths: LengthContext): number | undefined {
  if (text === undefined || text.trim() === 'auto') return undefined
  const value = parseLength(text, axis, lengths)
  if (value === undefined) throw new Unreadable(`Its ${name} is no length that can be read.`)
  return value
}

function sizeOf(value: number, name: string): number {
  if (value < 0) throw new Unreadable(`Its ${name} is negative.`)
  return value
}

/** rx and ry, each taken from the other when it is not given. */
function radii(read: Read, lengths: LengthContext): { rx: number; ry: number } {
  const rx = readLength(read('rx'), 'rx', 'x', lengths)
  const ry = readLength(read('ry'), 'ry', 'y', lengths)
  return { rx: sizeOf(rx ?? ry ?? 0, 'rx'), ry: sizeOf(ry ?? rx ?? 0, 'ry') }
}

function ellipse(centre: Point, rx: number, ry: number, scale: number): Outline {
  if (rx === 0 || ry === 0) return { contours: [] }
  const frame = ellipseFrame(centre, rx, ry)
  const start = point(centre.x + rx, centre.y)
  const segments = cubicsOfArc({ frame, start: 0, sweep: 2 * Math.PI }, scale, start)
  return { contours: [{ start, segments, closed: true }], ellipse: frame }
}

/** Straight sides first, then a quarter of an ellipse, clockwise from the top left as SVG 1.1, 9.2 draws it. */
function rectangle(
  corner: Point,
  width: number,
  height: number,
  given: { rx: number; ry: number },
  scale: number,
): Outline {
  if (width === 0 || height === 0) return { contours: [] }
  const rx = Math.min(given.rx, width / 2)
  const ry = Math.min(given.ry, height / 2)
  const [left, top, right, bottom] = [corner.x, corner.y, corner.x + width, corner.y + height]
  if (rx === 0 || ry === 0) return joined([corner, point(right, top), point(right, bottom), point(left, bottom)], true)
  const quarter = Math.PI / 2
  const segments: Segment[] = []
  const corners: [to: Point, centre: Point, end: Point][] = [
    [point(right - rx, top), point(right - rx, top + ry), point(right, top + ry)],
    [point(right, bottom - ry), point(right - rx, bottom - ry), point(right - rx, bottom)],
    [point(left + rx, bottom), point(left + rx, bottom - ry), point(left, bottom - ry)],
    [point(left, top + ry), point(left + rx, top + ry), point(left + rx, top)],
  ]
  corners.forEach(([to, centre, end], i) => {
    segments.push({ kind: 'line', to })
    const frame = ellipseFrame(centre, rx, ry)
    segments.push(...cubicsOfArc({ frame, start: (i - 1) * quarter, sweep: quarter }, scale, end))
  })
  const round = rx === width / 2 && ry === height / 2
  return {
    contours: [{ start: point(left + rx, top), segments, closed: true }],
    ellipse: round ? ellipseFrame(point(left + rx, top + ry), rx, ry) : undefined,
  }
}

function joined(points: Point[], closed: boolean): Outline {
  const [start, ...rest] = points
  if (!start || (rest.length === 0 && !closed)) return { contours: [] }
  const segments = rest.map((to): Segment => ({ kind: 'line', to }))
  const contour: Contour = { start, segments, closed }
  return { contours: [contour] }
}

/** Points up to the first that cannot be read; an odd last number is an error and not used (SVG 1.1, 9.6). */
function polygon(text: string, closed: boolean): Outline {
  const { numbers, complete } = parseNumbers(text)
  const points: Point[] = []
  for (let i = 0; i + 1 < numbers.length; i += 2) points.push(point(numbers[i], numbers[i + 1]))
  const broken = !complete || numbers.length % 2 === 1
  return { ...joined(points, closed), fault: broken ? 'Its list of points breaks off at an error.' : undefined }
}
