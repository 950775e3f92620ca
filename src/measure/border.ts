import { nearestTo } from '../geometry/dots.js'
import type { Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'
import { isKnown, type Border, type Place, type Sign } from '../sign/sign.js'
import { gapOf, nothing, pointerOf } from './facts.js'
import type { Found } from './quantity.js'
import { corners } from './frame.js'

/** Distances from raised borders. A border is drawn contours, or the frame of a box as thick as its width. */

/** The borders that are raised, and what keeps others from being told. */
export function raisedBorders(sign: Sign): { borders: Border[]; unsure: Found } {
  const borders: Border[] = []
  const unsure: Found = { observations: [], gaps: [] }
  sign.borders.forEach((border, n) => {
    const { raised, width, outlines, place } = border
    if (!isKnown(raised)) {
      unsure.gaps.push(
        gapOf(raised, place, {
          pointer: pointerOf(place, 'borders', n, 'raised'),
          ask: 'Is the border raised?',
          choices: ['true', 'false'],
        }),
      )
    } else if (raised.value && outlines.length === 0 && !isKnown(width)) {
      unsure.gaps.push(
        gapOf(width, place, {
          pointer: pointerOf(place, 'borders', n, 'width'),
          ask: 'How wide is the border?',
          unit: 'mm',
        }),
      )
    } else if (raised.value) borders.push(border)
  })
  return {
    borders,
    unsure: borders.length + unsure.gaps.length > 0 ? unsure : nothing('The sign has no raised border.'),
  }
}

/** The outer and the inner edge of a box's frame. An inner edge that is left with no room is none. */
function frameOutlines(box: Box, width: number): Point[][] {
  const inner = { x: box.x + width, y: box.y + width, width: box.width - 2 * width, height: box.height - 2 * width }
  return inner.width > 0 && inner.height > 0 ? [corners(box), corners(inner)] : [corners(box)]
}

/**
 * The least distance of points, each with a radius round it, from one border.
 * @throws {RangeError} when there is too much to compare.
 */
export function clearOfBorder(border: Border, points: Point[], radius: number, place: Place, mostWork: number): Found {
  const drawn = border.outlines.length > 0
  const outlines = drawn ? border.outlines : frameOutlines(border.box, isKnown(border.width) ? border.width.value : 0)
  const nearest = nearestTo(outlines, points, mostWork)
  if (!nearest) return { observations: [], gaps: [] }
  const value = Math.max(0, nearest.distance - radius)
  return { observations: [{ value, basis: drawn ? 'drawn' : 'declared', places: [place, border.place] }], gaps: [] }
}
