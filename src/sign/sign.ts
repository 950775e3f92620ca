import type { Box } from '../geometry/box.js'
import type { Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import type { Installation } from './installation.js'
import type {
  Alignment,
  BrailleCode,
  Carrier,
  DotShape,
  Edge,
  Finish,
  LetteringPart,
  Section,
  SymbolShape,
  TypefaceStyle,
  Use,
} from './vocabulary.js'

export * from './vocabulary.js'
export type { Installation, NeighbouringDoor } from './installation.js'

/**
 * The one model that a drawing and a sign description both become. Everything after it knows only this. Lengths are
 * millimetres, x to the right and y down from the panel's top left corner (or the drawing's, when no panel is known).
 * Every field that a requirement may ask for is a `Fact`: known with its origin, or unknown with the reason.
 */
export interface Sign {
  mark?: string
  use: Use
  panel: Panel
  lettering: Lettering[]
  braille: BrailleBlock[]
  pictograms: Pictogram[]
  borders: Border[]
  /** Words that may keep their capital sign in braille; undefined when nobody said. */
  properNames?: string[]
  installation: Installation
  measured: MeasuredQuantity[]
  /** What was seen but not understood: what depends on it is undetermined, never failed. */
  unread: Unread[]
  assumptions: Assumption[]
  ignored: Ignored[]
}

/** Where a value comes from: said by the client, taken from the drawing's geometry, or read off a gauge. */
export type Basis = 'declared' | 'drawn' | 'measured'

export interface Known<T> {
  value: T
  basis: Basis
  /** For a value that stands for several: the extremes and how many. `value` is then the mean or the fit. */
  min?: T
  max?: T
  count?: number
  /** Standard uncertainty of `value` (one standard deviation), in the value's unit. */
  uncertainty?: number
  /** How it was got, for people. */
  method?: string
  /** Elements that show the extremes, when they are not the whole part. */
  places?: Place[]
  /** Of a distance between neighbouring characters: those that have the least and the greatest. */
  between?: Between
}

export interface Between {
  least: [string, string]
  most: [string, string]
}

export type WhyUnknown = 'missing-fact' | 'needs-judgement' | 'unreadable' | 'limit-reached'

export interface Unknown {
  unknown: WhyUnknown
  /** One sentence for people. */
  why: string
  /** What is not given, where a place cannot be told without something else than the place itself. */
  key?: 'baselineSpacing' | 'dotSpacing' | 'lineSpacing'
}

export type Fact<T> = Known<T> | Unknown

export const isKnown = <T>(fact: Fact<T> | undefined): fact is Known<T> => fact !== undefined && 'value' in fact
export const declared = <T>(value: T): Known<T> => ({ value, basis: 'declared' })
export const missing = (why = 'not given'): Unknown => ({ unknown: 'missing-fact', why })

/** Where a thing is: on the sign, in the client's description, in the client's drawing. */
export interface Place {
  /** A path of our own: `panel`, `lettering/0`, `lettering/0/line/1`, `braille/0/line/0/cell/3`, `installation`. */
  element: string
  box?: Box
  /** JSON Pointer into the request body, when the thing was described. */
  pointer?: string
  source?: { id?: string; line: number; column: number }
}

/** A colour by its reflectance; `css` when it was given or drawn as an sRGB colour. */
export interface Colour {
  css?: string
  /** Relative luminance Y, 0 to 1 (WCAG 2.2 definition), or LRV / 100 when the colour was given by its LRV. */
  luminance: number
}

export interface Panel {
  place: Place
  /** Where it is drawn turned: degrees from the drawing's x axis to the side that is its width, and where its corners are. */
  turned?: { rotation: number; corners: Point[] }
  width: Fact<number>
  height: Fact<number>
  finish: Fact<Finish>
  colour: Fact<Colour>
  edge: Fact<Edge>
}

export interface Lettering {
  place: Place
  part: LetteringPart
  /** The client did not say which part it is: a drawing that says otherwise wins without a conflict. */
  partAssumed?: boolean
  text: Fact<string>
  lines: LetteringLine[]
  family?: string
  style: Fact<TypefaceStyle>
  /** Width of O over height of I. */
  characterProportion: Fact<number>
  characterHeight: Fact<number>
  strokeThickness: Fact<number>
  strokeThicknessAtBase: Fact<number>
  relief: Fact<number>
  section: Fact<Section>
  /** Least distance between the outlines of neighbouring characters; `min` and `max` over the pairs. */
  characterSpacing: Fact<number>
  characterSpacingAtBase: Fact<number>
  /** Least gap between neighbouring words of one line, as described; a drawing shows it in its outlines. */
  wordSpacing: Fact<number>
  /** How the lines stand among each other, as described; a drawing shows it in its outlines. */
  alignment: Fact<Alignment>
  /** Distance of successive baselines; undefined when there is one line. */
  baselineSpacing?: Fact<number>
  finish: Fact<Finish>
  colour: Fact<Colour>
  /** What is behind the characters. */
  background: Fact<Colour>
  /** How they lie on the drawing; undefined when they were not read or not drawn. */
  lie?: Lie
}

export interface LetteringLine {
  place: Place
  text: Fact<string>
  /** Left end of the baseline. */
  baseline: Fact<Point>
  /** Filled contours of the characters as closed polylines, when drawn. Empty for a description. */
  outlines: Polyline[]
}

export interface BrailleBlock {
  place: Place
  lines: BrailleLine[]
  /** The code that the description declares, if any. */
  code?: BrailleCode
  /** As described; undefined when nobody said. */
  carrier?: Carrier
  dotBaseDiameter: Fact<number>
  dotHeight: Fact<number>
  dotShape: Fact<DotShape>
  dotSpacing: Fact<number>
  cellSpacing: Fact<number>
  /** Undefined when there is one line. */
  lineSpacing?: Fact<number>
  /** How it stands under its text, as described. */
  alignment: Fact<Alignment>
  /**
   * Degrees, clockwise as seen, from the drawing's x axis to the reading direction, after the mirror is taken away (left and
   * right exchanged): a plain mirror image has rotation 0.
   */
  rotation: number
  /** Drawn for reading from the other side (the back of clear sheet). */
  mirrored: boolean
  /** Described, while the drawing of the sign shows no braille. */
  undrawn?: Unknown
}

/** How characters lie on the drawing, told as for braille. */
export type Lie = Pick<BrailleBlock, 'rotation' | 'mirrored'>

export interface BrailleLine {
  place: Place
  /** Unicode braille, U+2800 for a blank cell. */
  cells: Fact<string>
  /** The print text that these cells say, only when translating it forward gives the same cells. */
  text?: string
  /** Dot centres, when their places are known (drawn, or computed from a described origin). */
  dots: Point[]
  /** Middle of the row of dots 3 and 6 at the line's left end, when known. */
  baseline: Fact<Point>
}

export interface Pictogram {
  place: Place
  meaning?: string
  /** As described; undefined when nobody said: then it is no symbol that is told by its outline. */
  shape?: SymbolShape
  /** The field: the whole background area set apart for the pictogram. */
  field: Fact<Box>
  colour: Fact<Colour>
  fieldColour: Fact<Colour>
  finish: Fact<Finish>
  /** Height of the figure in the field, as described. */
  figureHeight: Fact<number>
  /** Box of the figure as drawn. */
  figure?: Box
  /** As drawn: of the field, where there is one, and of the figure. */
  outlines?: { field?: Polyline; figure: Polyline[] }
  symbol: SymbolSizes
}

/** Sizes of a symbol that is told by its outline. */
export interface SymbolSizes {
  /** Edge of the equilateral triangle. */
  triangleEdge: Fact<number>
  circleDiameter: Fact<number>
  thickness: Fact<number>
  /** Height of its centre above the finish floor. */
  centreHeight: Fact<number>
  /** From its centre to the upright centreline of the door. */
  doorCentreOffset: Fact<number>
}

export interface Border {
  place: Place
  /** Outer edge. */
  box: Box
  width: Fact<number>
  raised: Fact<boolean>
  colour: Fact<Colour>
  /** Contours as closed polylines when drawn; else empty and the border is the frame of `box`, `width` thick. */
  outlines: Polyline[]
}

export interface MeasuredQuantity {
  quantity: string
  /** In millimetres, as a ratio, or in the unit of the quantity's own. */
  values: number[]
  /** k = 2, same unit as the values. */
  expandedUncertainty?: number
  instrument?: string
  place: Place
}

export interface Unread {
  place: Place
  why: string
  couldBe: ('braille' | 'lettering' | 'pictogram' | 'border' | 'colour')[]
}

export interface Assumption {
  /** One word for what was assumed: `scale`, `part`, `panel`, `use`, `conflict` … */
  about: string
  text: string
  /** What was assumed is probably wrong, and much hangs on it. */
  isDoubtful?: true
}

export interface Ignored {
  source: { id?: string; line: number; column: number }
  why: string
}
