import type { Drawing, DrawnText, Paint, Shape } from '../../src/drawing/drawing.js'
import { boxOfPoints } from '../../src/geometry/box.js'
import type { Contour } from '../../src/geometry/outline.js'
import type { Point } from '../../src/geometry/point.js'
import { translation } from '../../src/geometry/matrix.js'

/** Drawings built by hand, as the reader of drawings would hand them on. */

const SOURCE = { line: 1, column: 1 }

/** `#rrggbb` as a paint. */
export function paint(hex: string, opacity = 1): Paint {
  const part = (i: number) => parseInt(hex.slice(i, i + 2), 16) / 255
  return { rgb: [part(1), part(3), part(5)], opacity, written: hex }
}

export const polygon = (points: [number, number][]): Contour => {
  const [start, ...rest] = points.map(([x, y]): Point => ({ x, y }))
  return { start, segments: rest.map((to) => ({ kind: 'line', to })), closed: true }
}

export const rectangle = (x: number, y: number, width: number, height: number): Contour =>
  polygon([
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ])

/** A polygon of many corners that stands for a circle. */
export const round = (x: number, y: number, radius: number): Contour =>
  polygon(
    Array.from({ length: 48 }, (_, i): [number, number] => {
      const angle = (2 * Math.PI * i) / 48
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)]
    }),
  )

export function shape(contours: Contour[], more: Partial<Shape> = {}): Shape {
  const points = contours.flatMap((c) => [c.start, ...c.segments.map((s) => s.to)])
  const box = boxOfPoints(points) ?? { x: 0, y: 0, width: 0, height: 0 }
  return { contours, fill: paint('#000000'), fillRule: 'nonzero', source: SOURCE, labels: { names: [] }, box, ...more }
}

export const dot = (x: number, y: number, more: Partial<Shape> = {}): Shape =>
  shape([round(x, y, 0.775)], { circle: { x, y, radius: 0.775 }, ...more })

/** Dots of cells in a row, 2.4 mm and 6.9 mm apart (our own values, inside Table 703.3.1), first cell's dot 1 at (x, y). */
export function cellsAt(cells: string, x: number, y: number, more: Partial<Shape> = {}): Shape[] {
  return Array.from(cells).flatMap((cell, n) => {
    const bits = (cell.codePointAt(0) ?? 0) - 0x2800
    return [0, 1, 2, 3, 4, 5]
      .filter((i) => (bits >> i) & 1)
      .map((i) => dot(x + 6.9 * n + (i > 2 ? 2.4 : 0), y + 2.4 * (i % 3), more))
  })
}

export function text(written: string, x: number, y: number, more: Partial<DrawnText> = {}): DrawnText {
  return {
    text: written,
    matrix: translation(x, y),
    fontSize: 26,
    fontFamilies: ['DejaVu Sans'],
    fontStyle: 'normal',
    fontWeight: 400,
    letterSpacing: 0,
    textAnchor: 'start',
    positions: [],
    unsupported: [],
    fill: paint('#000000'),
    source: SOURCE,
    labels: { names: [] },
    after: 1,
    ...more,
  }
}

export const drawing = (shapes: Shape[], texts: DrawnText[] = [], more: Partial<Drawing> = {}): Drawing => ({
  viewport: { width: 200, height: 100 },
  scale: { millimetresPerUnit: 1, from: 'units' },
  shapes,
  texts,
  ignored: [],
  assumptions: [],
  ...more,
})
