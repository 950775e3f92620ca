import type { Font } from 'fontkit'
import { boxOfContour, flatten } from '../geometry/curve.js'
import type { Contour, Polyline } from '../geometry/outline.js'
import { unionOfBoxes, type Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'

/**
 * Measures of a typeface, taken from its outlines in font units (y down here, the baseline at 0): the sizes that the
 * standards define on the capitals I and O. TrueType's quadratic curves become cubics without loss.
 */

export interface CapitalMeasures {
  /** Height of the capital I. */
  height: number
  /** Width of the capital O over the height of the capital I. */
  proportion: number
  /** Width of the stem of the capital I, cut at half its height. */
  stem: number
}

const contoursByFont = new WeakMap<Font, Map<number, Contour[]>>()
const measuresByFont = new WeakMap<Font, CapitalMeasures | undefined>()
/** Font units; an em has a thousand or more. */
const TOLERANCE = 0.05

/** The contours of a glyph in font units, y down. */
export function contoursOfGlyph(font: Font, id: number): Contour[] {
  let known = contoursByFont.get(font)
  if (!known) contoursByFont.set(font, (known = new Map<number, Contour[]>()))
  let contours = known.get(id)
  if (!contours) known.set(id, (contours = readContours(font, id)))
  return contours
}

function readContours(font: Font, id: number): Contour[] {
  const contours: Contour[] = []
  let last: Point = { x: 0, y: 0 }
  for (const { command, args } of font.getGlyph(id).path.commands) {
    const point = (i: number): Point => ({ x: args[i], y: -args[i + 1] })
    if (command === 'moveTo') contours.push({ start: (last = point(0)), segments: [], closed: true })
    const segments = contours.at(-1)?.segments
    if (!segments) continue
    if (command === 'lineTo') segments.push({ kind: 'line', to: (last = point(0)) })
    if (command === 'bezierCurveTo') segments.push({ kind: 'cubic', c1: point(0), c2: point(2), to: (last = point(4)) })
    if (command === 'quadraticCurveTo') {
      const [from, q, to] = [last, point(0), point(2)]
      segments.push({ kind: 'cubic', c1: towards(from, q), c2: towards(to, q), to: (last = to) })
    }
  }
  return contours.filter((c) => c.segments.length > 0)
}

/** Two thirds of the way to a quadratic's control point: where the cubic's control point lies. */
const towards = (from: Point, control: Point): Point => ({
  x: from.x + (2 / 3) * (control.x - from.x),
  y: from.y + (2 / 3) * (control.y - from.y),
})

/** The measures of a face, or undefined when it has no capital I or O. */
export function capitalMeasures(font: Font): CapitalMeasures | undefined {
  if (measuresByFont.has(font)) return measuresByFont.get(font)
  const i = outlineOf(font, 'I')
  const o = outlineOf(font, 'O')
  const measures = i && o ? measure(i, o, font.italicAngle) : undefined
  measuresByFont.set(font, measures)
  return measures
}

interface Outline {
  box: Box
  polylines: Polyline[]
}

function outlineOf(font: Font, character: string): Outline | undefined {
  const code = character.codePointAt(0) ?? 0
  if (!font.hasGlyphForCodePoint(code)) return undefined
  const contours = contoursOfGlyph(font, font.glyphForCodePoint(code).id)
  const box = unionOfBoxes(contours.map(boxOfContour))
  return box && { box, polylines: contours.map((c) => flatten(c, TOLERANCE)) }
}

function measure(i: Outline, o: Outline, italicAngle: number): CapitalMeasures | undefined {
  const cut = widthOfCut(i.polylines, i.box.y + i.box.height / 2)
  if (cut === undefined) return undefined
  const stem = cut * Math.cos((italicAngle * Math.PI) / 180)
  return { height: i.box.height, proportion: o.box.width / i.box.height, stem }
}

/** How wide the ink is along a horizontal line, when the line meets it in one piece. */
function widthOfCut(polylines: readonly Polyline[], y: number): number | undefined {
  const crossings = polylines.flatMap((polyline) =>
    polyline.flatMap((a, n) => {
      const b = polyline[(n + 1) % polyline.length]
      return a.y <= y !== b.y <= y ? [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)] : []
    }),
  )
  return crossings.length === 2 ? Math.abs(crossings[1] - crossings[0]) : undefined
}
