import type { Declared } from './cascade.js'
import { clipsOf } from './clip.js'
import type { Clip } from './clipping.js'
import { Barrier } from './collector.js'
import type { Element } from './document.js'
import { clipsOfMask } from './mask.js'
import { sourceAt, type Context, type Scene } from './scene.js'

/**
 * Clips, masks, filters and blending of an element (SVG 1.1, chapters 14 and 15). Clips and masks that are worked out join
 * those of the elements round it; what is not worked out becomes a barrier, and a filter leaves only the geometry known.
 */
export function applyEffects(scene: Scene, element: Element, declared: Declared, here: Context): void {
  const valueOf = (property: string): string | undefined => {
    const written = declared.get(property)?.trim()
    return written === undefined || written === '' || /^(none|normal)$/.test(written) ? undefined : written
  }
  const put = (why: string) => (here.barrier ??= new Barrier(sourceAt(element, here), why, here.labels))
  if (valueOf('filter') !== undefined)
    here.tint ??= new Barrier(
      sourceAt(element, here),
      'It is drawn through a filter: its colours are not worked out.',
      here.labels,
    )
  if (valueOf('mix-blend-mode') !== undefined)
    scene.collector.ignore(
      sourceAt(element, here),
      'Its colours are blended with what is below.',
      ['colour'],
      undefined,
      here.labels,
    )
  const clipPath = valueOf('clip-path')
  const clips = clipPath === undefined ? [] : clipsOf(scene, element, clipPath, here)
  if (clips === 'unresolved') put('It is clipped in a way that is not worked out.')
  else here.clips = joined(here.clips, clips)
  const mask = valueOf('mask') ?? valueOf('mask-image')
  const masks = mask === undefined ? [] : clipsOfMask(scene, element, mask, here)
  if (masks === 'unresolved') put('It is drawn through a mask that is not worked out.')
  else here.clips = joined(here.clips, masks)
}

/** A clip that holds already need not hold twice. */
function joined(outer: readonly Clip[], inner: readonly Clip[]): readonly Clip[] {
  const added = inner.filter((clip) => !outer.includes(clip))
  return added.length === 0 ? outer : [...outer, ...added]
}

/** Enters what barriers held back inside an element when the walk leaves it for its parent. */
export function leave(scene: Scene, inside: Context, parent: Context): void {
  if (inside.barrier !== parent.barrier) inside.barrier?.report(scene.collector)
  if (inside.tint !== parent.tint) inside.tint?.report(scene.collector)
}
