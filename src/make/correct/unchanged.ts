import type { Drawing, DrawnText, Paint, Shape } from '../../drawing/drawing.js'
import { boxOfContour } from '../../geometry/curve.js'
import { centreOfBox } from '../../geometry/box.js'
import type { Contour } from '../../geometry/outline.js'
import type { Point } from '../../geometry/point.js'
import type { Rewrite, Rgb } from './outcome.js'

/**
 * Whether a changed drawing shows what was meant and nothing else: every other contour, paint and text is in its place, in the same
 * order. Style sheets, references and clips may make of a small change of the text a large one of what is drawn; here it shows.
 */

/** Rounding of coordinates that were written anew, millimetres. */
const SAME_PLACE = 0.002
/** Components of one colour that was written and read again: half a step of eight bits. */
const SAME_COLOUR = 0.5 / 255

interface Drawn {
  contour: Contour
  fill?: Paint
  stroke?: Shape['stroke']
  rule: Shape['fillRule']
}

export function showsOnly(rewrite: Rewrite, before: Drawing, after: Drawing): boolean {
  const wanted = before.shapes.flatMap((shape) => contoursAfter(shape, rewrite))
  const { drawn, found } = withoutAdded(after.shapes.flatMap(contoursOf), rewrite.added)
  return (
    found === rewrite.added.length &&
    drawn.length === wanted.length &&
    wanted.every((one, i) => alike(one, drawn[i])) &&
    textsAlike(before.texts, after.texts, rewrite) &&
    before.ignored.length === after.ignored.length &&
    before.ignored.every(({ why }, i) => why === after.ignored[i].why)
  )
}

const contoursOf = ({ contours, fill, stroke, fillRule }: Shape): Drawn[] =>
  contours.map((contour) => ({ contour, fill, stroke, rule: fillRule }))

function contoursAfter(shape: Shape, { removed, moved, recoloured }: Rewrite): Drawn[] {
  const colour = recoloured.get(shape)
  return contoursOf(shape).flatMap((one, i): Drawn[] => {
    if (removed.get(shape)?.has(i)) return []
    const by = moved.get(shape)?.get(i)
    const contour = by ? shifted(one.contour, by) : one.contour
    return [{ ...one, contour, fill: colour ? inColour(one.fill, colour) : one.fill }]
  })
}

const inColour = (paint: Paint | undefined, [r, g, b]: Rgb): Paint => ({
  opacity: 1,
  written: '',
  ...paint,
  rgb: [r, g, b],
})

export function shifted({ start, segments, closed }: Contour, by: Point): Contour {
  const there = ({ x, y }: Point): Point => ({ x: x + by.x, y: y + by.y })
  return {
    start: there(start),
    segments: segments.map((s) =>
      s.kind === 'line'
        ? { kind: s.kind, to: there(s.to) }
        : { kind: s.kind, c1: there(s.c1), c2: there(s.c2), to: there(s.to) },
    ),
    closed,
  }
}

function withoutAdded(all: Drawn[], added: Rewrite['added']): { drawn: Drawn[]; found: number } {
  const left = new Set(added)
  const mesh = new Map(added.map((dot) => [keyOf(squareOf(dot.x), squareOf(dot.y)), dot]))
  const drawn = all.filter(({ contour }) => {
    const box = boxOfContour(contour)
    const { x, y } = centreOfBox(box)
    const dot = around(squareOf(x), squareOf(y))
      .map((key) => mesh.get(key))
      .find((one) => one !== undefined && Math.hypot(one.x - x, one.y - y) <= MOST_OFF)
    if (!dot || !left.has(dot)) return true
    if (Math.abs(box.width - dot.width) > MOST_OFF || Math.abs(box.height - dot.width) > MOST_OFF) return true
    left.delete(dot)
    return false
  })
  return { drawn, found: added.length - left.size }
}

/** How far a dot may be from what was meant, in place and size, millimetres. */
const MOST_OFF = 0.01
/** Middles are filed in squares so large, millimetres: no two dots of braille stand in one. */
const SQUARE = 0.5
const squareOf = (at: number): number => Math.floor(at / SQUARE)
const keyOf = (column: number, row: number): string => `${column} ${row}`
const around = (column: number, row: number): string[] =>
  [-1, 0, 1].flatMap((across) => [-1, 0, 1].map((down) => keyOf(column + across, row + down)))

const samePoint = (a: Point, b: Point): boolean =>
  Math.abs(a.x - b.x) <= SAME_PLACE && Math.abs(a.y - b.y) <= SAME_PLACE

function alike(a: Drawn, b: Drawn): boolean {
  const [first, second] = [a.contour, b.contour]
  return (
    a.rule === b.rule &&
    first.closed === second.closed &&
    first.segments.length === second.segments.length &&
    samePoint(first.start, second.start) &&
    first.segments.every((segment, i) => samePoint(segment.to, second.segments[i].to)) &&
    samePaint(a.fill, b.fill) &&
    samePaint(a.stroke, b.stroke) &&
    Math.abs((a.stroke?.width ?? 0) - (b.stroke?.width ?? 0)) <= SAME_PLACE
  )
}

function samePaint(a: Paint | undefined, b: Paint | undefined): boolean {
  if (!a || !b) return a === b
  if (a.opacity !== b.opacity) return false
  if (!a.rgb || !b.rgb) return a.rgb === b.rgb && a.written === b.written
  const other = b.rgb
  return a.rgb.every((value, i) => Math.abs(value - other[i]) <= SAME_COLOUR)
}

function textsAlike(before: readonly DrawnText[], after: readonly DrawnText[], { retinted }: Rewrite): boolean {
  if (before.length !== after.length) return false
  return before.every((text, i) => {
    const colour = retinted.get(i)
    return samePaint(colour ? inColour(text.fill, colour) : text.fill, after[i].fill) && told(text) === told(after[i])
  })
}

/** All of a run but its colour, and its place in the file and in the order of painting. */
const told = ({ text, matrix, fontSize, fontFamilies, fontStyle, fontWeight, letterSpacing, positions }: DrawnText) =>
  JSON.stringify([text, matrix, fontSize, fontFamilies, fontStyle, fontWeight, letterSpacing, positions])
