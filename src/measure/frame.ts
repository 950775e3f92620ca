import type { Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'
import { isKnown, type BrailleBlock, type Lettering, type Sign } from '../sign/sign.js'

/**
 * Up and down as a reader has them. A sign may be drawn lying on its side or upside down; its braille then tells the
 * reading direction. Points in the frame have x along the lines and y downwards, in millimetres.
 */
export interface Frame {
  /** Degrees from the drawing's x axis to the reading direction. */
  rotation: number
  of: (point: Point) => Point
}

/** Rounding in a fit of the reading direction: below this many degrees a sign counts as drawn upright. */
const UPRIGHT_WITHIN = 0.5

export function frameOf(sign: Sign): Frame {
  const fitted = sign.braille.find((block) => block.lines.length > 0)?.rotation ?? 0
  const quarters = Math.round(fitted / 90) * 90
  const rotation = Math.abs(fitted - quarters) <= UPRIGHT_WITHIN ? quarters : fitted
  const [cos, sin] = exactly(rotation)
  return { rotation, of: ({ x, y }) => ({ x: cos * x + sin * y, y: cos * y - sin * x }) }
}

/** Cosine and sine, exact at the quarter turns. */
function exactly(degrees: number): [number, number] {
  const quarter = (((degrees / 90) % 4) + 4) % 4
  const exact: Record<number, [number, number]> = { 0: [1, 0], 1: [0, 1], 2: [-1, 0], 3: [0, -1] }
  return exact[quarter] ?? [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)]
}

/** From top to bottom and from left to right, in the frame. Ends that are not known are infinite. */
export interface Extent {
  left: number
  right: number
  top: number
  bottom: number
}

export function extentOf(points: Iterable<Point>, grow = 0): Extent | undefined {
  const extent = { left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity }
  for (const { x, y } of points) {
    extent.left = Math.min(extent.left, x - grow)
    extent.right = Math.max(extent.right, x + grow)
    extent.top = Math.min(extent.top, y - grow)
    extent.bottom = Math.max(extent.bottom, y + grow)
  }
  return extent.left <= extent.right ? extent : undefined
}

export const corners = ({ x, y, width, height }: Box): Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
]

export const extentOfBox = (box: Box, frame: Frame): Extent => extentOf(corners(box).map(frame.of)) as Extent

/**
 * Where each line of the lettering is: the box of its drawn outlines, else from the baseline up by the character height and from the
 * baseline's start to an end that is not known. Undefined for a line whose place is not known.
 */
export function linesOf(lettering: Lettering, frame: Frame): (Extent | undefined)[] {
  const { characterHeight } = lettering
  return lettering.lines.map(({ outlines, baseline }) => {
    if (outlines.length > 0) return extentOf(outlines.flat().map(frame.of))
    if (!isKnown(baseline) || !isKnown(characterHeight)) return undefined
    const { x, y } = frame.of(baseline.value)
    return { left: x, right: Infinity, top: y - characterHeight.value, bottom: y }
  })
}

/** The dots of a block with half a base diameter round their centres; undefined when no dot's place is known. */
export function extentOfBlock(block: BrailleBlock, frame: Frame): Extent | undefined {
  const radius = isKnown(block.dotBaseDiameter) ? block.dotBaseDiameter.value / 2 : 0
  return extentOf(
    block.lines.flatMap((line) => line.dots.map(frame.of)),
    radius,
  )
}

/** Whether a length of the sign comes from its drawing: then the drawing's arithmetic is in it. */
export const isDrawn = (lettering: Lettering[], blocks: BrailleBlock[]): boolean =>
  lettering.some((l) => l.lines.some((line) => line.outlines.length > 0)) ||
  blocks.some((b) => isKnown(b.dotBaseDiameter) && b.dotBaseDiameter.basis === 'drawn')
