import { boxOfContours } from '../geometry/curve.js'
import { multiply, scaling, translation, type Matrix } from '../geometry/matrix.js'
import { circleOf } from './arc.js'
import { outlineOf, SHAPE_NAMES } from './basic-shapes.js'
import { Clip, seenThrough } from './clipping.js'
import { sourceOf } from './collector.js'
import { isElement, isSvg, XLINK_HREF, type Element } from './document.js'
import type { Shape } from './drawing.js'
import { parseLength } from './length.js'
import { objectBox } from './object-box.js'
import { parseReference } from './reference.js'
import { Region } from './region.js'
import { enterResource } from './resource.js'
import { lengthsAt, type Context, type Scene } from './scene.js'
import { computeStyle } from './style.js'
import { parseTransform } from './transform.js'

/**
 * Clips as regions in millimetres: SVG 1.1, 14.3. The shapes of a `clipPath` are joined; a clip on one of them, or on the
 * `clipPath` itself, cuts it further.
 */

/**
 * The clips of an element from its property `clip-path`, all of which hold; `unresolved` for one that is not worked out:
 * shapes of CSS, text inside, shapes that are cut.
 * @param context that of the element, in whose user space the clip stands.
 */
export function clipsOf(
  scene: Scene,
  clipped: Element,
  written: string,
  context: Context,
): readonly Clip[] | 'unresolved' {
  const reference = parseReference(written)
  if (!reference || reference.rest !== '') return 'unresolved'
  const element = scene.find(reference.target)
  if (!element) return reference.target.startsWith('#') ? [] : 'unresolved'
  return element.name === 'clipPath' ? clipsFrom(scene, clipped, element, context) : []
}

function clipsFrom(scene: Scene, clipped: Element, element: Element, context: Context): readonly Clip[] | 'unresolved' {
  const matrix = clipMatrix(scene, clipped, element, context)
  if (!matrix) return 'unresolved'
  const known = scene.clipsMade.get(element)
  if (known && known.context.viewport === context.viewport && sameMatrix(known.matrix, matrix)) return known.clips
  const { viewport } = context
  const inside = enterResource(scene, element, context, { matrix, viewport, opacity: 1 })
  if (!inside) return 'unresolved'
  const regions: Region[] = []
  for (const child of element.children) {
    if (!isElement(child) || !isSvg(child) || /^(title|desc|metadata)$/.test(child.name)) continue
    const found = regionsOf(scene, child, inside)
    if (found === 'unresolved') return 'unresolved'
    regions.push(...found)
  }
  const outer = clipsDeclared(scene, element, inside)
  if (outer === 'unresolved') return 'unresolved'
  const clips = [new Clip(regions), ...outer]
  scene.clipsMade.set(element, { context, matrix, clips })
  return clips
}

const sameMatrix = (p: Matrix, q: Matrix): boolean =>
  p.a === q.a && p.b === q.b && p.c === q.c && p.d === q.d && p.e === q.e && p.f === q.f

/** From the coordinates of the clip's content to millimetres. */
function clipMatrix(scene: Scene, clipped: Element, element: Element, context: Context): Matrix | undefined {
  const own = ownTransform(scene, element)
  if (!own) return undefined
  if (element.attributes.get('clipPathUnits')?.trim() !== 'objectBoundingBox') return multiply(context.matrix, own)
  const box = objectBox(scene, clipped, context)
  if (!box) return undefined
  const units = multiply(translation(box.x, box.y), scaling(box.width, box.height))
  return multiply(context.matrix, multiply(units, own))
}

function ownTransform(scene: Scene, element: Element): Matrix | undefined {
  const property = scene.cascade.of(element).get('transform')
  return property === undefined
    ? parseTransform(element.attributes.get('transform') ?? '', 'attribute')
    : parseTransform(property, 'property')
}

