import { boxContains, boxOfPoints, type Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'
import {
  isKnown,
  type BrailleBlock,
  type BrailleLine,
  type Lettering,
  type LetteringLine,
  type Unread,
} from '../sign/sign.js'
import type { Upright } from '../geometry/upright.js'

/**
 * Characters and braille that reach over the edge of the panel, or of the page where no panel is known: they cannot be made as they are
 * drawn, so that what was read of them shows nothing.
 */

/** Rounding of coordinates, millimetres. */
const SLACK = 0.05

/** The panel, or the page: its box on the drawing, and as it lies. */
export interface Edge {
  box: Box
  of: 'panel' | 'page'
  upright: Upright
}

export function overTheEdge(lettering: readonly Lettering[], braille: readonly BrailleBlock[], edge: Edge): Unread[] {
  const characters = lettering.flatMap((set) =>
    set.lines.filter((line) => isBeyond(edge, line, () => line.outlines.flat(), 0)).map(({ place }) => place),
  )
  const cells = braille.flatMap(({ lines, dotBaseDiameter: diameter }) => {
    const radius = isKnown(diameter) ? diameter.value / 2 : 0
    return lines.filter((line) => isBeyond(edge, line, () => line.dots, radius)).map(({ place }) => place)
  })
  return [
    ...characters.map((place): Unread => ({
      place,
      why: `The characters reach over the edge of the ${edge.of}.`,
      couldBe: ['lettering'],
    })),
    ...cells.map((place): Unread => ({
      place,
      why: `The braille reaches over the edge of the ${edge.of}.`,
      couldBe: ['braille'],
    })),
  ]
}

/**
 * @param marks of the line, the outlines of its characters or its dots
 * @param radius round each mark
 */
function isBeyond(
  edge: Edge,
  { place, baseline }: LetteringLine | BrailleLine,
  marks: () => Point[],
  radius: number,
): boolean {
  const { rotation, box, of } = edge.upright
  const start = isKnown(baseline) ? [baseline.value] : []
  if (rotation === 0) return isOutside(box, place.box ?? boxOfPoints(start), 0)
  // The box of a turned line is larger than the line: its marks are put upright with the edge.
  const upright = marks().map(of)
  return upright.length > 0
    ? isOutside(box, boxOfPoints(upright), radius)
    : isOutside(box, boxOfPoints(start.map(of)), 0)
}

const isOutside = (edge: Box, box: Box | undefined, radius: number): boolean =>
  box !== undefined && !boxContains(edge, box, SLACK - radius)
