import { nearestTo } from '../geometry/dots.js'
import type { Point } from '../geometry/point.js'
import { isKnown, type BrailleBlock, type Lettering, type Place, type Sign } from '../sign/sign.js'
import { clearOfBorder, raisedBorders } from './border.js'
import { eachBlock } from './braille.js'
import { basisOf, gapOf, join, nothing, pointerOf } from './facts.js'
import { extentOf, extentOfBlock, frameOf, linesOf, type Extent, type Frame } from './frame.js'
import { letteringIn, NO_LETTERING } from './lettering.js'
import type { Found, Quantities, Subject } from './quantity.js'

/**
 * Clear space round braille and raised characters.
 *
 * Datum: from the edge of the dots' bases to the nearest edge of a raised outline (2010 ADA Standards 703.3.2; the text does not say
 * dot or cell, its figure draws dots) and from a raised outline to the nearest edge of a raised border (703.2.7). For a
 * described sign the characters stand between their baseline and the character height above it; their widths are not
 * known, so only the gap across the lines is, which the true distance never falls below.
 */

/** Point-edge pairs looked at for one block; drawings of signs stay far below. */
const MOST_WORK = 30_000_000

const RAISED = ['raised', 'both'] as const

export const raisedLettering = (sign: Sign): { lettering: Lettering; n: number }[] =>
  letteringIn({ sign, scope: { parts: [...RAISED] } })

const dotsOf = (block: BrailleBlock): Point[] => block.lines.flatMap((line) => line.dots)

const tooMuch = (place: Place): Found => ({
  observations: [],
  gaps: [
    { reason: 'limit-reached', why: 'the outlines and dots are too many to measure every distance', places: [place] },
  ],
})

function originGap(block: BrailleBlock, n: number): Found {
  const baseline = block.lines[0]?.baseline
  const why = baseline && !isKnown(baseline) ? baseline : { unknown: 'missing-fact' as const, why: 'not given' }
  const pointer = pointerOf(block.place, 'braille', n, 'origin')
  return {
    observations: [],
    gaps: [gapOf(why, block.place, { pointer, ask: 'Where is the centre of dot 1 of the first cell?', unit: 'mm' })],
  }
}

function diameterGap(block: BrailleBlock, n: number): Found | undefined {
  const { dotBaseDiameter, place } = block
  if (isKnown(dotBaseDiameter)) return undefined
  const pointer = pointerOf(place, 'braille', n, 'dotBaseDiameter')
  return {
    observations: [],
    gaps: [gapOf(dotBaseDiameter, place, { pointer, ask: 'How wide are the braille dots at their base?', unit: 'mm' })],
  }
}

/** Half the widest base among the dots. */
const radiusOf = ({ dotBaseDiameter }: BrailleBlock): number =>
  isKnown(dotBaseDiameter) ? (dotBaseDiameter.max ?? dotBaseDiameter.value) / 2 : 0

/** From a block to the drawn outlines of one lettering. */
function toOutlines(block: BrailleBlock, lettering: Lettering, outlines: Point[][]): Found {
  try {
    const nearest = nearestTo(outlines, dotsOf(block), MOST_WORK)
    if (!nearest) return { observations: [], gaps: [] }
    const value = Math.max(0, nearest.distance - radiusOf(block))
    return { observations: [{ value, basis: 'drawn', places: [block.place, lettering.place] }], gaps: [] }
  } catch (error) {
    if (error instanceof RangeError) return tooMuch(block.place)
    throw error
  }
}

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
    const basis =
      isKnown(block.dotBaseDiameter) && isKnown(lettering.characterHeight)
        ? basisOf(block.dotBaseDiameter, lettering.characterHeight)
        : 'declared'
    found.observations.push({ value: Math.min(...known), basis, places: [block.place, lettering.place] })
  }
  if (known.length < lines.length || lines.length === 0) {
    const beside = gaps.some((gap, i) => gap === undefined && lines[i] !== undefined)
    const why = beside
      ? 'the braille stands beside characters whose width is not known'
      : 'the place of the characters is not known'
    const unknown = { unknown: 'missing-fact' as const, why }
    const pointer = beside ? '/drawing' : pointerOf(lettering.place, 'lettering', n, 'baseline')
    found.gaps.push(gapOf(unknown, lettering.place, { pointer, ask: 'Where on the panel are the characters?' }))
  }
  return found
}

