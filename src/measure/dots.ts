import { nearestTo, type Boxed } from '../geometry/dots.js'
import type { Point } from '../geometry/point.js'
import { isKnown, missing, type Basis, type BrailleBlock, type BrailleLine, type Place } from '../sign/sign.js'
import { gapOf, pointerOf } from './facts.js'
import type { Gap } from './measurement.js'
import { BLANK } from './pairing.js'
import { noDots } from './placing.js'
import type { Found } from './quantity.js'

/** The dots of a block as round bodies: their places and the width of their bases. */

/** Pairs of a dot and an edge looked at for one block; drawings of signs stay far below. */
const MOST_WORK = 30_000_000

export const dotsOf = (block: BrailleBlock): Point[] => block.lines.flatMap((line) => line.dots)

/** Half the widest base among the dots. */
export const radiusOf = ({ dotBaseDiameter }: BrailleBlock): number =>
  isKnown(dotBaseDiameter) ? (dotBaseDiameter.max ?? dotBaseDiameter.value) / 2 : 0

/** Whether a line's dots are where they are, or the line has none to place. */
export const isPlaced = ({ dots, cells }: BrailleLine): boolean =>
  dots.length > 0 || (isKnown(cells) && ![...cells.value].some((cell) => cell !== BLANK))

/** What keeps lines of a block from being placed, each reason once. */
export function unplaced(block: BrailleBlock, n: number): Gap[] {
  if (block.lines.length === 0) return [noDots(undefined, block, n)]
  const gaps = block.lines.filter((line) => !isPlaced(line)).map((line) => noDots(line, block, n))
  const seen = new Set<string>()
  return gaps.filter(({ why, ask }) => {
    const key = `${why} ${ask?.pointer ?? ''}`
    return seen.has(key) ? false : seen.add(key)
  })
}

/** What is measured from the edges of a block's dots, with what stays open for the lines that are not placed. */
export function fromDots(block: BrailleBlock, n: number, measure: () => Found): Found {
  const gaps = unplaced(block, n)
  if (dotsOf(block).length === 0) return { observations: [], gaps }
  if (!isKnown(block.dotBaseDiameter)) return { observations: [], gaps: [...gaps, unsized(block, n)] }
  const found = measure()
  return gaps.length === 0 ? found : { observations: found.observations, gaps: [...gaps, ...found.gaps] }
}

/** What would tell how wide a block's dots are. */
export function unsized({ place, dotBaseDiameter }: BrailleBlock, n: number): Gap {
  const pointer = pointerOf(place, 'braille', n, 'dotBaseDiameter')
  const ask = { pointer, ask: 'How wide are the braille dots at their base?', unit: 'mm' as const }
  const unknown = isKnown(dotBaseDiameter) ? missing() : dotBaseDiameter
  return gapOf(unknown, place, ask)
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
export function clearanceOf(block: BrailleBlock, outlines: Boxed[], basis: Basis, other: Place): Found {
  const nearest = nearestTo(outlines, dotsOf(block), MOST_WORK)
  if (nearest === 'too-much') return tooMuch(block.place)
  if (!nearest) return { observations: [], gaps: [] }
  const value = Math.max(0, nearest.distance - radiusOf(block))
  return { observations: [{ value, basis, places: [block.place, other] }], gaps: [] }
}
