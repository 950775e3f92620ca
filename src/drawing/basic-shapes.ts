import type { Matrix } from '../geometry/matrix.js'
import type { Point } from '../geometry/point.js'
import { ellipseFrame, WHOLE_TURN } from './arc.js'
import { parseLength, type Axis, type LengthContext } from './length.js'
import { parseNumbers } from './numbers.js'
import { outlineOfPath } from './path.js'
import { Pen, type Outline } from './pen.js'

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
 * What an element outlines; no contours when the standard says that it is not drawn (a radius of 0, say). A value that cannot
 * be read, or a negative size, makes a fault and no contours.
 * @param matrix from the element's user units to millimetres.
 */
export function outlineOf(name: string, read: Read, lengths: LengthContext, matrix: Matrix): Outline {
  try {
    return outline(name, read, lengths, matrix)
  } catch (error) {
    if (error instanceof Unreadable) return { contours: [], fault: error.message }
    throw error
  }
}

function outline(name: string, read: Read, lengths: LengthContext, matrix: Matrix): Outline {
  const length = (attribute: string, axis: Axis): number => readLength(read(attribute), attribute, axis, lengths) ?? 0
  const place = (x: string, y: string): Point => ({ x: length(x, 'x'), y: length(y, 'y') })
  const pen = new Pen(matrix)
  switch (name) {
    case 'circle': {
      const r = sizeOf(length('r', 'diagonal'), 'r')
      drawEllipse(pen, place('cx', 'cy'), r, r)
      break
    }
    case 'ellipse': {
      const { rx, ry } = radii(read, lengths)
      drawEllipse(pen, place('cx', 'cy'), rx, ry)
      break
    }
    case 'rect': {
      const size = { width: sizeOf(length('width', 'x'), 'width'), height: sizeOf(length('height', 'y'), 'height') }
      drawRectangle(pen, place('x', 'y'), size, radii(read, lengths))
      break
    }
    case 'line':
      drawLines(pen, [place('x1', 'y1'), place('x2', 'y2')], false)
      break
    case 'polyline':
    case 'polygon':
      return drawPoints(pen, read('points') ?? '', name === 'polygon')
    default:
      return outlineOfPath(read('d') ?? '', matrix)
  }
  return pen.finish()
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

function drawEllipse(pen: Pen, centre: Point, rx: number, ry: number): void {
  if (rx === 0 || ry === 0) return
  const start = point(centre.x + rx, centre.y)
  pen.move(start)
  pen.arc({ frame: ellipseFrame(centre, rx, ry), start: 0, sweep: WHOLE_TURN }, start)
  pen.close()
}

/** Straight sides first, then a quarter of an ellipse, clockwise from the top left as SVG 1.1, 9.2 draws it. */
function drawRectangle(
  pen: Pen,
  corner: Point,
  size: { width: number; height: number },
  given: { rx: number; ry: number },
): void {
  const { width, height } = size
  if (width === 0 || height === 0) return
  const rx = Math.min(given.rx, width / 2)
  const ry = Math.min(given.ry, height / 2)
  const [left, top, right, bottom] = [corner.x, corner.y, corner.x + width, corner.y + height]
  if (rx === 0 || ry === 0)
    return drawLines(pen, [corner, point(right, top), point(right, bottom), point(left, bottom)], true)
  const corners: [from: Point, centre: Point, to: Point][] = [
    [point(right - rx, top), point(right - rx, top + ry), point(right, top + ry)],
    [point(right, bottom - ry), point(right - rx, bottom - ry), point(right - rx, bottom)],
    [point(left + rx, bottom), point(left + rx, bottom - ry), point(left, bottom - ry)],
    [point(left, top + ry), point(left + rx, top + ry), point(left + rx, top)],
  ]
  const quarter = WHOLE_TURN / 4
  pen.move(point(left + rx, top))
  corners.forEach(([from, centre, to], i) => {
    pen.line(from)
    pen.arc({ frame: ellipseFrame(centre, rx, ry), start: (i - 1) * quarter, sweep: quarter }, to)
  })
  pen.close()
}

function drawLines(pen: Pen, [start, ...rest]: Point[], closed: boolean): void {
  if (rest.length === 0 && !closed) return
  pen.move(start)
  for (const to of rest) pen.line(to)
  if (closed) pen.close()
}

/** Points up to the first that cannot be read; an odd last number is an error and not used (SVG 1.1, 9.6). */
function drawPoints(pen: Pen, text: string, closed: boolean): Outline {
  const { numbers, complete } = parseNumbers(text)
  const points: Point[] = []
  for (let i = 0; i + 1 < numbers.length; i += 2) points.push(point(numbers[i], numbers[i + 1]))
  if (points.length > 0) drawLines(pen, points, closed)
  const broken = !complete || numbers.length % 2 === 1
  const outline = pen.finish()
  return broken ? { ...outline, fault: outline.fault ?? 'Its list of points breaks off at an error.' } : outline
}
