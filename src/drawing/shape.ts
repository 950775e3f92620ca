import type { Box } from '../geometry/box.js'
import { boxOfContours } from '../geometry/curve.js'
import type { Matrix } from '../geometry/matrix.js'
import { circleOf } from './arc.js'
import { outlineOf, type Read } from './basic-shapes.js'
import type { Declared } from './cascade.js'
import { ANYTHING, PICTURE } from './collector.js'
import type { Element } from './document.js'
import type { Shape } from './drawing.js'
import { LARGEST_COORDINATE } from './limits.js'
import { fillOf, strokeOf } from './paint.js'
import type { Outline } from './pen.js'
import { isOffPage, isSeenWhole } from './place.js'
import { lengthsAt, sourceAt, type Context, type Scene } from './scene.js'

/** A shape element, from its attributes to millimetres. */
export function renderShape(scene: Scene, element: Element, context: Context): void {
  if (!context.style.visible) return
  const declared = scene.cascade.of(element)
  const outline = outlineOf(element.name, readerOf(element, declared), lengthsAt(scene, context), context.matrix)
  scene.spend(
    'pathSegments',
    outline.contours.reduce((n, c) => n + c.segments.length, 0),
    element,
  )
  const box = boxOfContours(outline.contours)
  const source = sourceAt(element, context)
  if (outline.fault !== undefined) scene.collector.ignore(source, outline.fault, ANYTHING, sane(box) ? box : undefined)
  if (!box) return
  if (!sane(box)) return scene.collector.ignore(source, 'It lies too far away to be part of a sign.', ANYTHING)
  const shape = painted(scene, element, declared, context, outline, box)
  const reach = shape ? grownByStroke(shape) : box
  if (hasMarkers(scene, element, context) && isSeenWhole(scene, element, context, reach))
    scene.collector.ignore(source, 'Its markers are not worked out.', PICTURE, box)
  if (!shape || !isSeenWhole(scene, element, context, reach, ANYTHING, 'seen')) return
  scene.collector.shapes.push(shape)
  if (isOffPage(scene, reach)) scene.collector.offPage.add(shape)
  if (!shape.fill && shape.stroke?.width === 0) scene.collector.thin.add(shape)
}

/** Geometry as a property of CSS wins over the attribute; path data stand in `path("…")` there. */
function readerOf(element: Element, declared: Declared): Read {
  return (name) => {
    const property = declared.get(name)
    if (property === undefined) return element.attributes.get(name)
    return name === 'd' ? (/^path\(\s*["'](.*)["']\s*\)$/s.exec(property)?.[1] ?? property) : property
  }
}

const sane = (box: Box | undefined): box is Box =>
  box !== undefined &&
  [box.x, box.y, box.x + box.width, box.y + box.height].every((v) => Math.abs(v) <= LARGEST_COORDINATE)

/** The shape with its paints; undefined when it paints nothing. */
function painted(
  scene: Scene,
  element: Element,
  declared: Declared,
  context: Context,
  outline: Outline,
  box: Box,
): Shape | undefined {
  const { style, opacity, matrix } = context
  const source = sourceAt(element, context)
  const fill = element.name === 'line' ? undefined : fillOf(style, opacity, scene.find)
  const stroke = strokeOf(style, opacity, strokeSpace(scene, declared, matrix), scene.find)
  const thin = stroke !== undefined && stroke.paint.width === 0
  if (!fill && !stroke) return undefined
  for (const pattern of [fill?.pattern, thin ? undefined : stroke?.pattern])
    if (pattern) scene.collector.ignore(source, 'It is painted with a pattern, which is not worked out.', PICTURE, box)
  const circle = outline.ellipse && circleOf(outline.ellipse)
  const shape: Shape = { contours: outline.contours, fillRule: style.fillRule, source, labels: context.labels, box }
  if (fill) shape.fill = fill.paint
  if (stroke && !(thin && fill)) shape.stroke = stroke.paint
  if (circle) shape.circle = circle
  return shape
}

/** The space in which the stroke's width counts: the user's, or the page's px when it does not scale (SVG 2, 8.13). */
const strokeSpace = (scene: Scene, declared: Declared, matrix: Matrix): Matrix => {
  const px = scene.page.millimetresPerPx
  return declared.get('vector-effect')?.trim() === 'non-scaling-stroke'
    ? { a: px, b: 0, c: 0, d: px, e: 0, f: 0 }
    : matrix
}

/** The box with half of the stroke; the points of mitred corners may reach further. */
function grownByStroke({ box, stroke }: Shape): Box {
  const by = (stroke?.width ?? 0) / 2
  return { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by }
}

function hasMarkers(scene: Scene, { name }: Element, { style }: Context): boolean {
  if (name !== 'path' && name !== 'line' && name !== 'polyline' && name !== 'polygon') return false
  return [style.markerStart, style.markerMid, style.markerEnd].some((written) => {
    const reference = /^url\(\s*["']?([^"')\s]{1,300})["']?\s*\)$/.exec(written.trim())?.[1]
    return reference !== undefined && (!reference.startsWith('#') || scene.find(reference)?.name === 'marker')
  })
}
