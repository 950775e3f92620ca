import type { Matrix } from '../geometry/matrix.js'
import { arcFromEnds } from './arc.js'
import { readPathData, type PathSink } from './path-data.js'
import { Pen, type Outline } from './pen.js'

/**
 * Path data to contours; what stands before an error is drawn (SVG 1.1, F.2).
 * @param matrix from the path's coordinates to millimetres.
 */
export function outlineOfPath(data: string, matrix: Matrix): Outline {
  const pen = new Pen(matrix)
  const broken = !readPathData(data, new PenOfPath(pen)) && data.trim() !== 'none'
  const outline = pen.finish()
  return broken ? { ...outline, fault: outline.fault ?? 'The path data break off at an error.' } : outline
}

/** Draws with a pen, and knows where it stands in the path's own coordinates. */
class PenOfPath implements PathSink {
  private x = 0
  private y = 0
  private startX = 0
  private startY = 0

  constructor(private readonly pen: Pen) {}

  move(x: number, y: number): void {
    this.pen.move({ x, y })
    this.startX = x
    this.startY = y
    this.stand(x, y)
  }

  line(x: number, y: number): void {
    this.pen.line({ x, y })
    this.stand(x, y)
  }

  cubic(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void {
    this.pen.cubic({ x: x1, y: y1 }, { x: x2, y: y2 }, { x, y })
    this.stand(x, y)
  }

  quadratic(x1: number, y1: number, x: number, y: number): void {
    this.pen.quadratic({ x: this.x, y: this.y }, { x: x1, y: y1 }, { x, y })
    this.stand(x, y)
  }

  arc(rx: number, ry: number, rotation: number, large: boolean, positive: boolean, x: number, y: number): void {
    const arc = arcFromEnds({ x: this.x, y: this.y }, { x, y }, { rx, ry }, rotation, large, positive)
    if (arc) this.pen.arc(arc, { x, y })
    else this.pen.line({ x, y })
    this.stand(x, y)
  }

  close(): void {
    this.pen.close()
    this.stand(this.startX, this.startY)
  }

  private stand(x: number, y: number): void {
    this.x = x
    this.y = y
  }
}
