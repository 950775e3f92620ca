import type { Box } from '../../geometry/box.js'
import { spansOf, type Ink } from './ink.js'

/** Cells along each side of the square in which a shape is looked at. */
export const SIDE = 48

/**
 * How much of each cell is inked, 0 to 1, when the box is stretched to a square of SIDE × SIDE cells; rows from the top. Each
 * row is the ink along its middle line, exact along the row.
 */
export function rasterOf(ink: Ink, { x, y, width, height }: Box): Float64Array {
  const raster = new Float64Array(SIDE * SIDE)
  const ys = Float64Array.from({ length: SIDE }, (_, i) => y + ((i + 0.5) / SIDE) * height)
  spansOf(ink, ys).forEach((spans, row) => {
    for (let i = 0; i + 1 < spans.length; i += 2)
      fill(raster, row * SIDE, ((spans[i] - x) / width) * SIDE, ((spans[i + 1] - x) / width) * SIDE)
  })
  return raster
}

function fill(raster: Float64Array, start: number, from: number, to: number): void {
  const [left, right] = [Math.max(0, from), Math.min(SIDE, to)]
  for (let cell = Math.floor(left); cell < right; cell++)
    raster[start + cell] += Math.min(cell + 1, right) - Math.max(cell, left)
}
