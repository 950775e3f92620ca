import { boxed } from '../geometry/dots.js'
import {
  isKnown,
  type BrailleBlock,
  type Fact,
  type Lettering,
  type LetteringLine,
  type Unknown,
} from '../sign/sign.js'
import { eachBlock } from './braille.js'
import { clearanceOf, fromDots } from './dots.js'
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
 * character height above it, from their left end on; how wide they are is not known. Where that decides, the distance is a lower bound,
 * which may show that there is room and never that there is not.
 */

/** The shortest way between two extents; `atLeast` when it hangs on an end that is not known, and may be longer. */
interface Way {
  value: number
  atLeast: boolean
}

/** @param least how far the characters reach at least, from their left end. */
function wayBetween(braille: Extent, characters: Extent, least: number): Way {
  const across = Math.max(0, characters.top - braille.bottom, braille.top - characters.bottom)
  const along = Math.max(0, characters.left - braille.right, braille.left - characters.right)
  const over = braille.left <= characters.left + least
  return { value: Math.hypot(across, along), atLeast: !over && !Number.isFinite(characters.right) }
}

/** No character is narrower than a stroke: how far a line of them reaches at least. */
export function leastWidth({ strokeThickness, characterSpacing }: Lettering, { text }: LetteringLine): number {
  const count = isKnown(text) ? text.value.replace(/\s/gu, '').length : 1
  const least = (fact: Fact<number>) => (isKnown(fact) ? (fact.min ?? fact.value) : 0)
  return count * least(strokeThickness) + (count - 1) * least(characterSpacing)
}

const DEPTH_NOT_KNOWN = 'how far the characters reach below their baseline is not known, as their outlines are not'
const OR_LESS = 'Measured from the baseline: characters that reach below it come nearer.'
const WIDTH_NOT_KNOWN = 'the braille stands beside characters whose width is not known'
const OR_MORE = 'The width of the characters is not known: the distance is this or more.'

/** Drawn characters without outlines: their baseline is known, and what hangs below it is not. */
const hangs = ({ lie, lines }: Lettering) => lie !== undefined && lines.some(({ outlines }) => outlines.length === 0)

const depthGap = ({ place }: Lettering) =>
  gapOf({ unknown: 'missing-fact', why: DEPTH_NOT_KNOWN }, place, {
    pointer: '/drawing',
    ask: 'What are the outlines of the characters?',
  })

/** From a block to the lines of one lettering whose outlines are not known. */
function toLines(block: BrailleBlock, lettering: Lettering, n: number, frame: Frame): Found {
  const extent = extentOfBlock(block, frame)
  if (!extent) return { observations: [], gaps: [] }
  const lines = linesOf(lettering, frame)
  const ways = lettering.lines.flatMap((line, i): Way[] => {
    const at = lines[i]
    return at ? [wayBetween(extent, at, leastWidth(lettering, line))] : []
  })
  const found: Found = { observations: [], gaps: [] }
  const places = [block.place, lettering.place]
  const basis = isKnown(block.dotBaseDiameter) ? basisOf(block.dotBaseDiameter) : 'declared'
  const shortest = (atLeast: boolean) => Math.min(...ways.filter((w) => w.atLeast === atLeast).map((w) => w.value))
  const [known, orMore] = [shortest(false), shortest(true)]
  const ask = { pointer: '/drawing', ask: 'Where on the panel are the characters?' }
  const below = depthGap(lettering)
  const orLess = hangs(lettering) && { atMost: below, remark: OR_LESS }
  if (Number.isFinite(known)) found.observations.push({ value: known, basis, places, ...orLess })
  const beside = gapOf({ unknown: 'missing-fact', why: WIDTH_NOT_KNOWN }, lettering.place, ask)
  if (orMore === 0) found.gaps.push(beside)
  else if (Number.isFinite(orMore) && hangs(lettering)) found.gaps.push(below)
  else if (Number.isFinite(orMore))
    found.observations.push({ value: orMore, atLeast: beside, basis, places, remark: OR_MORE })
  if (ways.length < lettering.lines.length || lettering.lines.length === 0)
    found.gaps.push(gapOf(NOT_PLACED, lettering.place, placeAsk(lettering, n)))
  return found
}

const NOT_PLACED: Unknown = { unknown: 'missing-fact', why: 'the place of the characters is not known' }

function characterClearance(subject: Subject): Found {
  const raised = raisedLettering(subject.sign)
  if (raised.length === 0) return nothing('The sign has no raised characters.')
  const frame = frameOf(subject.sign)
  const characters = raised.map(({ lettering, n }) => ({
    lettering,
    n,
    outlines: boxed(lettering.lines.flatMap((line) => line.outlines)),
  }))
  const fromBlock = (block: BrailleBlock, n: number): Found =>
    fromDots(block, n, () =>
      join(
        characters.map(({ lettering, n: m, outlines }) => {
          if (outlines.length === 0) return toLines(block, lettering, m, frame)
          const found = clearanceOf(block, outlines, 'drawn', lettering.place)
          return hangs(lettering) ? { ...found, gaps: [...found.gaps, depthGap(lettering)] } : found
        }),
        'The raised characters have no lines.',
      ),
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
