import svgpath from 'svgpath'
import type { Matrix } from '../geometry/matrix.js'
import type { Point } from '../geometry/point.js'
import { arcFromEnds } from './arc.js'
import { Pen, type Outline } from './pen.js'

/** Path data to contours: SVG 1.1, 8.3, parsed by svgpath; what stands before an error is drawn (SVG 1.1, F.2). */

/** @param matrix from the path's coordinates to millimetres. */
export function outlineOfPath(data: string, matrix: Matrix): Outline {
  const { path, fault } = parsePath(data)
  const pen = new Pen(matrix)
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
        return drawArc(pen, from, segment)
      default:
        return pen.close()
    }
  })
  return { ...pen.finish(), fault }
}

function drawArc(pen: Pen, from: Point, segment: readonly (string | number)[]): void {
  const [, rx, ry, rotation, large, positive] = segment.map(Number)
  const to = at(segment, 6)
  const arc = arcFromEnds(from, to, { rx, ry }, rotation, large !== 0, positive !== 0)
  if (arc) pen.arc(arc, to)
  else pen.line(to)
}

const at = (segment: readonly (string | number)[], index: number): Point => ({
  x: Number(segment[index]),
  y: Number(segment[index + 1]),
})

/** svgpath also reads a command `R` that SVG does not have, and takes leading zeros for an error, which SVG does not. */
export function parsePath(data: string): { path: ReturnType<typeof svgpath>; fault?: string } {
  const foreign = data.search(/[rR]/)
  const legal = foreign < 0 ? data : data.slice(0, foreign)
  let path = svgpath(legal)
  let error = errorOf(path)
  if (/started with `0`/.test(error) && !/[aA]/.test(legal)) {
    path = svgpath(legal.replace(/(^|[^\d.])0+(?=\d)/g, '$1'))
    error = errorOf(path)
  }
  const broken = foreign >= 0 || (error !== '' && data.trim() !== 'none')
  // Each pass goes through the whole path: only where there is something for it to do.
  if (/[achlmqstv]/.test(legal)) path = path.abs()
  if (/[sStT]/.test(legal)) path = path.unshort()
  return { path, fault: broken ? 'The path data break off at an error.' : undefined }
}

/** svgpath keeps its message in a property that its types leave out. */
const errorOf = (path: ReturnType<typeof svgpath>): string =>
  'err' in path && typeof path.err === 'string' ? path.err : ''
