import { multiply, translation } from '../geometry/matrix.js'
import { Clip } from './clipping.js'
import { ANYTHING, NOTHING, sourceOf } from './collector.js'
import { XLINK_HREF, type Element } from './document.js'
import { leave } from './effects.js'
import { enter } from './enter.js'
import { parseLength, type Axis } from './length.js'
import { NAME_LENGTH } from './limits.js'
import { frameRegion } from './region.js'
import { isRound } from './resource.js'
import { lengthsAt, sourceAt, type Context, type Scene } from './scene.js'
import { fitViewBox, parseAspectRatio, parseViewBox } from './viewbox.js'

/** References to other elements, and elements that open a viewport of their own: SVG 1.1, 5.6 and 7.9. */

type Visit = (scene: Scene, element: Element, context: Context) => void

/** Sizes that a reference gives to the viewport that it shows. */
interface Sizes {
  width?: string
  height?: string
}

/** @throws {Refusal} `too-complex` when references are followed too often. */
export function renderUse(scene: Scene, element: Element, context: Context, visit: Visit, visitChildren: Visit): void {
  const reference = (element.attributes.get('href') ?? element.attributes.get(XLINK_HREF))?.trim()
  const source = sourceAt(element, context)
  if (!reference) return
  if (!reference.startsWith('#'))
    return scene.collector.ignore(source, 'It shows something from another file, which is not loaded.', ANYTHING)
  const target = scene.find(reference)
  if (!target)
    return scene.collector.ignore(source, 'It refers to an id that is not there, so it shows nothing.', NOTHING)
  if (isRound(target, context))
    return scene.collector.ignore(source, 'It refers to itself or to something that it stands in.', NOTHING)
  scene.spend('references', 1, element)
  const lengths = lengthsAt(scene, context)
  const x = parseLength(element.attributes.get('x') ?? '0', 'x', lengths)
  const y = parseLength(element.attributes.get('y') ?? '0', 'y', lengths)
  if (x === undefined || y === undefined) return scene.collector.ignore(source, 'Its place cannot be read.', ANYTHING)
  const id = element.attributes.get('id') ?? target.attributes.get('id')
  const here: Context = {
    ...context,
    style: { ...context.style, context: context.style },
    matrix: multiply(context.matrix, translation(x, y)),
    source: context.source ?? { ...sourceOf(element), ...(id ? { id: id.slice(0, NAME_LENGTH) } : {}) },
  }
  if (target.name !== 'symbol' && target.name !== 'svg') return visit(scene, target, here)
  const inside = enter(scene, target, here)
  if (!inside) return
  const sizes = { width: element.attributes.get('width'), height: element.attributes.get('height') }
  renderViewport(scene, target, inside, sizes, visitChildren)
  leave(scene, inside, here)
}

/** An inner `svg`, or a `symbol` that a reference shows: its own viewport, coordinates and edge. */
export function renderViewport(
  scene: Scene,
  element: Element,
  context: Context,
  sizes: Sizes,
  visitChildren: Visit,
): void {
  const lengths = lengthsAt(scene, context)
  const read = (name: 'x' | 'y' | 'width' | 'height', axis: Axis, otherwise: string) => {
    const given = name === 'width' || name === 'height' ? sizes[name] : undefined
    const written = given ?? element.attributes.get(name)
    return parseLength(written === undefined || written.trim() === 'auto' ? otherwise : written, axis, lengths)
  }
  const [x, y] = [read('x', 'x', '0'), read('y', 'y', '0')]
  const [width, height] = [read('width', 'x', '100%'), read('height', 'y', '100%')]
  const written = element.attributes.get('viewBox')
  const viewBox = written === undefined ? undefined : parseViewBox(written)
  const sizeNeeded = written !== undefined && (width === undefined || height === undefined)
  if (x === undefined || y === undefined || sizeNeeded || (written !== undefined && !viewBox))
    return scene.collector.ignore(sourceAt(element, context), 'The size of its viewport cannot be read.', ANYTHING)
  if ((width ?? 1) <= 0 || (height ?? 1) <= 0) return
  const corner = multiply(context.matrix, translation(x, y))
  const ratio = parseAspectRatio(element.attributes.get('preserveAspectRatio'))
  const fit =
    viewBox && width !== undefined && height !== undefined ? fitViewBox(viewBox, width, height, ratio) : undefined
  const here: Context = {
    ...context,
    matrix: fit ? multiply(corner, fit) : corner,
    viewport: viewBox ?? { width, height },
  }
  const overflow = scene.cascade.of(element).get('overflow')?.trim() ?? 'hidden'
  if (overflow !== 'visible' && overflow !== 'auto' && width !== undefined && height !== undefined) {
    const edge = frameRegion({ x: 0, y: 0, width, height }, corner)
    here.clips = [...context.clips, new Clip([edge])]
  }
  visitChildren(scene, element, here)
}
