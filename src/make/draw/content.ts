import { boxOfContour, flatten } from '../../geometry/curve.js'
import { unionOfBoxes, type Box } from '../../geometry/box.js'
import { boxed, nearestTo as nearestDot } from '../../geometry/dots.js'
import type { Contour } from '../../geometry/outline.js'
import type { Point } from '../../geometry/point.js'
import { middleOf, nearestTo } from './aim.js'
import type { DotBlock } from './dots.js'
import { widest } from './lines.js'
import type { Placed, SetLine } from './setting.js'
import { mapContour } from './typeface.js'
import type { Wanted } from './wanted.js'

/** Text, braille and the field of a pictogram in place to each other; the panel comes later. Millimetres, y down. */

export type SetAlignment = 'flush-left' | 'centred' | 'flush-right'

export interface DrawnLine {
  text: string
  /** Its left end, below the left edge of the first outline. */
  baseline: Point
  /** One entry for each character. */
  characters: { character: string; contours: Contour[] }[]
}

export interface DrawnBraille {
  lines: { cells: string; dots: Point[] }[]
  diameter: number
}

export interface Content {
  lines: DrawnLine[]
  braille?: DrawnBraille
  field?: Box
  box: Box
  /** From the edges of the dots to the outlines; Infinity without braille. */
  clearance: number
}

export interface Parts {
  lines: SetLine[]
  characterHeight: number
  alignment: SetAlignment
  dots: DotBlock | undefined
  /** Height of the field. */
  field: number | undefined
  /** Where in the window of line spacing the lines stand, 0 to 1. */
  leading: number
}

/** Shares of the character height between which lines stand where nothing is asked (2010 ADA Standards, 703.2.8). */
const USUAL_LEADING = { min: 1.35, max: 1.7 }
/** Between the field of a pictogram and its text, millimetres (common practice, no source). */
const BELOW_FIELD = 10

export function compose(parts: Parts, wanted: Wanted): Content {
  const { lines, characterHeight, alignment, dots, field } = parts
  const prefix = wanted.part === 'visual' ? 'visual' : 'raised'
  const { min, max } = { ...USUAL_LEADING, ...wanted.ends(`${prefix}.lineSpacing`) }
  const leading = (min + parts.leading * (max - min)) * characterHeight
  const width = widest(lines)
  const drawn = lines.map((line, i) => drawLine(line, indent(line.width, width, alignment), i * leading))
  const below = dots && putBelow(dots, drawn, width, alignment, wanted)
  const braille = below?.block
  const clearance = below?.clearance ?? Infinity
  const boxes = [...drawn.map(boxOfLine), ...(braille ? [boxOfBraille(braille)] : [])]
  const text = unionOfBoxes(boxes) ?? { x: 0, y: 0, width: 0, height: 0 }
  if (field === undefined) return { lines: drawn, ...(braille && { braille }), box: text, clearance }
  const wide = Math.max(field, text.width)
  const own = { x: text.x, y: text.y - BELOW_FIELD - field, width: wide, height: field }
  return { lines: drawn, ...(braille && { braille }), field: own, box: unionOfBoxes([text, own]) ?? own, clearance }
}

function indent(width: number, whole: number, alignment: SetAlignment): number {
  if (alignment === 'flush-left') return 0
  return alignment === 'centred' ? (whole - width) / 2 : whole - width
}

function drawLine({ text, placed }: SetLine, left: number, baseline: number): DrawnLine {
  const at = (x: number) => (p: Point) => ({ x: left + x + p.x, y: baseline + p.y })
  return {
    text,
    baseline: { x: left, y: baseline },
    characters: placed.map(({ glyph, x }: Placed) => ({
      character: glyph.character,
      contours: glyph.contours.map((contour) => mapContour(contour, at(x))),
    })),
  }
}

const contoursOf = ({ characters }: DrawnLine): Contour[] => characters.flatMap(({ contours }) => contours)

const boxOfLine = (line: DrawnLine): Box | undefined => unionOfBoxes(contoursOf(line).map(boxOfContour))

