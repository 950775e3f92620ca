import type { Translator } from '../braille/translator.js'
import type { Drawing, Shape } from '../drawing/drawing.js'
import { boxOfPoints } from '../geometry/box.js'
import type { Contour } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import type { Sign } from '../sign/sign.js'
import { recognise, type RecogniseOptions } from './recognise.js'

/** Dots of which only the places are known, read as braille. */

/** A dot, and the line of the file that it is from. */
export interface PlacedDot extends Point {
  line: number
}

/** The dots are looked at as circles of a common size, which nothing may be measured on. */
const LOOKED_AT = 1.5
/** Free room round the dots, millimetres. */
export const MARGIN = 10

/**
 * The sign that the dots are, all named braille. Diameters in it are not those of the dots.
 * @param dots none of them left of 0 or above it
 */
export const recogniseDots = (dots: readonly PlacedDot[], options: RecogniseOptions, translator: Translator): Sign =>
  recognise(drawingOf(dots), options, translator)

function drawingOf(dots: readonly PlacedDot[]): Drawing {
  const box = boxOfPoints(dots) ?? { x: 0, y: 0, width: 0, height: 0 }
  return {
    viewport: { width: box.x + box.width + MARGIN, height: box.y + box.height + MARGIN },
    scale: { millimetresPerUnit: 1, from: 'units' },
    shapes: dots.map(shapeOf),
    texts: [],
    ignored: [],
    assumptions: [],
  }
}

function shapeOf({ x, y, line }: PlacedDot): Shape {
  const radius = LOOKED_AT / 2
  return {
    contours: [circleContour({ x, y }, radius)],
    fill: { rgb: [0, 0, 0], opacity: 1, written: 'black' },
    fillRule: 'nonzero',
    source: { line, column: 1 },
    labels: { dataPart: 'braille', names: [] },
    circle: { x, y, radius },
    box: { x: x - radius, y: y - radius, width: LOOKED_AT, height: LOOKED_AT },
  }
}

/** Where the controls of a quarter of a circle lie, in radii: 4/3 tan(π/8), see `drawing/arc.ts`. */
const CONTROL = (4 / 3) * Math.tan(Math.PI / 8)

function circleContour({ x, y }: Point, radius: number): Contour {
  const at = (right: number, down: number): Point => ({ x: x + radius * right, y: y + radius * down })
  const quarters = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ]
  return {
    start: at(1, 0),
    closed: true,
    segments: quarters.map(([right, down]) => ({
      kind: 'cubic',
      c1: at(right - CONTROL * down, down + CONTROL * right),
      c2: at(-down + CONTROL * right, right + CONTROL * down),
      to: at(-down, right),
    })),
  }
}
