import { boxContains, type Box } from '../geometry/box.js'
import {
  isKnown,
  type BrailleBlock,
  type BrailleLine,
  type Lettering,
  type LetteringLine,
  type Unread,
} from '../sign/sign.js'

/**
 * Characters and braille that reach over the edge of the panel, or of the page where no panel is known: they cannot be made as they are
 * drawn, so that what was read of them shows nothing.
 */

/** Rounding of coordinates, millimetres. */
const SLACK = 0.05

/** @param edge the panel, or the page */
export function overTheEdge(
  lettering: readonly Lettering[],
  braille: readonly BrailleBlock[],
  edge: { box: Box; of: 'panel' | 'page' },
): Unread[] {
  const beyond = ({ place, baseline }: LetteringLine | BrailleLine) => {
    const box = place.box ?? (isKnown(baseline) ? { ...baseline.value, width: 0, height: 0 } : undefined)
    return box !== undefined && !boxContains(edge.box, box, SLACK)
  }
  const characters = lettering.flatMap((set) => set.lines.filter(beyond).map(({ place }) => place))
  const cells = braille.flatMap((block) => block.lines.filter(beyond).map(({ place }) => place))
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