function characterClearance(subject: Subject): Found {
  const raised = raisedLettering(subject.sign)
  if (raised.length === 0) return nothing('The sign has no raised characters.')
  const frame = frameOf(subject.sign)
  return eachBlock((block, n) => {
    if (dotsOf(block).length === 0) return originGap(block, n)
    const wide = diameterGap(block, n)
    if (wide) return wide
    return join(
      raised.map(({ lettering, n: m }) => {
        const outlines = lettering.lines.flatMap((line) => line.outlines)
        return outlines.length > 0 ? toOutlines(block, lettering, outlines) : toLines(block, lettering, m, frame)
      }),
      'The raised characters have no lines.',
    )
  })(subject)
}

function brailleToBorder(subject: Subject): Found {
  const { borders, unsure } = raisedBorders(subject.sign)
  if (borders.length === 0) return unsure
  const found = eachBlock((block, n) => {
    if (dotsOf(block).length === 0) return originGap(block, n)
    const wide = diameterGap(block, n)
    if (wide) return wide
    try {
      const found = borders.map((border) =>
        clearOfBorder(border, dotsOf(block), radiusOf(block), block.place, MOST_WORK),
      )
      return join(found, 'The borders are not drawn.')
    } catch (error) {
      if (error instanceof RangeError) return tooMuch(block.place)
      throw error
    }
  })(subject)
  return join([found, unsure], 'The sign has no raised border.')
}

function charactersToBorder(subject: Subject): Found {
  const { borders, unsure } = raisedBorders(subject.sign)
  const frame = frameOf(subject.sign)
  if (borders.length === 0) return unsure
  const found = letteringIn(subject).map(({ lettering }): Found => {
    const points = lettering.lines.flatMap((line) => line.outlines.flat())
    try {
      if (points.length > 0)
        return join(
          borders.map((border) => clearOfBorder(border, points, 0, lettering.place, MOST_WORK)),
          '',
        )
    } catch (error) {
      if (error instanceof RangeError) return tooMuch(lettering.place)
      throw error
    }
    const lines = linesOf(lettering, frame)
    const starts = lines.flatMap((line) =>
      line
        ? [
            { x: line.left, y: line.top },
            { x: line.left, y: line.bottom },
          ]
        : [],
    )
    const known =
      starts.length > 0 && extentOf(starts)
        ? borders.map((border) => clearOfBorder(border, starts, 0, lettering.place, MOST_WORK))
        : []
    const why =
      'the width of the characters is not in the description, so their distance from the border is known at the left end only'
    const gap = gapOf({ unknown: 'missing-fact', why }, lettering.place, {
      pointer: '/drawing',
      ask: 'What does the sign look like at true scale?',
    })
    return join([...known, { observations: [], gaps: [{ ...gap, places: [lettering.place] }] }], '')
  })
  return join([...found, unsure], NO_LETTERING)
}

export const CLEARANCE: Quantities = {
  'braille.characterClearance': {
    unit: 'mm',
    method: 'From the edge of the dots to the nearest edge of a raised character.',
    couldBe: ['lettering', 'braille'],
    doubt: 'more',
    take: characterClearance,
  },
  'braille.borderClearance': {
    unit: 'mm',
    method: 'From the edge of the dots to the nearest edge of a raised border.',
    couldBe: ['border', 'braille'],
    doubt: 'more',
    take: brailleToBorder,
  },
  'raised.borderClearance': {
    unit: 'mm',
    method: 'From the edge of the raised characters to the nearest edge of a raised border.',
    couldBe: ['border', 'lettering'],
    doubt: 'more',
    take: charactersToBorder,
  },
}
