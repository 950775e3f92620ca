import type { Box } from '../../geometry/box.js'
import type { Ink } from './ink.js'
import { rasterOf, SIDE } from './raster.js'

/**
 * What a shape looks like, as numbers that do not depend on its size: where its box is inked, and in which directions its
 * edges run where. Directional features of the gradient as in C.-L. Liu, K. Nakashima, H. Sako, H. Fujisawa, "Handwritten
 * digit recognition: benchmarking of state-of-the-art techniques", Pattern Recognition 36, 2003, with the square root taken
 * of each (ibid., 2.4) so that strong edges do not drown weak ones.
 */

/** Zones along each side for the ink, and for the directions. */
const INK_ZONES = 8
const EDGE_ZONES = 6
const DIRECTIONS = 8
/** How much the proportion of the box counts, and the proportion (as a logarithm) beyond which it says no more. */
const PROPORTION_WEIGHT = 3
const EXTREME_PROPORTION = 2.5

export const FEATURES = INK_ZONES ** 2 + EDGE_ZONES ** 2 * DIRECTIONS + 1

/** @param box round the ink, of some width and height */
export function featuresOf(ink: Ink, box: Box): Float64Array {
  const raster = rasterOf(ink, box)
  const features = new Float64Array(FEATURES)
  pool(raster, features)
  directions(raster, features)
  for (let i = 0; i < FEATURES - 1; i++) features[i] = Math.sqrt(features[i])
  const proportion = Math.log(box.width / box.height)
  features[FEATURES - 1] = PROPORTION_WEIGHT * Math.max(-EXTREME_PROPORTION, Math.min(EXTREME_PROPORTION, proportion))
  return features
}

/** The share of the box that is inked. */
export function fullnessOf(ink: Ink, box: Box): number {
  return rasterOf(ink, box).reduce((sum, v) => sum + v, 0) / SIDE ** 2
}

function pool(raster: Float64Array, features: Float64Array): void {
  const size = SIDE / INK_ZONES
  for (let row = 0; row < SIDE; row++) {
    const start = Math.floor(row / size) * INK_ZONES
    for (let column = 0; column < SIDE; column++)
      features[start + Math.floor(column / size)] += raster[row * SIDE + column] / size ** 2
  }
}

/** For each cell the zone before and after it along one side, and its share in the former. */
const ZONES = Array.from({ length: SIDE }, (_, cell) => {
  const at = ((cell + 0.5) / SIDE) * EDGE_ZONES - 0.5
  const low = Math.floor(at)
  return { before: Math.max(0, low), after: Math.min(EDGE_ZONES - 1, low + 1), share: 1 - (at - low) }
})

function directions(raster: Float64Array, features: Float64Array): void {
  const wide = SIDE + 2
  const framed = new Float64Array(wide * wide)
  for (let row = 0; row < SIDE; row++) framed.set(raster.subarray(row * SIDE, (row + 1) * SIDE), (row + 1) * wide + 1)
  // Sobel's operator, the middle row and column counting twice, with nothing outside the box.
  for (let row = 0; row < SIDE; row++)
    for (let column = 0; column < SIDE; column++) {
      const up = row * wide + column
      const [level, down] = [up + wide, up + 2 * wide]
      const falling = framed[down + 2] - framed[up]
      const rising = framed[up + 2] - framed[down]
      const x = falling + rising + 2 * (framed[level + 2] - framed[level])
      const y = falling - rising + 2 * (framed[down + 1] - framed[up + 1])
      if (x !== 0 || y !== 0) addEdge(features, row, column, x, y)
    }
}

/** An edge in a cell, shared out among the four zones and the two directions next to it. */
function addEdge(features: Float64Array, row: number, column: number, x: number, y: number): void {
  const strength = Math.sqrt(x * x + y * y) / SIDE
  const turn = (Math.atan2(y, x) / (2 * Math.PI) + 1) * DIRECTIONS
  const low = Math.floor(turn)
  const part = turn - low
  const first = low % DIRECTIONS
  const second = (low + 1) % DIRECTIONS
  const rows = ZONES[row]
  const columns = ZONES[column]
  for (let i = 0; i < 4; i++) {
    const zone = (i < 2 ? rows.before : rows.after) * EDGE_ZONES + (i % 2 === 0 ? columns.before : columns.after)
    const share = (i < 2 ? rows.share : 1 - rows.share) * (i % 2 === 0 ? columns.share : 1 - columns.share)
    const at = INK_ZONES ** 2 + zone * DIRECTIONS
    features[at + first] += strength * share * (1 - part)
    features[at + second] += strength * share * part
  }
}
