import type { Box } from '../../geometry/box.js'
import type { Loop } from '../../geometry/loop.js'
import type { Ink, Layer } from './ink.js'

/**
 * A shape without its place and size, as whole numbers: the same letter drawn elsewhere, or larger, has the same ones. All
 * that is known of the look of a character is worked out from these numbers alone, so that it may be kept under them.
 */
export interface Shape {
  /** For each layer its kind and its number of contours; for each contour its number of corners, and x, y of each. */
  numbers: Int32Array
  hash: number
}

/** The longer side of the box in steps: far finer than anything that is looked at, far coarser than what rounding does. */
const STEPS = 2 ** 20

const HALF = 0.5

const RULES: Layer['rule'][] = ['nonzero', 'evenodd']
const EFFECTS: Layer['effect'][] = ['add', 'cut', 'flip']

/** @param box round the ink, of some width or height */
export function shapeOf({ layers }: Ink, { x, y, width, height }: Box): Shape {
  const scale = STEPS / Math.max(width, height)
  const size = layers.reduce((n, { contours }) => contours.reduce((m, c) => m + 1 + c.length, n + 2), 0)
  const numbers = new Int32Array(size)
  let at = 0
  for (const { contours, rule, effect } of layers) {
    numbers[at++] = RULES.indexOf(rule) * EFFECTS.length + EFFECTS.indexOf(effect)
    numbers[at++] = contours.length
    for (const contour of contours) {
      numbers[at++] = contour.length / 2
      for (let i = 0; i < contour.length; i += 2) {
        // Nothing lies left of the box or above it, and the array takes whole parts: this rounds.
        numbers[at++] = (contour[i] - x) * scale + HALF
        numbers[at++] = (contour[i + 1] - y) * scale + HALF
      }
    }
  }
  return { numbers, hash: hashOf(numbers) }
}

/** The ink that has this shape, in steps from the top left corner of its box. */
export function inkOfShape({ numbers }: Shape): Ink {
  const layers: Layer[] = []
  for (let at = 0; at < numbers.length;) {
    const kind = numbers[at++]
    const contours = Array.from({ length: numbers[at++] }, (): Loop => {
      const length = 2 * numbers[at++]
      at += length
      return Float64Array.from(numbers.subarray(at - length, at))
    })
    layers.push({ contours, rule: RULES[Math.floor(kind / EFFECTS.length)], effect: EFFECTS[kind % EFFECTS.length] })
  }
  return { layers }
}

export function isSameShape(a: Shape, b: Shape): boolean {
  if (a.hash !== b.hash || a.numbers.length !== b.numbers.length) return false
  for (let i = 0; i < a.numbers.length; i++) if (a.numbers[i] !== b.numbers[i]) return false
  return true
}

const HASH_START = 0x811c9dc5
const HASH_FACTOR = 0x01000193

/** FNV-1a (G. Fowler, L. C. Noll, P. Vo) over whole numbers instead of bytes: only to find shapes, which are then compared. */
function hashOf(numbers: Int32Array): number {
  let hash = HASH_START
  for (let i = 0; i < numbers.length; i++) hash = Math.imul(hash ^ numbers[i], HASH_FACTOR)
  return hash
}
