import type { Box } from '../geometry/box.js'
import { boxOfContours } from '../geometry/curve.js'
import type { Matrix } from '../geometry/matrix.js'
import type { Contour } from '../geometry/outline.js'
import { circleOf } from './arc.js'
import { outlineOf } from './basic-shapes.js'
import type { Declared } from './cascade.js'
import { ANYTHING, PICTURE } from './collector.js'
import { areDots, contoursOfDashes, dashesOf, dashingOf } from './dashes.js'
import type { Element } from './document.js'
import type { Shape, Stroke } from './drawing.js'
import { LARGEST_COORDINATE } from './limits.js'
import { renderMarkers } from './marker.js'
import { fillOf, strokeOf } from './paint.js'
import { paintPattern } from './pattern.js'
import type { Outline } from './pen.js'
import { showShape } from './place.js'
import { outlineReader } from './reader.js'
import { lengthsAt, sourceAt, type Context, type Scene } from './scene.js'

/** A shape element, from its attributes to millimetres: its fill, its stroke and its markers, in the order they are painted. */
export function renderShape(scene: Scene, element: Element, context: Context): void {
  if (!context.style.visible) return
  const declared = scene.cascade.of(element)
  const outline = outlineOf(element.name, outlineReader(element, declared), lengthsAt(scene, context), context.matrix)
  const { contours } = outline
  scene.spend('pathSegments', segmentsOf(contours), element)
  const space = strokeSpace(scene, declared, context.matrix)
  const dots = dotsOfDashes(scene, element, context, contours, space)
  const box = boxOfContours(contours)
  const source = sourceAt(element, context)
  if (outline.fault !== undefined) scene.collector.ignore(source, outline.fault, ANYTHING, sane(box) ? box : undefined)
  if (!box) return
  if (!sane(box)) return scene.collector.ignore(source, 'It lies too far away to be part of a sign.', ANYTHING)
  paintLayers(scene, element, context, unpainted(context, outline, box, source), space, dots)
}

const segmentsOf = (contours: readonly Contour[]): number => contours.reduce((n, c) => n + c.segments.length, 0)

const sane = (box: Box | undefined): box is Box =>
  box !== undefined &&
  [box.x, box.y, box.x + box.width, box.y + box.height].every((v) => Math.abs(v) <= LARGEST_COORDINATE)

function unpainted({ style, labels }: Context, outline: Outline, box: Box, source: Shape['source']): Shape {
  const circle = outline.ellipse && circleOf(outline.ellipse)
  const shape: Shape = { contours: outline.contours, fillRule: style.fillRule, source, labels, box }
  if (circle) shape.circle = circle
  return shape
}

/** The space in which the stroke's lengths count: the user's, or the page's px when it does not scale (SVG 2, 8.13). */
const strokeSpace = (scene: Scene, declared: Declared, matrix: Matrix): Matrix => {
  const px = scene.page.millimetresPerPx
  return declared.get('vector-effect')?.trim() === 'non-scaling-stroke'
    ? { a: px, b: 0, c: 0, d: px, e: 0, f: 0 }
    : matrix
}

type Layer = 'fill' | 'stroke' | 'markers'

const LAYERS: readonly Layer[] = ['fill', 'stroke', 'markers']

/** SVG 2, 13.8: what is named comes first, the rest follows in the usual order. */
function layersOf(written: string): readonly Layer[] {
  const named = LAYERS.filter((layer) => written.split(/\s+/).includes(layer))
  named.sort((a, b) => written.indexOf(a) - written.indexOf(b))
  return [...named, ...LAYERS.filter((layer) => !named.includes(layer))]
}

function paintLayers(
  scene: Scene,
  element: Element,
  context: Context,
  bare: Shape,
  space: Matrix,
  dots: Contour[] | undefined,
): void {
  const fill = element.name === 'line' ? undefined : fillOf(scene, context)
  const stroke = strokeSeen(scene, element, context, bare, space, fill !== undefined)
  if (context.style.paintOrder === 'normal' && !dots && !fill?.pattern) {
    if (fill) bare.fill = fill.paint
    if (stroke) bare.stroke = stroke
    if (fill || stroke) showShape(scene, element, context, bare)
    return renderMarkers(scene, element, context)
  }
  const layers = layersOf(context.style.paintOrder)
  const show = (shape: Shape) => showShape(scene, element, context, shape)
  const together = stroke && !dots && !fill?.pattern && layers.indexOf('fill') + 1 === layers.indexOf('stroke')
  const paint: Record<Layer, () => void> = {
    fill: () => {
      if (!fill) return
      const shape: Shape = together ? { ...bare, fill: fill.paint, stroke } : { ...bare, fill: fill.paint }
      if (!fill.pattern || !paintPattern(scene, element, fill.pattern, context, shape)) show(shape)
    },
    stroke: () => {
      if (!stroke || (fill && together)) return
      const { circle, ...open } = bare
      if (dots) show({ ...open, ...dotted(dots, stroke) })
      else show(circle ? { ...open, circle, stroke } : { ...open, stroke })
    },
    markers: () => renderMarkers(scene, element, context),
  }
  for (const layer of layers) paint[layer]()
}

/** The stroke; one of width 0 only where there is no fill: it paints nothing, but a machine may follow it. */
function strokeSeen(
  scene: Scene,
  element: Element,
  context: Context,
  { box }: Shape,
  space: Matrix,
  filled: boolean,
): Stroke | undefined {
  const stroke = strokeOf(scene, context, space)
  if (!stroke || (filled && stroke.paint.width === 0)) return undefined
  if (stroke.pattern) {
    const why = 'Its stroke is painted with a pattern, which is not worked out.'
    scene.collector.ignore(sourceAt(element, context), why, PICTURE, box)
  }
  return stroke.paint
}

/** The dots that a dashed stroke with round ends is, when it is. Counted before the size of the outline is looked at. */
function dotsOfDashes(
  scene: Scene,
  element: Element,
  context: Context,
  contours: readonly Contour[],
  space: Matrix,
): Contour[] | undefined {
  const { style } = context
  if (style.strokeDasharray === 'none' || style.stroke === 'none' || contours.length === 0) return undefined
  const lengths = lengthsAt(scene, context)
  const dashes = dashesOf(style, lengths)
  if (!dashes || !areDots(dashes, style)) return undefined
  const dashing = dashingOf(contours, dashes, style, lengths, space, element.attributes.get('pathLength'))
  scene.spend('dashes', dashing.count, element)
  return contoursOfDashes(dashing)
}

function dotted(contours: Contour[], stroke: Stroke): Pick<Shape, 'contours' | 'stroke'> & Partial<Shape> {
  const box = boxOfContours(contours)
  return { contours, stroke: { ...stroke, dashed: false }, ...(box ? { box } : {}) }
}
