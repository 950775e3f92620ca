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

/** For each cell the two zones next to it along one side and its share in the first. */
const NEAR = Array.from({ length: SIDE }, (_, cell) => {
  const at = ((cell + 0.5) / SIDE) * EDGE_ZONES - 0.5
  const low = Math.floor(at)
  return { first: Math.max(0, low), second: Math.min(EDGE_ZONES - 1, low + 1), share: 1 - (at - low) }
})

function directions(raster: Float64Array, features: Float64Array): void {
  const offset = INK_ZONES ** 2
  // Sobel's operator, the middle row and column counting twice, with nothing outside the box.
  const at = (row: number, column: number) =>
    row < 0 || column < 0 || row >= SIDE || column >= SIDE ? 0 : raster[row * SIDE + column]
  for (let r = 0; r < SIDE; r++)
    for (let c = 0; c < SIDE; c++) {
      const [nw, n, ne] = [at(r - 1, c - 1), at(r - 1, c), at(r - 1, c + 1)]
      const [sw, s, se] = [at(r + 1, c - 1), at(r + 1, c), at(r + 1, c + 1)]
      const x = ne + 2 * at(r, c + 1) + se - nw - 2 * at(r, c - 1) - sw
      const y = sw + 2 * s + se - nw - 2 * n - ne
      if (x === 0 && y === 0) continue
      const strength = Math.hypot(x, y) / SIDE
      const turn = (Math.atan2(y, x) / (2 * Math.PI) + 1) * DIRECTIONS
      const low = Math.floor(turn)
      const part = turn - low
      const [rows, columns] = [NEAR[r], NEAR[c]]
      const spread = (row: number, column: number, share: number) => {
        const zone = offset + (row * EDGE_ZONES + column) * DIRECTIONS
        features[zone + (low % DIRECTIONS)] += strength * share * (1 - part)
        features[zone + ((low + 1) % DIRECTIONS)] += strength * share * part
      }
      spread(rows.first, columns.first, rows.share * columns.share)
      spread(rows.first, columns.second, rows.share * (1 - columns.share))
      spread(rows.second, columns.first, (1 - rows.share) * columns.share)
      spread(rows.second, columns.second, (1 - rows.share) * (1 - columns.share))
    }
}
