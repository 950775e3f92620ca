import type { Box } from '../geometry/box.js'
import type { Piece } from './pieces.js'

/** Outlines in groups that stand apart from each other, as seen against their own size. */

/** Two outlines belong together when they are no farther apart than this share of the larger one's size. */
const REACH = 1.2
/** More outlines are not grouped: the pairs of them are looked at one by one. */
const MOST_OUTLINES = 600

/** The groups, in the order of their first outline; one group when there are too many outlines. */
export function regionsOf(pieces: readonly Piece[]): Piece[][] {
  if (pieces.length > MOST_OUTLINES) return [[...pieces]]
  const group = pieces.map((_, i) => i)
  const find = (i: number): number => (group[i] === i ? i : (group[i] = find(group[i])))
  pieces.forEach((a, i) => {
    for (let j = 0; j < i; j++) {
      const b = pieces[j]
      const reach = REACH * Math.max(sizeOf(a.box), sizeOf(b.box))
      if (distanceOf(a.box, b.box) <= reach) group[find(i)] = find(j)
    }
  })
  const regions = new Map<number, Piece[]>()
  pieces.forEach((piece, i) => {
    const root = find(i)
    regions.set(root, [...(regions.get(root) ?? []), piece])
  })
  return [...regions.values()]
}

/** The larger side, but for a bar: one that is longer than any letter is high reaches no farther than it is thick. */
function sizeOf({ width, height }: Box): number {
  const [less, more] = width < height ? [width, height] : [height, width]
  return more > BAR * less ? less : more
}

/** An I of a light face is some ten times as high as it is wide. */
const BAR = 15

/** Between the nearest points of two boxes, millimetres. */
export const distanceOf = (a: Box, b: Box): number =>
  Math.hypot(
    Math.max(a.x - b.x - b.width, b.x - a.x - a.width, 0),
    Math.max(a.y - b.y - b.height, b.y - a.y - a.height, 0),
  )
