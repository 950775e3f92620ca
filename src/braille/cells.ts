import type { Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'

/**
 * Braille cells as characters: U+2800 plus one bit per raised dot, dot 1 the lowest (The Unicode Standard, chapter 21,
 * Braille Patterns). Dots 1, 2, 3 stand in the left column from the top, dots 4, 5, 6 in the right one.
 */
export const BLANK = '\u2800'
const FIRST_CODE = 0x2800
const SIX_DOT_CODES = 64
const DOTS = [1, 2, 3, 4, 5, 6] as const
const ROWS = 3

/** All lengths in millimetres, centre to centre. */
export interface Spacing {
  dotSpacing: number
  cellSpacing: number
  lineSpacing: number
}

export interface BlockPlace extends Spacing {
  /** Centre of dot 1 of the first cell. */
  origin: Point
}

/** Whether a string is six-dot cells only (blank cells as U+2800). */
export const isCells = (text: string): boolean => /^[\u2800-\u283f]*$/.test(text)

/** The raised dots of every cell, by its bits. */
const RAISED = Array.from({ length: SIX_DOT_CODES }, (_, bits) => DOTS.filter((dot) => bits & (1 << (dot - 1))))

/** The raised dots of one cell, ascending: `⠓` → [1, 2, 5]. */
export function dotsOfCell(cell: string): readonly number[] {
  const dots = RAISED[(cell.codePointAt(0) ?? FIRST_CODE) - FIRST_CODE]
  if (!dots) throw new RangeError(`${cell} is not a six-dot braille cell.`)
  return dots
}

/** The cell with these dots raised: [1, 2, 5] → `⠓`. */
export function cellOfDots(dots: Iterable<number>): string {
  let bits = 0
  for (const dot of dots) {
    if (!Number.isInteger(dot) || dot < 1 || dot > DOTS.length)
      throw new RangeError(`There is no dot ${dot} in a cell.`)
    bits |= 1 << (dot - 1)
  }
  return String.fromCodePoint(FIRST_CODE + bits)
}

/** Words of cells: split at blank cells (or spaces), empty ones dropped. */
export const cellWords = (cells: string): string[] => cells.split(/[\u2800\s]+/u).filter((word) => word !== '')

/** The same cells with spaces as blank cells, runs of blanks made one and none at the ends. */
export const tidyCells = (cells: string): string => cellWords(cells).join(BLANK)

/** Centres of the raised dots of one line of cells, cell by cell in the order of the dot numbers. */
export function dotsOfLine(cells: string, { origin, cellSpacing, dotSpacing }: BlockPlace): Point[] {
  const points: Point[] = []
  let column = 0
  for (const cell of cells) {
    const left = origin.x + column++ * cellSpacing
    for (const dot of dotsOfCell(cell))
      points.push({ x: left + (dot > ROWS ? dotSpacing : 0), y: origin.y + ((dot - 1) % ROWS) * dotSpacing })
  }
  return points
}

/** Centres of the raised dots of a block, one array for each line; lines stand flush left under each other. */
export function dotsOfLines(lines: readonly string[], place: BlockPlace): Point[][] {
  return lines.map((cells, row) =>
    dotsOfLine(cells, { ...place, origin: { x: place.origin.x, y: place.origin.y + row * place.lineSpacing } }),
  )
}

/** Centres of all raised dots of a block, x to the right and y down, in millimetres. */
export const dotPositions = (lines: readonly string[], place: BlockPlace): Point[] => dotsOfLines(lines, place).flat()

/** Width of a line of so many full cells, from the left column of dots to the right one, centre to centre. */
export const lineWidth = (cells: number, spacing: Spacing): number =>
  cells === 0 ? 0 : (cells - 1) * spacing.cellSpacing + spacing.dotSpacing

/**
 * The box round the dot centres of a block of full cells, whether or not each dot is raised. Half a dot base is to be
 * added on every side for the space that the dots take up.
 */
export function blockBox(lines: readonly string[], place: BlockPlace): Box {
  const cells = Math.max(0, ...lines.map((line) => Array.from(line).length))
  const height = lines.length === 0 ? 0 : (lines.length - 1) * place.lineSpacing + (ROWS - 1) * place.dotSpacing
  return { x: place.origin.x, y: place.origin.y, width: lineWidth(cells, place), height }
}
