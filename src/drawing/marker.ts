import { apply, multiply, scaling, translation, type Matrix } from '../geometry/matrix.js'
import { outlineReader } from './reader.js'
import { Clip } from './clipping.js'
import { ANYTHING, sourceOf } from './collector.js'
import type { Element } from './document.js'
import { applyEffects, leave } from './effects.js'
import { parseLength, splitLength, type Axis, type LengthContext } from './length.js'
import { parseReference } from './reference.js'
import { frameRegion } from './region.js'
import { enterResource } from './resource.js'
import { lengthsAt, sourceAt, type Context, type Scene } from './scene.js'
import { parseOpacity } from './style.js'
import { degreesIn, rotation } from './transform.js'
import { MARKED_NAMES, verticesOf, type Vertex } from './vertices.js'
import { fitViewBox, parseAspectRatio, parseViewBox } from './viewbox.js'

/** Markers: SVG 1.1, 11.6.2, with `auto-start-reverse` and the key words for the reference point of SVG 2, 13.7. */

/** Paints the markers of an element over it. @throws {Refusal} `too-complex` when they are painted too often. */
export function renderMarkers(scene: Scene, element: Element, context: Context): void {
  if (!MARKED_NAMES.has(element.name)) return
  const { markerStart, markerMid, markerEnd } = context.style
  if (markerStart === 'none' && markerMid === 'none' && markerEnd === 'none') return
  const [start, mid, end] = [markerStart, markerMid, markerEnd].map((written) =>
    markerOf(scene, element, written, context),
  )
  if (!start && !mid && !end) return
  const vertices = verticesOf(
    element.name,
    outlineReader(element, scene.cascade.of(element)),
    lengthsAt(scene, context),
  )
  const last = vertices.length - 1
  vertices.forEach((vertex, i) => {
    if (i === 0 && start) start.paint(vertex, true)
    if (i > 0 && i < last && mid) mid.paint(vertex, false)
    if (i === last && end) end.paint(vertex, false)
  })
}

interface Marker {
  paint: (vertex: Vertex, isStart: boolean) => void
}

/** Undefined when there is none to paint; one that cannot be painted is entered among what was passed over. */
function markerOf(scene: Scene, element: Element, written: string, context: Context): Marker | undefined {
  const reference = parseReference(written)
  if (!reference) return undefined
  const unread = (why: string) => scene.collector.ignore(sourceAt(element, context), why, ANYTHING)
  if (!reference.target.startsWith('#')) return void unread('Its markers stand in another file, which is not loaded.')
  const marker = scene.find(reference.target)
  if (marker?.name !== 'marker') return undefined
  const frame = frameOf(scene, marker, context)
  if (frame === 'unreadable') return void unread('The size of its marker cannot be read.')
  if (!frame) return undefined
  const turn = orientOf(marker.attributes.get('orient'))
  if (!turn) return void unread('The direction of its marker cannot be read.')
  return {
    paint: (vertex, isStart) => {
      const place = multiply(translation(vertex.x, vertex.y), turn(vertex.angle, isStart))
      paintMarker(scene, element, marker, context, multiply(context.matrix, place), frame)
    },
  }
}

interface Frame {
  /** From the marker's viewport to the user units of what it marks, its reference point at 0, 0. */
  toUser: Matrix
  /** From the marker's content to its viewport. */
  fit: Matrix
  viewport: LengthContext['viewport']
  width: number
  height: number
}

const MARKER_SIZE = '3'

function frameOf(scene: Scene, marker: Element, context: Context): Frame | 'unreadable' | undefined {
  const lengths = lengthsAt(scene, context)
  const read = (name: string, axis: Axis, otherwise: string, inside = lengths) =>
    parseLength(marker.attributes.get(name) ?? otherwise, axis, inside)
  const width = read('markerWidth', 'x', MARKER_SIZE)
  const height = read('markerHeight', 'y', MARKER_SIZE)
  if (width === undefined || height === undefined) return 'unreadable'
  if (width <= 0 || height <= 0) return undefined
  const written = marker.attributes.get('viewBox')
  const viewBox = written === undefined ? undefined : parseViewBox(written)
  if (written !== undefined && !viewBox) return 'unreadable'
  const viewport = viewBox ?? { width, height }
  const ratio = parseAspectRatio(marker.attributes.get('preserveAspectRatio'))
  const fit = viewBox ? fitViewBox(viewBox, width, height, ratio) : scaling(1)
  const inside = { ...lengths, viewport }
  const place = (name: string, axis: Axis, from: number, size: number) => {
    const share = keyword(marker.attributes.get(name)?.trim())
    return share === undefined ? read(name, axis, '0', inside) : from + share * size
  }
  const x = place('refX', 'x', viewBox?.x ?? 0, viewport.width)
  const y = place('refY', 'y', viewBox?.y ?? 0, viewport.height)
  if (x === undefined || y === undefined) return 'unreadable'
  const at = apply(fit, { x, y })
  const unit = marker.attributes.get('markerUnits')?.trim() === 'userSpaceOnUse' ? 1 : context.style.strokeWidth
  return { toUser: multiply(scaling(unit), translation(-at.x, -at.y)), fit, viewport, width, height }
}

const SHARES: ReadonlyMap<string, number> = new Map([
  ['left', 0],
  ['top', 0],
  ['center', 0.5],
  ['right', 1],
  ['bottom', 1],
])

const keyword = (written: string | undefined): number | undefined =>
  written === undefined ? undefined : SHARES.get(written)

/** How far a marker is turned where the outline runs at an angle, in radians; undefined for what cannot be read. */
function orientOf(written = '0'): ((angle: number, isStart: boolean) => Matrix) | undefined {
  const text = written.trim()
  const turned = (angle: number) => rotation((angle * 180) / Math.PI)
  if (text === 'auto') return turned
  if (text === 'auto-start-reverse') return (angle, isStart) => turned(isStart ? angle + Math.PI : angle)
  const split = splitLength(text)
  const fixed = split && split.value * degreesIn(split.unit || 'deg')
  return fixed !== undefined && Number.isFinite(fixed) ? () => rotation(fixed) : undefined
}

function paintMarker(
  scene: Scene,
  element: Element,
  marker: Element,
  context: Context,
  place: Matrix,
  { toUser, fit, viewport, width, height }: Frame,
): void {
  const toViewport = multiply(place, toUser)
  const declared = scene.cascade.of(marker)
  const opacity = context.opacity * (parseOpacity(declared.get('opacity')) ?? 1)
  const inside = enterResource(scene, marker, context, { matrix: multiply(toViewport, fit), viewport, opacity })
  if (!inside) return scene.collector.ignore(sourceAt(element, context), 'Its marker marks itself.', ANYTHING)
  inside.style = { ...inside.style, context: context.style }
  inside.source = context.source ?? sourceOf(element)
  inside.clips = context.clips
  inside.barrier = context.barrier
  inside.tint = context.tint
  inside.aside = context.aside
  if (!/^(visible|auto)$/.test(declared.get('overflow')?.trim() ?? 'hidden'))
    inside.clips = [...context.clips, new Clip([frameRegion({ x: 0, y: 0, width, height }, toViewport)])]
  if (declared.size > 0) applyEffects(scene, marker, declared, inside)
  scene.paintChildren(scene, marker, inside)
  leave(scene, inside, context)
}
