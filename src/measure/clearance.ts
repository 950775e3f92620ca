import { isKnown, type BrailleBlock, type Lettering } from '../sign/sign.js'
import { eachBlock } from './braille.js'
import { clearanceOf, unplaced } from './dots.js'
import { basisOf, gapOf, join, nothing } from './facts.js'
import { extentOfBlock, frameOf, linesOf, type Extent, type Frame } from './frame.js'
import { raisedLettering } from './lettering.js'
import { placeAsk } from './placing.js'
import type { Found, Quantities, Subject } from './quantity.js'

/**
 * Clear space between braille and raised characters.
 *
 * Datum: from the edge of the dots' bases to the nearest edge of a raised outline (2010 ADA Standards 703.3.2; the text does not say
 * dot or cell, its figure draws dots). For a described sign the characters stand between their baseline and the
 * character height above it; their widths are not known, so only the gap across the lines is, which the true distance
 * never falls below.
 */

/** The gap between two extents; undefined when it hangs on an end that is not known. */
export function gapBetween(a: Extent, b: Extent): number | undefined {
  const across = Math.max(b.top - a.bottom, a.top - b.bottom)
  if (across >= 0) return across
  const along = Math.max(b.left - a.right, a.left - b.right)
  if (along >= 0) return along
  return Number.isFinite(a.right) && Number.isFinite(b.right) ? 0 : undefined
}

/** From a block to the lines of one described lettering. */
function toLines(block: BrailleBlock, lettering: Lettering, n: number, frame: Frame): Found {
  const extent = extentOfBlock(block, frame)
  const lines = linesOf(lettering, frame)
  const gaps = extent ? lines.map((line) => line && gapBetween(extent, line)) : []
  const known = gaps.filter((gap) => gap !== undefined)
  const found: Found = { observations: [], gaps: [] }
  if (known.length > 0) {
    const { dotBaseDiameter } = block
    const basis = isKnown(dotBaseDiameter) ? basisOf(dotBaseDiameter) : 'declared'
    found.observations.push({ value: Math.min(...known), basis, places: [block.place, lettering.place] })
  }
  if (known.length === lines.length && lines.length > 0) return found
  const beside = gaps.some((gap, i) => gap === undefined && lines[i] !== undefined)
  const why = beside
    ? 'the braille stands beside characters whose width is not known'
    : 'the place of the characters is not known'
  const ask = beside ? { pointer: '/drawing', ask: 'Where on the panel are the characters?' } : placeAsk(lettering, n)
  found.gaps.push(gapOf({ unknown: 'missing-fact', why }, lettering.place, ask))
  return found
}

function characterClearance(subject: Subject): Found {
  const raised = raisedLettering(subject.sign)
  if (raised.length === 0) return nothing('The sign has no raised characters.')
  const frame = frameOf(subject.sign)
  const fromBlock = (block: BrailleBlock, n: number): Found =>
    unplaced(block, n) ??
    join(
      raised.map(({ lettering, n: m }) => {
        const outlines = lettering.lines.flatMap((line) => line.outlines)
        return outlines.length > 0
          ? clearanceOf(block, outlines, 'drawn', lettering.place)
          : toLines(block, lettering, m, frame)
      }),
      'The raised characters have no lines.',
    )
  return eachBlock(fromBlock)(subject)
}

export const CLEARANCE: Quantities = {
  'braille.characterClearance': {
    unit: 'mm',
    method: 'From the edge of the dots to the nearest edge of a raised character.',
    couldBe: ['lettering', 'braille'],
    doubt: 'more',
    take: characterClearance,
  },
}
