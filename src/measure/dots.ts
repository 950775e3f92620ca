import { nearestTo } from '../geometry/dots.js'
import type { Polyline } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import { isKnown, type Basis, type BrailleBlock, type Place } from '../sign/sign.js'
import { gapOf, pointerOf } from './facts.js'
import { noDots } from './placing.js'
import type { Found } from './quantity.js'

/** The dots of a block as round bodies: their places and the width of their bases. */

/** Pairs of a dot and an edge looked at for one block; drawings of signs stay far below. */
const MOST_WORK = 30_000_000

export const dotsOf = (block: BrailleBlock): Point[] => block.lines.flatMap((line) => line.dots)

/** Half the widest base among the dots. */
export const radiusOf = ({ dotBaseDiameter }: BrailleBlock): number =>
  isKnown(dotBaseDiameter) ? (dotBaseDiameter.max ?? dotBaseDiameter.value) / 2 : 0

/** What keeps a block from being placed and sized; undefined when nothing does. */
export function unplaced(block: BrailleBlock, n: number): Found | undefined {
  const { place, lines, dotBaseDiameter } = block
  if (dotsOf(block).length === 0) return { observations: [], gaps: [noDots(lines[0], block, n)] }
  if (isKnown(dotBaseDiameter)) return undefined
  const pointer = pointerOf(place, 'braille', n, 'dotBaseDiameter')
  const ask = { pointer, ask: 'How wide are the braille dots at their base?', unit: 'mm' as const }
  return { observations: [], gaps: [gapOf(dotBaseDiameter, place, ask)] }
}

export const tooMuch = (place: Place): Found => ({
  observations: [],
  gaps: [
    {
      reason: 'limit-reached',
      why: 'the outlines and dots are too many to measure every distance',
      places: [place],
    },
  ],
})

/** From the edges of a block's dots to filled outlines; 0 where they overlap. */
export function clearanceOf(block: BrailleBlock, outlines: Polyline[], basis: Basis, other: Place): Found {
  const nearest = nearestTo(outlines, dotsOf(block), MOST_WORK)
  if (nearest === 'too-much') return tooMuch(block.place)
  if (!nearest) return { observations: [], gaps: [] }
  const value = Math.max(0, nearest.distance - radiusOf(block))
  return { observations: [{ value, basis, places: [block.place, other] }], gaps: [] }
}
