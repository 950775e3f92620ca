import { breakLines } from '../../braille/layout.js'
import { dotsOfLine, lineWidth, type Spacing } from '../../braille/cells.js'
import type { Point } from '../../geometry/point.js'
import { middleOf } from './aim.js'
import type { Wanted } from './wanted.js'

/** The braille of a sign: its sizes at the middle of their windows, and its lines. */

export interface DotSizes extends Spacing {
  diameter: number
}

/** Where nothing is asked: the middle of what the standards of most places allow (2010 ADA Standards, table 703.3.1). */
const USUAL: DotSizes = { diameter: 1.55, dotSpacing: 2.4, cellSpacing: 6.85, lineSpacing: 10.1 }
/** Within a window with one end, millimetres. */
const INSIDE = 0.1

export const sizesOf = ({ ends }: Wanted): DotSizes => ({
  diameter: middleOf(ends('braille.dotBaseDiameter'), INSIDE, USUAL.diameter),
  dotSpacing: middleOf(ends('braille.dotSpacing'), INSIDE, USUAL.dotSpacing),
  cellSpacing: middleOf(ends('braille.cellSpacing'), INSIDE, USUAL.cellSpacing),
  lineSpacing: middleOf(ends('braille.lineSpacing'), INSIDE, USUAL.lineSpacing),
})

/** Lines of cells with their dots, the edge of the first column of bases at the origin, in millimetres. */
export interface DotBlock {
  sizes: DotSizes
  lines: { cells: string; dots: Point[] }[]
  /** From the edge of the first column to that of the last one of the widest line, and from the top dots to the lowest row. */
  width: number
  height: number
  tooWide: boolean
}

const DOT_ROWS = 3

export const widthOf = (cells: string, sizes: DotSizes): number =>
  lineWidth(Array.from(cells).length, sizes) + sizes.diameter

/** @param width that the lines may have, bases included */
export function setCells(cells: string, sizes: DotSizes, width: number): DotBlock {
  const radius = sizes.diameter / 2
  const broken = breakLines(cells, width - sizes.diameter, sizes)
  const lines = broken.lines.map((line, i) => ({
    cells: line,
    dots: dotsOfLine(line, { ...sizes, origin: { x: radius, y: radius + i * sizes.lineSpacing } }),
  }))
  return {
    sizes,
    lines,
    width: Math.max(...broken.lines.map((line) => widthOf(line, sizes))),
    height: (lines.length - 1) * sizes.lineSpacing + (DOT_ROWS - 1) * sizes.dotSpacing + sizes.diameter,
    tooWide: broken.tooWide.length > 0,
  }
}
