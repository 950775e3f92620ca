import type { Box } from '../geometry/box.js'
import { boxed } from '../geometry/dots.js'
import type { Polyline } from '../geometry/outline.js'
import { leastGap } from '../geometry/least-gap.js'
import { contains } from '../geometry/polyline.js'
import { isKnown, type Basis, type Border, type Lettering, type Place, type Sign } from '../sign/sign.js'
import { eachBlock } from './braille.js'
import { clearanceOf, fromDots, tooMuch } from './dots.js'
import { gapOf, join, nothing, pointerOf } from './facts.js'
import { corners, frameOf, linesOf } from './frame.js'
import { letteringIn, noLettering } from './lettering.js'
import type { Found, Quantities, Subject } from './quantity.js'

/**
 * Distances from raised borders. A border is drawn contours, or the frame of a box as thick as its width.
 *
 * Datum: from the edge of the dots' bases (2010 ADA Standards 703.3.2) or of the raised outlines (703.2.7) to the nearest edge of the
 * border. Of described characters only the left end and the height are known: that may show a fault, never its absence.
 */

const NO_BORDER = 'The sign has no raised border.'

interface Outlined {
  outlines: Polyline[]
  basis: Basis
  place: Place
}

/** The borders that are raised, and what keeps others from being told. */
function raisedBorders(sign: Sign): { borders: Outlined[]; unsure: Found } {
  const borders: Outlined[] = []
  const unsure: Found = { observations: [], gaps: [] }
  sign.borders.forEach((border, n) => {
    const { raised, width, outlines, place } = border
    const pointer = (key: string) => pointerOf(place, 'borders', n, key)
    if (!isKnown(raised)) {
      const ask = { pointer: pointer('raised'), ask: 'Is the border raised?', choices: ['true', 'false'] }
      unsure.gaps.push(gapOf(raised, place, ask))
    } else if (raised.value && outlines.length === 0 && !isKnown(width)) {
      const ask = { pointer: pointer('width'), ask: 'How wide is the border?', unit: 'mm' as const }
      unsure.gaps.push(gapOf(width, place, ask))
    } else if (raised.value) borders.push(outlined(border))
  })
  return { borders, unsure: borders.length + unsure.gaps.length > 0 ? unsure : nothing(NO_BORDER) }
}

const outlined = ({ outlines, box, width, place }: Border): Outlined =>
  outlines.length > 0
    ? { outlines, basis: 'drawn', place }
    : { outlines: frameOutlines(box, isKnown(width) ? width.value : 0), basis: 'declared', place }

/** The outer and the inner edge of a box's frame. An inner edge that is left with no room is none. */
function frameOutlines(box: Box, width: number): Polyline[] {
  const inner = { x: box.x + width, y: box.y + width, width: box.width - 2 * width, height: box.height - 2 * width }
  return inner.width > 0 && inner.height > 0 ? [corners(box), corners(inner)] : [corners(box)]
}

function brailleToBorder(subject: Subject): Found {
  const { borders, unsure } = raisedBorders(subject.sign)
  if (borders.length === 0) return unsure
  const withBoxes = borders.map(({ outlines, basis, place }) => ({ outlines: boxed(outlines), basis, place }))
  const found = eachBlock((block, n) =>
    fromDots(block, n, () =>
      join(
        withBoxes.map(({ outlines, basis, place }) => clearanceOf(block, outlines, basis, place)),
        NO_BORDER,
      ),
    ),
  )(subject)
  return join([found, unsure], NO_BORDER)
}

/** Edges of characters and border taken together; more are not measured. */
const MOST_EDGES = 200_000

/** From the edges of characters to a border; 0 where they stand on it. */
function fromOutlines(characters: Polyline[], border: Outlined, basis: Basis, place: Place): Found {
  if (characters.length === 0) return { observations: [], gaps: [] }
  const edges = [...characters, ...border.outlines].reduce((n, polyline) => n + polyline.length, 0)
  if (edges > MOST_EDGES) return tooMuch(place)
  const on = characters.some(([corner]) => corner && contains(border.outlines, corner, 'evenodd'))
  const value = on ? 0 : leastGap(characters, border.outlines)
  return { observations: [{ value, basis, places: [place, border.place] }], gaps: [] }
}

const WIDTH_NOT_KNOWN =
  'the width of the characters is not in the description, so their distance from the border is known at the left end only'

/** From the left edge of described characters, baseline to top, to the borders, and what stays open at the right. */
function fromLeftEdge(lettering: Lettering, borders: Outlined[], sign: Sign): Found {
  const edges = linesOf(lettering, frameOf(sign)).flatMap((line) =>
    line ? [[line.top, line.bottom].map((y) => ({ x: line.left, y }))] : [],
  )
  const known = borders.map((border) => fromOutlines(edges, border, border.basis, lettering.place))
  const ask = { pointer: '/drawing', ask: 'What does the sign look like, at true scale?' }
  const gap = gapOf({ unknown: 'missing-fact', why: WIDTH_NOT_KNOWN }, lettering.place, ask)
  return join([...known, { observations: [], gaps: [gap] }], NO_BORDER)
}

function charactersToBorder(subject: Subject): Found {
  const { borders, unsure } = raisedBorders(subject.sign)
  if (borders.length === 0) return unsure
  const found = letteringIn(subject).map(({ lettering }): Found => {
    const outlines = lettering.lines.flatMap((line) => line.outlines)
    if (outlines.length === 0) return fromLeftEdge(lettering, borders, subject.sign)
    return join(
      borders.map((border) => fromOutlines(outlines, border, 'drawn', lettering.place)),
      NO_BORDER,
    )
  })
  return join(found.length > 0 ? [...found, unsure] : [], noLettering(subject))
}

export const BORDER: Quantities = {
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
