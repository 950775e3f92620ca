import type { Point } from '../geometry/point.js'
import { isKnown, type BrailleBlock, type Pictogram, type Place, type Sign } from '../sign/sign.js'
import { leastWidth } from './clearance.js'
import { radiusOf, unplaced, unsized } from './dots.js'
import { basisOfField, withField } from './field.js'
import { frameOf, linesOf, type Extent } from './frame.js'
import type { Gap } from './measurement.js'
import { placeAsk } from './placing.js'
import type { Found } from './quantity.js'

/**
 * Whether characters or braille reach into the field of a pictogram (2010 ADA Standards 703.6.1). Dots count with their bases,
 * characters from their left end on.
 */

/** Millimetres by which things that touch may seem to overlap by arithmetic alone. */
const TOUCHING = 0.001

/** How far a point is from a field; 0 inside. */
const awayFrom = (field: Extent, { x, y }: Point): number =>
  Math.hypot(Math.max(0, field.left - x, x - field.right), Math.max(0, field.top - y, y - field.bottom))

/** Whether a block's dots reach into a field, and what keeps that from being told. */
function dotsIn(field: Extent, block: BrailleBlock, n: number, sign: Sign): { reach: boolean; gaps: Gap[] } {
  const frame = frameOf(sign)
  const gaps = unplaced(block, n)
  const nearest = Math.min(...block.lines.flatMap(({ dots }) => dots.map((dot) => awayFrom(field, frame.of(dot)))))
  const { dotBaseDiameter, dotSpacing } = block
  if (nearest === 0 || isKnown(dotBaseDiameter))
    return { reach: nearest === 0 || nearest < radiusOf(block) - TOUCHING, gaps }
  // Dots that were wider than they are far apart would run together.
  const widest = isKnown(dotSpacing) ? dotSpacing.value / 2 : Infinity
  return { reach: false, gaps: nearest < widest ? [...gaps, unsized(block, n)] : gaps }
}

/** Whether a line reaches into a field; undefined when that hangs on the line's unknown right end. */
function reachesInto(field: Extent, line: Extent, least: number): boolean | undefined {
  if (line.top >= field.bottom || line.bottom <= field.top || line.left >= field.right || line.right <= field.left)
    return false
  return Number.isFinite(line.right) || line.left + least > field.left ? true : undefined
}

export function fieldClear(pictogram: Pictogram, n: number, sign: Sign): Found {
  return withField(pictogram, n, sign, (field) => {
    const intruders: Place[] = []
    const gaps: Gap[] = []
    sign.braille.forEach((block, m) => {
      const found = dotsIn(field, block, m, sign)
      if (found.reach) intruders.push(block.place)
      gaps.push(...found.gaps)
    })
    sign.lettering.forEach((lettering, m) => {
      const { lines, place } = lettering
      const extents = linesOf(lettering, frameOf(sign))
      const reach = lines.map((line, i) => {
        const extent = extents[i]
        return extent && reachesInto(field, extent, leastWidth(lettering, line))
      })
      if (reach.includes(true)) intruders.push(place)
      else if (reach.includes(undefined) || lines.length === 0)
        gaps.push({ reason: 'missing-fact', why: NOT_PLACED, places: [place], ask: placeAsk(lettering, m) })
    })
    const basis = basisOfField(pictogram)
    if (intruders.length > 0)
      return { observations: [{ value: false, basis, places: [pictogram.place, ...intruders] }], gaps: [] }
    return gaps.length > 0
      ? { observations: [], gaps }
      : { observations: [{ value: true, basis, places: [pictogram.place] }], gaps }
  })
}

const NOT_PLACED = 'the place of the characters is not known'
