import type { Box } from '../geometry/box.js'
import type { Contour } from '../geometry/outline.js'
import type { Matrix } from '../geometry/matrix.js'

/**
 * A drawing after everything that is SVG has been resolved: units, viewBox, transforms, references, styles. All lengths are
 * millimetres from the top left corner of the viewport, x to the right, y down. Shapes are in paint order.
 */
export interface Drawing {
  viewport: { width: number; height: number }
  /** Millimetres per CSS px or user unit that was applied to the root, and where it came from. */
  scale: { millimetresPerUnit: number; from: 'units' | 'css-px' | 'option' }
  shapes: Shape[]
  texts: DrawnText[]
  /** What stands in the drawing but was not understood or is not looked at, with what it may have been hiding. */
  ignored: IgnoredElement[]
  assumptions: { about: string; text: string }[]
}

/** Where in the file an element stands. */
export interface Source {
  id?: string
  line: number
  column: number
}

export interface Labels {
  /** The nearest `data-part` of the element or an ancestor. */
  dataPart?: string
  /** Ids, classes and layer names, the element's own first, then each ancestor's. */
  names: string[]
}

/** One painted shape. A shape that paints nothing (no fill, no stroke, not displayed) is not listed. */
export interface Shape {
  contours: Contour[]
  fill?: Paint
  fillRule: 'nonzero' | 'evenodd'
  stroke?: Stroke
  source: Source
  labels: Labels
  /** Exact when the element is a circle (or an ellipse or arc that the transform leaves circular). */
  circle?: { x: number; y: number; radius: number }
  /** Round the contours themselves: half a painted stroke is not included. */
  box: Box
}

/** sRGB components 0 to 1 and the opacity that is left after all group opacities; undefined colour: not understood. */
export interface Paint {
  rgb?: [number, number, number]
  /** Of a gradient, when its colours are known and differ: red, green, blue and the opacity that is left, each 0 to 1. */
  stops?: [number, number, number, number][]
  opacity: number
  /** The paint as written, for messages. */
  written: string
}

export interface Stroke extends Paint {
  /** In millimetres, after the transform (geometric mean when the scale is unequal). */
  width: number
  linecap: 'butt' | 'round' | 'square'
  linejoin: 'miter' | 'round' | 'bevel'
  dashed: boolean
}

/** A run of live text with one style: characters, not outlines. */
export interface DrawnText {
  text: string
  /**
   * Maps the user space in which the run stands (y down) to millimetres. `positions`, `fontSize` and `letterSpacing` are in
   * that user space; the baseline runs along its x axis.
   */
  matrix: Matrix
  /** In the run's user units before `matrix` is applied; height in mm is fontSize times the matrix's scale. */
  fontSize: number
  fontFamilies: string[]
  fontStyle: string
  fontWeight: number
  letterSpacing: number
  /** Added to the advance of each blank, in user units; absent: none. */
  wordSpacing?: number
  /** The length that the run is to take up, in user units, and how: only where one run is all of the element that says so. */
  fitted?: { length: number; adjust: 'spacing' | 'spacingAndGlyphs' }
  textAnchor: 'start' | 'middle' | 'end'
  /**
   * One entry for each UTF-16 unit of `text`: the absolute start of the character where the file fixes it (x, y, dx, dy
   * lists), in user units; else undefined. The first character of a run always has its `y`, all shifts included; it has its
   * `x` unless the run goes on where the run before it in the same text ended. `dx` is given only where `x` is not known.
   */
  positions: ({ x?: number; y?: number; dx?: number; dy?: number; rotate?: number } | undefined)[]
  /** Things in the markup that change the layout and are not carried out (textLength, textPath, writing-mode …). */
  unsupported: string[]
  /** The run goes on after the run before it in `texts`: its start depends on how wide that one is. */
  continues?: boolean
  fill?: Paint
  source: Source
  labels: Labels
  /** Position among `shapes` in paint order: this many shapes were painted before. */
  after: number
}

export interface IgnoredElement {
  source: Source
  why: string
  /** What it may have been, if it had been understood. Empty: certainly nothing that is judged. */
  couldBe: ('braille' | 'lettering' | 'pictogram' | 'border' | 'colour')[]
  box?: Box
  /** What it is called, where that is known: it may have been named as something to be ignored. */
  labels?: Labels
}
