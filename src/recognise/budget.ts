import type { Shape } from '../drawing/drawing.js'
import { unionOfBoxes } from '../geometry/box.js'
import type { Sign } from '../sign/sign.js'

/**
 * How much of a drawing is looked at outline by outline. A sign has some hundreds of outlines; a picture that was traced or
 * a texture has as many as the file holds, and every one of them may be weighed against every other.
 */

/** Lines and curves, and so many more for each contour, that all outlines may have together. */
export const MOST_OUTLINE_PARTS = 50_000
const PARTS_OF_A_CONTOUR = 4

const partsOf = ({ contours }: Shape): number =>
  contours.reduce((n, { segments }) => n + segments.length + PARTS_OF_A_CONTOUR, 0)

/** The shapes in paint order that still fit, and one entry for all the others. */
export function withinBudget<T extends { shape: Shape }>(items: readonly T[]): { kept: T[]; unread: Sign['unread'] } {
  let left = MOST_OUTLINE_PARTS
  const kept: T[] = []
  const over: Shape[] = []
  for (const item of items) {
    const parts = partsOf(item.shape)
    if (parts > left) over.push(item.shape)
    else {
      left -= parts
      kept.push(item)
    }
  }
  if (over.length === 0) return { kept, unread: [] }
  const box = unionOfBoxes(over.map((shape) => shape.box))
  const why = `${over.length === 1 ? 'One shape was' : `${over.length} shapes were`} not looked at: the outlines of the drawing have more than ${MOST_OUTLINE_PARTS} lines and curves.`
  const place = { element: 'drawing', box, source: over[0].source }
  return { kept, unread: [{ place, why, couldBe: ['lettering', 'pictogram', 'border', 'colour'] }] }
}
