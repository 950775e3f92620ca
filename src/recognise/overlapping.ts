import Flatbush from 'flatbush'
import type { Box } from '../geometry/box.js'

/** Which of many boxes a box meets, found without looking at all of them: their numbers, in no order. */
export type Overlapping = (box: Box, slack?: number) => number[]

export function overlappingOf(boxes: readonly Box[]): Overlapping {
  if (boxes.length === 0) return () => []
  const index = new Flatbush(boxes.length)
  for (const { x, y, width, height } of boxes) index.add(x, y, x + width, y + height)
  index.finish()
  return ({ x, y, width, height }, slack = 0) =>
    index.search(x - slack, y - slack, x + width + slack, y + height + slack)
}
