import { boxesOverlap, type Box } from '../geometry/box.js'
import { effectOfClip } from './clip.js'
import { ANYTHING, type CouldBe } from './collector.js'
import type { Element } from './document.js'
import { sourceAt, type Context, type Scene } from './scene.js'

/** Whether something painted is seen as it was drawn: not behind a barrier, not cut by a clip, not off the page. */

/**
 * True when it may be listed. Otherwise it was entered among what was passed over, or is certainly not seen.
 * @param box round all that is painted, strokes included, in millimetres.
 * @param couldBe what is lost when it is passed over.
 * @param offPage whether what lies wholly off the page is left to be told later.
 */
export function isSeenWhole(
  scene: Scene,
  element: Element,
  context: Context,
  box: Box,
  couldBe: CouldBe = ANYTHING,
  offPage: 'ignored' | 'seen' = 'ignored',
): boolean {
  const effects = context.clips.map((clip) => effectOfClip(clip, box))
  if (effects.includes('hides')) return false
  const plain = !context.barrier && !effects.includes('cuts')
  if (isOffPage(scene, box) && !(plain && offPage === 'seen')) {
    scene.collector.ignore(sourceAt(element, context), 'It lies wholly outside of the page.', [], box)
    return false
  }
  if (context.barrier) {
    context.barrier.hold(couldBe, box)
    return false
  }
  if (effects.includes('cuts')) {
    scene.collector.ignore(sourceAt(element, context), 'A clip cuts through it, which is not worked out.', couldBe, box)
    return false
  }
  return true
}

/** The outermost svg element shows nothing beyond its own viewport (SVG 1.1, 14.3.2). */
export function isOffPage({ page: { width, height } }: Scene, box: Box): boolean {
  if (width === undefined || height === undefined) return false
  const painted = {
    ...box,
    width: Math.max(box.width, Number.MIN_VALUE),
    height: Math.max(box.height, Number.MIN_VALUE),
  }
  return !boxesOverlap({ x: 0, y: 0, width, height }, painted)
}