/** The clips that a clip or one of its shapes has itself. */
function clipsDeclared(scene: Scene, element: Element, context: Context): readonly Clip[] | 'unresolved' {
  const written = scene.cascade.of(element).get('clip-path')?.trim()
  return written === undefined || written === 'none' ? [] : clipsOf(scene, element, written, context)
}

/** What one child of a clip lets through; nothing when it is hidden or empty. */
function regionsOf(scene: Scene, element: Element, parent: Context): Region[] | 'unresolved' {
  const declared = scene.cascade.of(element)
  const lengths = { viewport: parent.viewport, rootFontSize: scene.rootFontSize }
  const style = computeStyle(declared, parent.style, lengths)
  if (declared.get('display')?.trim() === 'none') return []
  const own = ownTransform(scene, element)
  if (!own) return 'unresolved'
  const context: Context = { ...parent, style, matrix: multiply(parent.matrix, own) }
  if (element.name !== 'use' && !SHAPE_NAMES.has(element.name)) return 'unresolved'
  const regions =
    element.name === 'use' ? regionsOfUse(scene, element, context) : regionOfShape(scene, element, context)
  const clips = regions === 'unresolved' ? [] : clipsDeclared(scene, element, context)
  return regions === 'unresolved' || clips === 'unresolved'
    ? 'unresolved'
    : throughClips(scene, element, regions, clips)
}

/** SVG 1.1, 14.3.5: a reference in a clip leads to one shape. */
function regionsOfUse(scene: Scene, element: Element, context: Context): Region[] | 'unresolved' {
  const target = scene.find((element.attributes.get('href') ?? element.attributes.get(XLINK_HREF) ?? '').trim())
  if (!target) return []
  if (!SHAPE_NAMES.has(target.name)) return 'unresolved'
  scene.spend('references', 1, element)
  const lengths = lengthsAt(scene, context)
  const x = parseLength(element.attributes.get('x') ?? '0', 'x', lengths)
  const y = parseLength(element.attributes.get('y') ?? '0', 'y', lengths)
  if (x === undefined || y === undefined) return 'unresolved'
  return regionsOf(scene, target, { ...context, matrix: multiply(context.matrix, translation(x, y)) })
}

function regionOfShape(scene: Scene, element: Element, context: Context): Region[] | 'unresolved' {
  if (!context.style.visible) return []
  const declared = scene.cascade.of(element)
  const read = (name: string) => declared.get(name) ?? element.attributes.get(name)
  const { contours, ellipse, fault } = outlineOf(element.name, read, lengthsAt(scene, context), context.matrix)
  if (fault !== undefined) return 'unresolved'
  scene.spend('pathSegments', contours.reduce((n, c) => n + c.segments.length, 0), element) // prettier-ignore
  const region = Region.of(contours, context.style.clipRule)
  if (!region) return contours.length > 0 && boxOfContours(contours) ? 'unresolved' : []
  region.source = context.source ?? sourceOf(element)
  region.circle = ellipse && circleOf(ellipse)
  return [region]
}

function throughClips(
  scene: Scene,
  element: Element,
  regions: Region[],
  clips: readonly Clip[],
): Region[] | 'unresolved' {
  let left = regions
  for (const clip of clips) {
    const seen = left.map((region) => seenThrough(clip, shapeOf(region, element), (n) => scene.spend('clipEdges', n, element))) // prettier-ignore
    if (seen.some(({ cut }) => cut.length > 0)) return 'unresolved'
    left = seen.flatMap(({ shapes }) => shapes.map(regionFrom))
  }
  return left
}

/** A region as something that is painted, and back: what is seen of it is then what is left of it. */
const shapeOf = ({ contours, rule, box, circle, source }: Region, element: Element): Shape => ({
  contours: [...contours],
  fillRule: rule,
  fill: { opacity: 1, written: '' },
  box,
  circle,
  source: source ?? sourceOf(element),
  labels: { names: [] },
})

function regionFrom({ contours, fillRule, box, circle, source }: Shape): Region {
  const region = new Region(contours, fillRule, box)
  region.circle = circle
  region.source = source
  return region
}
