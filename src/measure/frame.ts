import type { Box } from '../geometry/box.js'
import type { Point } from '../geometry/point.js'
import { isKnown, type BrailleBlock, type Lettering, type Panel, type Sign } from '../sign/sign.js'
import { lieOfSign } from './lie.js'

/**
 * Up and down as a reader has them. A sign may be drawn lying on its side, upside down or mirrored; its characters then tell
 * the reading direction, or its braille where no character was read. Points in the frame have x along the lines and y downwards, in millimetres.
 */
export interface Frame {
  /** Degrees from the drawing's x axis to the reading direction, the mirror taken away. */
  rotation: number
  of: (point: Point) => Point
  /** Where lines and blocks are, once it has been asked. */
  lines: Map<Lettering, (Extent | undefined)[]>
  blocks: Map<BrailleBlock, Extent | undefined>
}

/** Rounding in a fit of the reading direction: below this many degrees characters run along the edges of the panel. */
const UPRIGHT_WITHIN = 0.5

/** The sign that is being measured: one at a time, so that no more than one is held. */
let current: { sign: Sign; frame: Frame } | undefined

/** The frame of a sign, made once while it is measured. */
export function frameOf(sign: Sign): Frame {
  if (current?.sign !== sign) current = { sign, frame: makeFrame(sign) }
  return current.frame
}

function makeFrame(sign: Sign): Frame {
  const lie = lieOfSign(raisedFirst(sign), sign.braille)
  const fitted = lie?.rotation ?? 0
  const sides = sign.panel.turned?.rotation ?? 0
  const quarters = Math.round((fitted - sides) / 90) * 90 + sides
  const rotation = Math.abs(fitted - quarters) <= UPRIGHT_WITHIN ? quarters : fitted
  const [cos, sin] = exactly(rotation)
  const turned = ({ x, y }: Point): Point => ({ x: cos * x + sin * y, y: cos * y - sin * x })
  const upright = rotation === 0 ? (point: Point) => point : turned
  const of = lie?.mirrored ? ({ x, y }: Point) => upright({ x: -x, y }) : upright
  return { rotation, of, lines: new Map(), blocks: new Map() }
}

/** Characters that are read by touch before those that are only seen. */
const raisedFirst = ({ lettering }: Sign): Lettering[] =>
  [...lettering].sort((a, b) => Number(a.part === 'visual') - Number(b.part === 'visual'))

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

const nowhere = (): Extent => ({ left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity })

const known = (extent: Extent): Extent | undefined => (extent.left <= extent.right ? extent : undefined)

function widen(extent: Extent, points: Iterable<Point>, frame: Frame, grow: number): void {
  for (const point of points) {
    const { x, y } = frame.of(point)
    if (x - grow < extent.left) extent.left = x - grow
    if (x + grow > extent.right) extent.right = x + grow
    if (y - grow < extent.top) extent.top = y - grow
    if (y + grow > extent.bottom) extent.bottom = y + grow
  }
}

/** The extent of outlines; undefined when they have no points. */
export function extentOfOutlines(outlines: Iterable<Iterable<Point>>, frame: Frame): Extent | undefined {
  const extent = nowhere()
  for (const outline of outlines) widen(extent, outline, frame, 0)
  return known(extent)
}

export const corners = ({ x, y, width, height }: Box): Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
]

export function extentOfBox(box: Box, frame: Frame): Extent {
  const extent = nowhere()
  widen(extent, corners(box), frame, 0)
  return extent
}

/** Degrees by which a line may be off and be level still: what a fit of few dots is sure to. Our own figure. */
export const LEVEL_WITHIN = 1

/** Whether a direction runs along or across the sides of a shape, as nearly as can be told. Both in degrees from the drawing's x axis. */
export function isLevelWith(rotation: number, sides: number): boolean {
  const quarters = (rotation - sides) / 90
  return Math.abs(quarters - Math.round(quarters)) * 90 <= LEVEL_WITHIN
}

/** A panel that is drawn, in the frame; undefined when it is not drawn, or when its edges do not run with the frame. */
export function extentOfPanel(panel: Panel, frame: Frame): Extent | undefined {
  const { box } = panel.place
  if (!box || !(panel.turned ? isLevelWith(frame.rotation, panel.turned.rotation) : frame.rotation % 90 === 0))
    return undefined
  const extent = nowhere()
  widen(extent, panel.turned?.corners ?? corners(box), frame, 0)
  return extent
}

/**
 * Where each line of the lettering is: the box of its drawn outlines, else from the baseline up by the character height and from the
 * baseline's start to an end that is not known. Undefined for a line whose place is not known.
 */
export function linesOf(lettering: Lettering, frame: Frame): (Extent | undefined)[] {
  const before = frame.lines.get(lettering)
  if (before) return before
  const { characterHeight } = lettering
  const lines = lettering.lines.map(({ outlines, baseline }) => {
    if (outlines.length > 0) return extentOfOutlines(outlines, frame)
    if (!isKnown(baseline) || !isKnown(characterHeight)) return undefined
    const { x, y } = frame.of(baseline.value)
    return { left: x, right: Infinity, top: y - characterHeight.value, bottom: y }
  })
  frame.lines.set(lettering, lines)
  return lines
}

/** The dots of a block with half a base diameter round their centres; undefined when no dot's place is known. */
export function extentOfBlock(block: BrailleBlock, frame: Frame): Extent | undefined {
  if (frame.blocks.has(block)) return frame.blocks.get(block)
  const radius = isKnown(block.dotBaseDiameter) ? block.dotBaseDiameter.value / 2 : 0
  const around = nowhere()
  for (const { dots } of block.lines) widen(around, dots, frame, radius)
  const extent = known(around)
  frame.blocks.set(block, extent)
  return extent
}

/** Whether a length of the sign comes from its drawing: then the drawing's arithmetic is in it. */
export const isDrawn = (lettering: Lettering[], blocks: BrailleBlock[]): boolean =>
  lettering.some((l) => l.lines.some((line) => line.outlines.length > 0)) ||
  blocks.some((b) => isKnown(b.dotBaseDiameter) && b.dotBaseDiameter.basis === 'drawn')