export function boxOfBraille({ lines, diameter }: DrawnBraille): Box {
  const dots = lines.flatMap((line) => line.dots)
  const left = Math.min(...dots.map(({ x }) => x)) - diameter / 2
  const top = Math.min(...dots.map(({ y }) => y)) - diameter / 2
  const right = Math.max(...dots.map(({ x }) => x)) + diameter / 2
  const bottom = Math.max(...dots.map(({ y }) => y)) + diameter / 2
  return { x: left, y: top, width: right - left, height: bottom - top }
}

/** The braille below the last line, as its gap from the baseline or its clearance from the outlines is asked. */
function putBelow(dots: DotBlock, text: DrawnLine[], width: number, alignment: SetAlignment, wanted: Wanted) {
  const block: DrawnBraille = { lines: dots.lines, diameter: dots.sizes.diameter }
  const own = boxOfBraille(block)
  // Flush left the first column of cells stands at the edge of the text, whether or not it has dots.
  const x = alignment === 'flush-left' ? 0 : indent(own.width, width, alignment) - own.x
  const baseline = Math.max(...text.map((line) => line.baseline.y))
  const at = (gap: number): DrawnBraille => moveBraille(block, x, baseline + gap - own.y)
  const clearanceAt = clearances(at, text)
  const gap = gapBelow(clearanceAt, wanted)
  return { block: at(gap), clearance: clearanceAt(gap) }
}

export const moveBraille = ({ lines, diameter }: DrawnBraille, x: number, y: number): DrawnBraille => ({
  lines: lines.map((line) => ({ cells: line.cells, dots: line.dots.map((dot) => ({ x: dot.x + x, y: dot.y + y })) })),
  diameter,
})

/** Within a window with one end, and where none is asked, millimetres. */
const CLEARANCE_INSIDE = 1
const USUAL_CLEARANCE = 10.5
const EXACT = 0.0005
const MOST_STEPS = 12
const MOST_WORK = 10_000_000
const TOLERANCE = 0.0005

/** From the edges of the dots to the outlines, by the gap from the baseline. */
function clearances(at: (gap: number) => DrawnBraille, text: DrawnLine[]): (gap: number) => number {
  const outlines = boxed(text.flatMap(contoursOf).map((contour) => flatten(contour, TOLERANCE)))
  return (gap) => {
    const { lines, diameter } = at(gap)
    const dots = lines.flatMap((line) => line.dots)
    const found = nearestDot(outlines, dots, MOST_WORK)
    return typeof found === 'object' ? found.distance - diameter / 2 : 0
  }
}

function gapBelow(clearanceAt: (gap: number) => number, wanted: Wanted): number {
  const gaps = wanted.ends('braille.textGap')
  const wish = middleOf(wanted.ends('braille.characterClearance'), CLEARANCE_INSIDE, USUAL_CLEARANCE)
  if (!wanted.asks('braille.textGap')) return gapFor(clearanceAt, wish)
  const gap = middleOf(gaps, CLEARANCE_INSIDE, USUAL_CLEARANCE)
  return wanted.asks('braille.characterClearance') ? nearestTo(gapFor(clearanceAt, wish), gaps, 0) : gap
}

/** The gap from the baseline at which the dots are so far from the outlines: what hangs below the baseline comes nearer. */
function gapFor(clearance: (gap: number) => number, wanted: number): number {
  let gap = wanted
  for (let i = 0; i < MOST_STEPS; i++) {
    const off = wanted - clearance(gap)
    if (Math.abs(off) < EXACT) break
    gap += off
  }
  return gap
}

/** Everything moved alike. */
export function moveContent({ lines, braille, field, box, clearance }: Content, x: number, y: number): Content {
  const moved = (p: Point): Point => ({ x: p.x + x, y: p.y + y })
  return {
    lines: lines.map((line) => ({
      text: line.text,
      baseline: moved(line.baseline),
      characters: line.characters.map(({ character, contours }) => ({
        character,
        contours: contours.map((contour) => mapContour(contour, moved)),
      })),
    })),
    ...(braille && { braille: moveBraille(braille, x, y) }),
    ...(field && { field: { ...field, ...moved(field) } }),
    box: { ...box, ...moved(box) },
    clearance,
  }
}
