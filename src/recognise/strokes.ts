import type { Drawing, Shape, Stroke } from '../drawing/drawing.js'
import type { Contour } from '../geometry/outline.js'
import { boxOfContour } from '../geometry/curve.js'
import type { Assumption, Fact, Known, Unknown } from '../sign/sign.js'
import type { LetterMeasures } from './letters/measure.js'
import type { Piece } from './pieces.js'

/**
 * Whether a stroke is material. A painted stroke makes a shape larger by half its width all round (SVG 1.1, 11.4). Some
 * programs, though, draw the same thin line round everything that they export, only to make it visible.
 */

/** A stroke so thin is a hairline, millimetres: no machine makes it. */
const HAIRLINE = 0.02
/** Widths that differ by less are one width, millimetres. */
const SAME_WIDTH = 0.005
/** Components of two colours that differ by more than this are not one colour: a step of an 8-bit screen. */
const SAME_COLOUR = 1 / 255
/** What may be a character: so high, millimetres, and with so many corners or curves. */
const CHARACTER = { min: 4, max: 120, segments: 6 }

/**
 * The drawing without the strokes that are only the outline of its fills: each shape has a fill, and round it the same stroke
 * in another colour, characters and dots alike.
 */
export function withoutOutlines(drawing: Drawing): { drawing: Drawing; assumptions: Assumption[] } {
  const [first, ...others] = drawing.shapes
  const stroke = first && outlineOf(first)
  const uniform = stroke !== undefined && others.every((shape) => alike(outlineOf(shape), stroke))
  if (!uniform || !drawing.shapes.some((s) => s.contours.some(couldBeCharacter))) return { drawing, assumptions: [] }
  const text =
    `Every shape has the same stroke of ${stroke.width.toFixed(2)} mm round its fill: it is taken for an outline that ` +
    'only shows the shape, and sizes are those of the fills. If it is material, every shape is larger by its width.'
  const shapes = drawing.shapes.map((shape) => ({ ...shape, stroke: undefined }))
  return { drawing: { ...drawing, shapes }, assumptions: [{ about: 'stroke', text }] }
}

const isPainted = (stroke: Stroke | undefined): stroke is Stroke =>
  stroke !== undefined && stroke.opacity > 0 && stroke.width > HAIRLINE

function outlineOf({ fill, stroke }: Shape): Stroke | undefined {
  if (!fill || fill.opacity <= 0 || !fill.rgb || !isPainted(stroke)) return undefined
  const { rgb } = stroke
  const other = rgb !== undefined && rgb.some((v, i) => Math.abs(v - (fill.rgb?.[i] ?? v)) > SAME_COLOUR)
  return other ? stroke : undefined
}

const alike = (a: Stroke | undefined, b: Stroke) =>
  a !== undefined && a.written === b.written && Math.abs(a.width - b.width) <= SAME_WIDTH

function couldBeCharacter(contour: Contour): boolean {
  const { height } = boxOfContour(contour)
  return height >= CHARACTER.min && height <= CHARACTER.max && contour.segments.length >= CHARACTER.segments
}

/** Measures of outlines, with half of the stroke that is painted along their edges on each side. */
export function withStrokes(measures: LetterMeasures, pieces: readonly Piece[]): LetterMeasures {
  const widths = pieces.map(({ shape }) =>
    shape.fill && shape.fill.opacity > 0 && isPainted(shape.stroke) ? shape.stroke.width : 0,
  )
  const [least, most] = [Math.min(...widths), Math.max(...widths)]
  if (most === 0) return measures
  if (most - least > SAME_WIDTH) {
    const doubt: Unknown = {
      unknown: 'needs-judgement',
      why: 'the characters have strokes of several widths round their fills',
    }
    return {
      ...measures,
      characterHeight: doubt,
      characterProportion: doubt,
      strokeThickness: doubt,
      characterSpacing: doubt,
    }
  }
  return {
    ...measures,
    characterHeight: enlarged(measures.characterHeight, most),
    characterProportion: widened(measures.characterProportion, measures.characterHeight, most),
    strokeThickness: enlarged(measures.strokeThickness, most),
    characterSpacing: enlarged(measures.characterSpacing, -most),
  }
}

const WITH_STROKE = 'half the painted stroke on each side included'

function mapped(fact: Fact<number>, map: (value: number) => number): Fact<number> {
  if (!('value' in fact)) return fact
  const { min, max, method } = fact
  return {
    ...fact,
    value: map(fact.value),
    ...(min !== undefined && { min: map(min) }),
    ...(max !== undefined && { max: map(max) }),
    method: method === undefined ? WITH_STROKE : `${method}, ${WITH_STROKE}`,
  }
}

const enlarged = (fact: Fact<number>, by: number): Fact<number> => mapped(fact, (value) => Math.max(0, value + by))

/** A width over a height, when both grow alike. */
function widened(proportion: Fact<number>, height: Fact<number>, by: number): Fact<number> {
  if (!isNumber(height)) return proportion
  return mapped(proportion, (value) => (value * height.value + by) / (height.value + by))
}

const isNumber = (fact: Fact<number>): fact is Known<number> => 'value' in fact
