import type { Shape } from '../drawing/drawing.js'
import { unionOfBoxes } from '../geometry/box.js'
import { cornersIn } from '../geometry/curve.js'
import type { Sign } from '../sign/sign.js'
import { OUTLINE_TOLERANCE } from './pieces.js'

/**
 * How much of a drawing is looked at outline by outline. A sign has some hundreds of outlines; a picture that was traced or
 * a texture has as many as the file holds, and every one of them may be weighed against every other.
 */

/** Lines and curves, and so many more for each contour, that all outlines may have together. */
export const MOST_OUTLINE_PARTS = 50_000
const PARTS_OF_A_CONTOUR = 4

/** Corners that all outlines may have together once their curves are cut into straight edges. */
export const MOST_CORNERS = 2_000_000

const partsOf = ({ contours }: Shape): number =>
  contours.reduce((n, { segments }) => n + segments.length + PARTS_OF_A_CONTOUR, 0)

const cornersOf = ({ contours }: Shape): number =>
  contours.reduce((n, contour) => n + cornersIn(contour, OUTLINE_TOLERANCE), 0)

/** The shapes in paint order that still fit, and one entry for all the others. */
export function withinBudget<T extends { shape: Shape }>(items: readonly T[]): { kept: T[]; unread: Sign['unread'] } {
  let left = MOST_OUTLINE_PARTS
  let corners = MOST_CORNERS
  const kept: T[] = []
  const over: Shape[] = []
  let most = `${MOST_CORNERS} corners when their curves are cut into straight edges`
  for (const item of items) {
    const parts = partsOf(item.shape)
    const own = parts > left ? 0 : cornersOf(item.shape)
    if (parts > left) most = `${MOST_OUTLINE_PARTS} lines and curves`
    if (parts > left || own > corners) over.push(item.shape)
    else {
      left -= parts
      corners -= own
      kept.push(item)
    }
  }
  if (over.length === 0) return { kept, unread: [] }
  const box = unionOfBoxes(over.map((shape) => shape.box))
  const why = `${over.length === 1 ? 'One shape was' : `${over.length} shapes were`} not looked at: the outlines of the drawing have more than ${most}.`
  const place = { element: 'drawing', box, source: over[0].source }
  return { kept, unread: [{ place, why, couldBe: ['lettering', 'pictogram', 'border', 'colour'] }] }
}
