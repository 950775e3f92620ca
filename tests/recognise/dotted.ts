import type { Shape } from '../../src/drawing/drawing.js'
import { boxOfContours } from '../../src/geometry/curve.js'
import type { Contour, Segment } from '../../src/geometry/outline.js'

/** Shapes as the drawing reader would give them, made by hand. Millimetres, y down. */

const FILL = { opacity: 1, written: '#000' }

export const shapeOf = (contours: Contour[], more: Partial<Shape> = {}): Shape => {
  return {
    contours,
    fill: FILL,
    fillRule: 'nonzero',
    source: { line: 1, column: 1 },
    labels: { names: [] },
    box: boxOfContours(contours) ?? { x: 0, y: 0, width: 0, height: 0 },
    ...more,
  }
}

/** Four cubics; the distance of the controls is the usual 0.5523 of the radius. `squash` makes an ellipse, wider than high. */
export function cubicCircle(x: number, y: number, d: number, squash = 1): Contour {
  const k = 0.5522847498
  const at = (u: number, v: number) => ({ x: x + (u * d * squash) / 2, y: y + (v * d) / 2 })
  const arc = (c: number[], e: number[], to: number[]): Segment => ({
    kind: 'cubic',
    c1: at(c[0], c[1]),
    c2: at(e[0], e[1]),
    to: at(to[0], to[1]),
  })
  return {
    start: at(1, 0),
    segments: [
      arc([1, k], [k, 1], [0, 1]),
      arc([-k, 1], [-1, k], [-1, 0]),
      arc([-1, -k], [-k, -1], [0, -1]),
      arc([k, -1], [1, -k], [1, 0]),
    ],
    closed: true,
  }
}

/** Two cubics, each a half circle as drawing programs make it: controls 4/3 of the radius above its ends. */
export function twoHalves(x: number, y: number, d: number): Contour {
  const r = d / 2
  const half = (from: number, to: number, side: number): Segment => ({
    kind: 'cubic',
    c1: { x: x + from * r, y: y + (side * r * 4) / 3 },
    c2: { x: x + to * r, y: y + (side * r * 4) / 3 },
    to: { x: x + to * r, y },
  })
  return { start: { x: x + r, y }, segments: [half(1, -1, 1), half(-1, 1, -1)], closed: true }
}

export function polygon(x: number, y: number, d: number, corners: number, from = 0.3): Contour {
  const points = Array.from({ length: corners }, (_, i) => ({
    x: x + (d / 2) * Math.cos(from + (2 * Math.PI * i) / corners),
    y: y + (d / 2) * Math.sin(from + (2 * Math.PI * i) / corners),
  }))
  return { start: points[0], segments: points.slice(1).map((to) => ({ kind: 'line', to })), closed: true }
}

export const rectangle = (x: number, y: number, width: number, height: number): Contour => ({
  start: { x, y },
  segments: [
    { kind: 'line', to: { x: x + width, y } },
    { kind: 'line', to: { x: x + width, y: y + height } },
    { kind: 'line', to: { x, y: y + height } },
  ],
  closed: true,
})

export const circleShape = (x: number, y: number, d: number): Shape =>
  shapeOf([cubicCircle(x, y, d)], { circle: { x, y, radius: d / 2 } })

export interface Layout {
  x: number
  y: number
  dot: number
  cell: number
  line: number
  diameter: number
}

/** Within the limits of every standard that is known to us (invented). */
export const USUAL: Layout = { x: 20, y: 40, dot: 2.4, cell: 6.9, line: 10.1, diameter: 1.55 }

/** Dot places of lines of Unicode braille; bit n of the code is dot n + 1 (The Unicode Standard, Braille Patterns). */
export function dotPlaces(lines: string[], layout: Layout): { x: number; y: number }[] {
  return lines.flatMap((cells, line) =>
    [...cells].flatMap((cell, i) =>
      [0, 1, 2, 3, 4, 5]
        .filter((bit) => ((cell.codePointAt(0) ?? 0) - 0x2800) & (1 << bit))
        .map((bit) => ({
          x: layout.x + i * layout.cell + (bit > 2 ? layout.dot : 0),
          y: layout.y + line * layout.line + (bit % 3) * layout.dot,
        })),
    ),
  )
}
