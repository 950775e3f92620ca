import { domeOf } from '../geometry/dome.js'
import { isKnown, type BrailleBlock, type Fact, type Known } from '../sign/sign.js'
import { eachBlock } from './braille.js'
import { basisOf, gapOf, nothing, pointerOf, type Ask } from './facts.js'
import type { Gap, Observation } from './measurement.js'
import type { Found, Quantities } from './quantity.js'

/**
 * The radius of a dot's dome: that of the sphere whose cap has the dot's base and height, r = (d²/4 + h²) / 2h (geometry of a spherical
 * cap; the Australian Braille Authority's sizes for signs name the radius). Taken of dots that are domed, rounded, or of no known shape.
 */

const NO_DOME = 'Dots of this shape have no dome.'
const DOMED: readonly string[] = ['domed', 'rounded']

const ASKS: Record<'dotBaseDiameter' | 'dotHeight', Omit<Ask, 'pointer'>> = {
  dotBaseDiameter: { ask: 'How wide are the braille dots at their base?', unit: 'mm' },
  dotHeight: { ask: 'How high are the braille dots?', unit: 'mm' },
}

const ends = ({ value, min, max }: Known<number>): [number, number] => [min ?? value, max ?? value]
const varies = (fact: Known<number>): boolean => ends(fact)[1] - ends(fact)[0] > SAME

/** Millimetres by which drawn dots of one size may differ by arithmetic alone. */
const SAME = 0.001

/** Least and greatest radius of any base with any height; for a base the radius is least where the height is half of it. */
function extremesOf(base: Known<number>, height: Known<number>): { min: number; max: number } {
  const heights = ends(height)
  const radii = ends(base).flatMap((d) => {
    const least = d / 2 > heights[0] && d / 2 < heights[1] ? [d / 2] : []
    return [...heights, ...least].map((h) => domeOf(d, h).radius)
  })
  return { min: Math.min(...radii), max: Math.max(...radii) }
}

const NOT_OF_ONE_DOT = 'bases and heights vary, and it is not told which base goes with which height'

function radiusOf(base: Known<number>, height: Known<number>, block: BrailleBlock): Observation {
  const observation: Observation = {
    value: domeOf(base.value, height.value).radius,
    basis: basisOf(base, height),
    places: [block.place],
    ...(uncertaintyOf(base, height) > 0 && { uncertainty: uncertaintyOf(base, height) }),
  }
  return varies(base) || varies(height) ? { ...observation, ...extremesOf(base, height) } : observation
}

/** First-order propagation (JCGM 100:2008, 5.1.2): the radius changes by d/4h for each part of the base, by 1/2 - d²/8h² for the height. */
function uncertaintyOf(base: Known<number>, height: Known<number>): number {
  const [d, h] = [base.value, height.value]
  return Math.hypot(
    (d / (4 * h)) * (base.uncertainty ?? 0),
    (1 / 2 - d ** 2 / (8 * h ** 2)) * (height.uncertainty ?? 0),
  )
}

const RADIUS_ASK: Ask = {
  pointer: '/sign/measured',
  ask: 'What is the dome radius of single dots (braille.domeRadius)?',
  unit: 'mm',
}

function domeRadius(block: BrailleBlock, n: number): Found {
  const { dotBaseDiameter, dotHeight, dotShape, place } = block
  if (isKnown(dotShape) && !DOMED.includes(dotShape.value)) return nothing(NO_DOME)
  if (!isKnown(dotBaseDiameter) || !isKnown(dotHeight)) {
    const gaps = [gap(dotBaseDiameter, 'dotBaseDiameter'), gap(dotHeight, 'dotHeight')].flat()
    return { observations: [], gaps }
  }
  const observation = radiusOf(dotBaseDiameter, dotHeight, block)
  if (!varies(dotBaseDiameter) || !varies(dotHeight)) return { observations: [observation], gaps: [] }
  const open: Gap = { reason: 'missing-fact', why: NOT_OF_ONE_DOT, places: [place], ask: RADIUS_ASK }
  return { observations: [{ ...observation, atLeast: open }], gaps: [] }

  function gap(fact: Fact<number>, key: 'dotBaseDiameter' | 'dotHeight'): Gap[] {
    if (isKnown(fact)) return []
    return [gapOf(fact, place, { ...ASKS[key], pointer: pointerOf(place, 'braille', n, key) })]
  }
}

export const DOME: Quantities = {
  'braille.domeRadius': {
    unit: 'mm',
    method: 'Radius of the sphere whose cap has the base and the height of the dot.',
    couldBe: ['braille'],
    doubt: 'more',
    take: eachBlock(domeRadius),
  },
}
