import { boxesOverlap, unionOfBoxes, type Box } from '../geometry/box.js'
import { effectOfClip, seenThrough, type Clip, type Seen } from './clipping.js'
import { ANYTHING, type CouldBe } from './collector.js'
import type { Element } from './document.js'
import type { Shape } from './drawing.js'
import { grown } from './edges.js'

import { sourceAt, type Context, type Scene } from './scene.js'

/** Whether something painted is seen as it was drawn: not behind a barrier, not cut by a clip, not off the page. */

const COLOUR: CouldBe = ['colour']

const CUT = 'A clip or mask cuts through it, which is not worked out.'

/**
 * Of something of which only a box is known: true when it may be listed. Otherwise it was entered among what was passed over,
 * or is certainly not seen.
 * @param box round all that is painted, strokes included, in millimetres.
 * @param couldBe what is lost when it is passed over.
 */
export function isSeenWhole(scene: Scene, element: Element, context: Context, box: Box, couldBe: CouldBe): boolean {
  const effects = context.clips.map((clip) => effectOfClip(clip, box))
  if (effects.includes('hides') || !isOnPage(scene, element, context, box)) return false
  if (context.barrier) {
    context.barrier.hold(couldBe, box)
    return false
  }
  if (effects.includes('cuts')) {
    scene.collector.ignore(sourceAt(element, context), CUT, couldBe, box, context.labels)
    return false
  }
  context.tint?.hold(COLOUR, box)
  return true
}

/**
 * Lists what is seen of a shape, and enters what a clip cuts among what was passed over. Whether what lies off the page, and
 * strokes of width 0, are read is told at the end.
 * @throws {Refusal} `too-complex` when too much is held against clips that are too large.
 */
export function showShape(scene: Scene, element: Element, context: Context, shape: Shape): void {
  const { shapes, cut } =
    context.clips.length === 0 ? { shapes: [shape], cut: [] } : throughClips(scene, element, context, shape)
  const { barrier } = context
  if (barrier) {
    for (const box of [...shapes.map((seen) => seen.box), ...cut]) barrier.hold(ANYTHING, box)
    return
  }
  const { collector } = scene
  const around = unionOfBoxes(cut)
  if (around && isOnPage(scene, element, context, around))
    collector.ignore(sourceAt(element, context), CUT, ANYTHING, around, context.labels)
  for (const seen of shapes) {
    collector.shapes.push(seen)
    context.tint?.hold(COLOUR, seen.box)
    if (isOffPage(scene, context, reachOf(seen))) collector.offPage.add(seen)
    if (!seen.fill && seen.stroke?.width === 0) collector.thin.add(seen)
  }
}

/**
 * All clips hold at once, so their order is free: the innermost comes first, and one that cuts is put off, for the others may
 * leave less for it to cut.
 */
function throughClips(scene: Scene, element: Element, { clips }: Context, shape: Shape): Seen {
  let shapes = [shape]
  let cutting = [...clips].reverse()
  for (let before = cutting.length + 1; cutting.length > 0 && cutting.length < before;) {
    before = cutting.length
    cutting = cutting.filter((clip) => {
      const seen = throughClip(scene, element, clip, shapes)
      if (seen.cut.length === 0) shapes = seen.shapes
      return seen.cut.length > 0
    })
  }
  const cut: Box[] = []
  for (const clip of cutting) {
    const seen = throughClip(scene, element, clip, shapes)
    cut.push(...seen.cut)
    shapes = seen.shapes
  }
  return { shapes, cut }
}

function throughClip(scene: Scene, element: Element, clip: Clip, shapes: readonly Shape[]): Seen {
  const spend = (edges: number) => scene.spend('clipEdges', edges, element)
  const seen = shapes.map((shape) => seenThrough(clip, shape, spend))
  const left = seen.flatMap((one) => one.shapes)
  if (left.length > 1) scene.spend('rendered', left.length, element)
  return { shapes: left, cut: seen.flatMap((one) => one.cut) }
}

/** The box with half of the stroke; the points of mitred corners may reach further. */
const reachOf = ({ box, stroke }: Shape): Box => (stroke ? grown(box, stroke.width / 2) : box)

/** The outermost svg element shows nothing beyond its own viewport (SVG 1.1, 14.3.2). */
function isOffPage({ page: { width, height } }: Scene, { aside }: Context, box: Box): boolean {
  if (aside || width === undefined || height === undefined) return false
  if (box.x > 0 && box.y > 0 && box.x < width && box.y < height) return false
  const painted = {
    ...box,
    width: Math.max(box.width, Number.MIN_VALUE),
    height: Math.max(box.height, Number.MIN_VALUE),
  }
  return !boxesOverlap({ x: 0, y: 0, width, height }, painted)
}

function isOnPage(scene: Scene, element: Element, context: Context, box: Box): boolean {
  if (!isOffPage(scene, context, box)) return true
  scene.collector.ignore(sourceAt(element, context), 'It lies wholly outside of the page.', [], box)
  return false
}
