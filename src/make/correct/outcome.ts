import type { Edit } from '../../drawing/rewrite.js'
import type { Shape } from '../../drawing/drawing.js'
import type { Point } from '../../geometry/point.js'

/** What a step of a correction does to the text, and what it means to do to what is drawn: the two are held against each other. */
export interface Rewrite {
  edits: Edit[]
  /** Contours that go, by their shape. */
  removed: ReadonlyMap<Shape, ReadonlySet<number>>
  /** Contours that move, in millimetres, by their shape. */
  moved: ReadonlyMap<Shape, ReadonlyMap<number, Point>>
  /** Shapes that get another colour, sRGB components 0 to 1. */
  recoloured: ReadonlyMap<Shape, Rgb>
  /** Live texts that get another colour, by their number among the drawn texts. */
  retinted: ReadonlyMap<number, Rgb>
  /** Dots that come: their middles, and their width without a stroke. */
  added: { x: number; y: number; width: number }[]
}

export type Rgb = readonly [number, number, number]

export const NO_CHANGE: Rewrite = {
  edits: [],
  removed: new Map(),
  moved: new Map(),
  recoloured: new Map(),
  retinted: new Map(),
  added: [],
}

/** Why something is not done, in one sentence. */
export class NotCorrectable {
  constructor(readonly why: string) {}
}
