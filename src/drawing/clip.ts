import { boxContains, boxesOverlap, boxOfPoints, type Box } from '../geometry/box.js'
import { boxOfContours, flatten } from '../geometry/curve.js'
import { apply, multiply, type Matrix } from '../geometry/matrix.js'
import type { Contour, Polyline } from '../geometry/outline.js'
import { contains, distanceBetween } from '../geometry/polyline.js'
import { outlineOf, SHAPE_NAMES } from './basic-shapes.js'
import { isElement, isSvg, type Element } from './document.js'
import { lengthsAt, type Context, type Scene } from './scene.js'
import { computeStyle, INITIAL_STYLE } from './style.js'
import { parseTransform } from './transform.js'

/**
 * Clips (SVG 1.1, 14.3) as regions in millimetres, and whether one changes a shape at all: a shape that lies wholly in a
 * region is not changed, one that lies wholly outside of all is not seen. What a clip cuts through is not worked out.
 */
export interface Clip {
  regions: Region[]
}

interface Region {
  polylines: Polyline[]
  rule: 'nonzero' | 'evenodd'
  box: Box
}

/** How many edges it takes to hold something against a clip. */
export const edgesOf = (clip: Clip): number =>
  clip.regions.reduce((n, region) => n + region.polylines.reduce((m, line) => m + line.length, 0), 0)

export type ClipEffect = 'none' | 'hides' | 'cuts'

/** A clip along a shape's own edge, to the last digit that files write, does not cut it. Millimetres. */
const EDGE = 0.002

export function effectOfClip(clip: Clip, box: Box): ClipEffect {
  const near = clip.regions.filter((region) => boxesOverlap(grown(region.box, EDGE), grown(box, EDGE)))
  if (near.length === 0) return 'hides'
  return near.some((region) => holds(region, box)) ? 'none' : 'cuts'
}

const grown = (b: Box, by: number): Box => ({
  x: b.x - by,
  y: b.y - by,
  width: b.width + 2 * by,
  height: b.height + 2 * by,
})

function holds(region: Region, box: Box): boolean {
  if (!boxContains(region.box, box, EDGE)) return false
  if (isBox(region)) return true
  const inner = grown(box, -Math.min(EDGE, box.width / 2, box.height / 2))
  if (!contains(region.polylines, { x: inner.x, y: inner.y }, region.rule)) return false
  return distanceBetween(region.polylines, [cornersOf(inner)]).distance > 0 && !enclosesEdges(inner, region)
}

/** A hole of the region that lies inside the box, edges and all. */
const enclosesEdges = (box: Box, region: Region): boolean =>
  region.polylines.some(([p]) => p && boxContains(box, { x: p.x, y: p.y, width: 0, height: 0 }))

const cornersOf = ({ x, y, width, height }: Box): Polyline => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
]

/** One rectangle along the axes: each of its points lies in a corner of its box, and it goes round once. */
function isBox({ polylines, box }: Region): boolean {
  const [corners] = polylines
  if (polylines.length !== 1 || corners.length !== 4) return false
  const slack = EDGE / 2
  const near = (p: number, q: number) => Math.abs(p - q) <= slack
  return cornersOf(box).every((c) => corners.some((p) => near(p.x, c.x) && near(p.y, c.y)))
}

/** The region of a rectangle in user units. */
export function frameRegion(box: Box, matrix: Matrix): Region {
  const corners = cornersOf(box).map((corner) => apply(matrix, corner))
  return { polylines: [corners], rule: 'nonzero', box: boxOfFrame(box, matrix) }
}

/** The box in millimetres round a rectangle in user units. */
export const boxOfFrame = (box: Box, matrix: Matrix): Box =>
  boxOfPoints(cornersOf(box).map((corner) => apply(matrix, corner))) ?? box

function regionOf(contours: Contour[], rule: Region['rule']): Region | undefined {
  const box = boxOfContours(contours)
  if (!box || !Object.values(box).every(Number.isFinite)) return undefined
  return { polylines: contours.map((contour) => flatten(contour, EDGE / 4)), rule, box }
}

/**
 * The clip of an element from its property `clip-path`; undefined when it has none, `unresolved` when it is one that is not
 * worked out: shapes of CSS, other units than the user's, text, references and clips inside.
 */
export function clipOf(scene: Scene, written: string, context: Context): Clip | 'unresolved' | undefined {
  const reference = /^\s*url\(\s*["']?([^"')\s]{1,300})["']?\s*\)\s*$/.exec(written)
  if (!reference) return 'unresolved'
  const element = scene.find(reference[1])
  if (!element) return reference[1].startsWith('#') ? undefined : 'unresolved'
  if (element.name !== 'clipPath') return undefined
  scene.spend('references', 1, element)
  const declared = scene.cascade.of(element)
  if (element.attributes.get('clipPathUnits') === 'objectBoundingBox') return 'unresolved'
  if (!isPlain(declared.get('clip-path'))) return 'unresolved'
  const own = parseTransform(element.attributes.get('transform') ?? '', 'attribute')
  if (!own || declared.has('transform')) return 'unresolved'
  const matrix = multiply(context.matrix, own)
  const style = computeStyle(declared, INITIAL_STYLE, { viewport: context.viewport, rootFontSize: scene.rootFontSize })
  const regions: Region[] = []
  for (const child of element.children) {
    if (!isElement(child) || !isSvg(child) || /^(title|desc|metadata)$/.test(child.name)) continue
    const region = regionOfChild(scene, child, { ...context, matrix, style })
    if (region === 'unresolved') return 'unresolved'
    if (region) regions.push(region)
  }
  return { regions }
}

const isPlain = (written: string | undefined): boolean => written === undefined || written.trim() === 'none'

/** One shape of a clip; undefined when it is hidden or empty. */
function regionOfChild(scene: Scene, element: Element, context: Context): Region | 'unresolved' | undefined {
  if (!SHAPE_NAMES.has(element.name)) return 'unresolved'
  const declared = scene.cascade.of(element)
  const style = computeStyle(declared, context.style, { viewport: context.viewport, rootFontSize: scene.rootFontSize })
  if (declared.get('display')?.trim() === 'none' || !style.visible) return undefined
  const own = parseTransform(element.attributes.get('transform') ?? '', 'attribute')
  if (!own || declared.has('transform') || !isPlain(declared.get('clip-path'))) return 'unresolved'
  const matrix = multiply(context.matrix, own)
  const read = (name: string) => declared.get(name) ?? element.attributes.get(name)
  const { contours, fault } = outlineOf(element.name, read, lengthsAt(scene, context), matrix)
  if (fault !== undefined) return 'unresolved'
  scene.spend(
    'pathSegments',
    contours.reduce((n, c) => n + c.segments.length, 0),
    element,
  )
  return regionOf(contours, style.clipRule)
}
