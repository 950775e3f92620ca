import type { Point } from '../geometry/point.js'
import type { Dot } from './dots.js'
import type { Lattice, LatticeLine } from './lattice.js'

/**
 * Places of a lattice as a reader's cells. Dots are numbered 1 to 3 down the left column and 4 to 6 down the right one, and a
 * cell is the character U+2800 plus one bit per dot, dot 1 the lowest (The Unicode Standard, Braille Patterns).
 */
const FIRST_CELL = 0x2800

/** How the lattice stands on the drawing: as it reads, upside down, seen from the back. */
export interface Facing {
  turned: boolean
  mirrored: boolean
}

export const FACINGS: readonly Facing[] = [
  { turned: false, mirrored: false },
  { turned: true, mirrored: false },
  { turned: false, mirrored: true },
  { turned: true, mirrored: true },
]

/** A dot with its place for a reader: cell counted from the left of its line, dot number 1 to 6. */
export interface ReadDot {
  dot: Dot
  cell: number
  number: number
}

/** One way to read one line. */
export interface LineReading {
  cells: string
  dots: ReadDot[]
  /** Rows moved down and columns moved right from the topmost and leftmost place: 0 and 0 is the natural one. */
  rowShift: number
  columnShift: number
}

/** The lines as a reader of that facing meets them, each with every way to read it, the natural one first. */
export function readingsOf(lattice: Lattice, facing: Facing): LineReading[][] {
  const lines = facing.turned ? [...lattice.lines].reverse() : lattice.lines
  return lines.map((line) => {
    const readings: LineReading[] = []
    for (let rowShift = 0; rowShift <= line.rowSlack; rowShift++)
      for (let columnShift = 0; columnShift <= line.columnSlack; columnShift++)
        readings.push(readingOf(line, facing, rowShift, columnShift))
    return readings
  })
}

function readingOf(line: LatticeLine, facing: Facing, rowShift: number, columnShift: number): LineReading {
  const upsideDown = facing.turned
  const backwards = facing.turned !== facing.mirrored
  const lowest = 2 - line.rowSlack
  const rightmost = 1 - line.columnSlack
  const last = line.places.reduce((most, p) => Math.max(most, p.cell), 0)
  const dots = line.places.map((place) => {
    const row = rowShift + (upsideDown ? lowest - place.row : place.row)
    const column = columnShift + (backwards ? rightmost - place.column : place.column)
    return { dot: place.dot, cell: backwards ? last - place.cell : place.cell, number: 1 + row + 3 * column }
  })
  dots.sort((a, b) => a.cell - b.cell || a.number - b.number)
  return { cells: cellsOf(dots, last + 1), dots, rowShift, columnShift }
}

function cellsOf(dots: ReadDot[], length: number): string {
  const masks = new Array<number>(length).fill(0)
  for (const { cell, number } of dots) masks[cell] |= 1 << (number - 1)
  return masks.map((mask) => String.fromCodePoint(FIRST_CELL + mask)).join('')
}

/** Direction in which the lines run for a reader of that facing, and where down is for her; lengths of one dot spacing. */
export function directions(lattice: Lattice, facing: Facing): { reading: Point; down: Point } {
  const opposite = (p: Point): Point => ({ x: -p.x, y: -p.y })
  return {
    reading: facing.turned !== facing.mirrored ? opposite(lattice.along) : lattice.along,
    down: facing.turned ? opposite(lattice.across) : lattice.across,
  }
}
