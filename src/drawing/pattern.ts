import { boxOfPoints, unionOfBoxes, type Box } from '../geometry/box.js'
import { apply, determinant, inverse, multiply, scaling, translation, type Matrix } from '../geometry/matrix.js'
import type { Contour } from '../geometry/outline.js'
import { Clip, seenThrough } from './clipping.js'
import { PICTURE } from './collector.js'
import { isElement, isSvg, type Element } from './document.js'
import type { Shape } from './drawing.js'
import { parseLength, type Axis } from './length.js'
import { objectBox } from './object-box.js'
import { showShape } from './place.js'
import { cornersOf, EDGE, frameRegion, isWithin, Region } from './region.js'
import { enterResource, lineOf, paintAside } from './resource.js'
import { lengthsAt, sourceAt, type Context, type Scene } from './scene.js'
import { parseTransform } from './transform.js'
import { fitViewBox, parseAspectRatio, parseViewBox } from './viewbox.js'

/**
 * Fills with a pattern: SVG 1.1, 13.3. The tile is painted once and repeated over the area; each copy of each of its shapes
 * that lies wholly in the area is a shape like any other.
 */

/**
 * Paints an area with a pattern; false, with an entry among what was passed over, when it is not worked out.
 * @param area the shape that is filled, its `fill` being the pattern with the opacity that is left.
 * @throws {Refusal} `too-complex` when patterns are painted too often or repeat too many shapes; they are counted before.
 */
export function paintPattern(scene: Scene, element: Element, pattern: Element, context: Context, area: Shape): boolean {
  const unread = (why: string): boolean => {
    scene.collector.ignore(sourceAt(element, context), why, PICTURE, area.box)
    return false
  }
  scene.spend('patterns', 1, element)
  const tile = tileOf(scene, element, pattern, context)
  if (tile === 'unreadable') return unread('It is painted with a pattern that cannot be read.')
  if (!tile) return true
  const place = { matrix: tile.content, viewport: tile.viewport, opacity: area.fill?.opacity ?? 1 }
  const inside = enterResource(scene, pattern, context, place)
  if (!inside) return unread('It is painted with a pattern that paints itself.')
  const edge = frameRegion(tile.frame, tile.matrix)
  const { shapes, texts, ignored } = paintAside(scene, tile.owner, { ...inside, clips: [new Clip([edge])] })
  const lost = texts.length > 0 || ignored.some(({ couldBe }) => couldBe.length > 0)
  if (lost) return unread('It is painted with a pattern of which not everything is worked out.')
  const ground = shapes.findIndex((shape) => isGround(shape, edge))
  if (ground >= 0) showShape(scene, element, context, { ...area, fill: shapes[ground].fill })
  repeat(scene, element, context, area, tile, shapes.slice(ground + 1))
  return true
}

/** In a tile that is hardly larger than `EDGE`, whatever stands in it seems to cover it. Millimetres. */
const LEAST_GROUND = 100 * EDGE

/** A shape that covers the whole tile, so that its copies cover the whole area. */
function isGround({ fill, contours, fillRule, box }: Shape, edge: Region): boolean {
  if (!fill || Math.min(edge.box.width, edge.box.height) < LEAST_GROUND) return false
  return isWithin(edge, new Region(contours, fillRule, box))
}

interface Tile {
  /** The nearest pattern in the line of references that holds anything. */
  owner: Element
  /** The tile, in the coordinates of the pattern. */
  frame: Box
  /** From there to millimetres. */
  matrix: Matrix
  /** From the coordinates of what the tile holds to millimetres. */
  content: Matrix
  viewport: Context['viewport']
}

/** Undefined when nothing is painted: no tile, or nothing in it. */
function tileOf(scene: Scene, element: Element, pattern: Element, context: Context): Tile | 'unreadable' | undefined {
  const line = lineOf(scene, pattern, /^pattern$/)
  if (line.length === 0) return 'unreadable'
  const owner = line.find(({ children }) => children.some((child) => isElement(child) && isSvg(child)))
  if (!owner) return undefined
  const read = (name: string): string | undefined => line.find((e) => e.attributes.has(name))?.attributes.get(name)
  const transform = line
    .map((e) => scene.cascade.of(e).get('transform') ?? e.attributes.get('patternTransform'))
    .find((written) => written !== undefined)
  const own = parseTransform(transform ?? '', 'attribute')
  const box = objectBox(scene, element, context)
  const frame = frameOf(scene, read, context, box)
  const matrix = own && multiply(context.matrix, own)
  if (!frame || !matrix || determinant(matrix) === 0) return 'unreadable'
  if (frame.width === 0 || frame.height === 0) return undefined
  // The tile's content starts in the corner of the tile.
  const corner = multiply(matrix, translation(frame.x, frame.y))
  const written = read('viewBox')
  const viewBox = written === undefined ? undefined : parseViewBox(written)
  if (written !== undefined && !viewBox) return 'unreadable'
  if (viewBox) {
    const fit = fitViewBox(viewBox, frame.width, frame.height, parseAspectRatio(read('preserveAspectRatio')))
    return { owner, frame, matrix, content: multiply(corner, fit), viewport: viewBox }
  }
  if (read('patternContentUnits')?.trim() !== 'objectBoundingBox')
    return { owner, frame, matrix, content: corner, viewport: context.viewport }
  if (!box) return 'unreadable'
  return { owner, frame, matrix, content: multiply(corner, scaling(box.width, box.height)), viewport: UNIT }
}

const UNIT = { width: 1, height: 1 }

/** Undefined when it cannot be read; without a width or height nothing is painted. */
function frameOf(
  scene: Scene,
  read: (name: string) => string | undefined,
  context: Context,
  box: Box | undefined,
): Box | undefined {
  const inUserSpace = read('patternUnits')?.trim() === 'userSpaceOnUse'
  if (!inUserSpace && !box) return undefined
  const lengths = { ...lengthsAt(scene, context), ...(inUserSpace ? {} : { viewport: UNIT }) }
  const length = (name: string, axis: Axis) => parseLength(read(name) ?? '0', axis, lengths)
  const [x, y, width, height] = [length('x', 'x'), length('y', 'y'), length('width', 'x'), length('height', 'y')]
  if (x === undefined || y === undefined || width === undefined || height === undefined) return undefined
  if (width < 0 || height < 0) return undefined
  if (inUserSpace || !box) return { x, y, width, height }
  const frame = { x: x * box.width, y: y * box.height, width: width * box.width, height: height * box.height }
  return { ...frame, x: frame.x + box.x, y: frame.y + box.y }
}

function repeat(
  scene: Scene,
  element: Element,
  context: Context,
  area: Shape,
  tile: Tile,
  shapes: readonly Shape[],
): void {
  if (shapes.length === 0) return
  const { frame, matrix } = tile
  const { columns, rows } = placesOver(area.box, frame, matrix)
  const places = columns.count * rows.count
  scene.spend('patternCopies', Math.min(places * shapes.length, Number.MAX_SAFE_INTEGER), element)
  scene.spend('pathSegments', places * shapes.reduce((n, s) => n + segmentsIn(s.contours), 0), element)
  const region = Region.of(area.contours, area.fillRule)
  const through = region && new Clip([region])
  const cut: Box[] = []
  for (let row = rows.first; row < rows.first + rows.count; row++)
    for (let column = columns.first; column < columns.first + columns.count; column++) {
      const [x, y] = [column * frame.width, row * frame.height]
      const shift = { x: matrix.a * x + matrix.c * y, y: matrix.b * x + matrix.d * y }
      for (const shape of shapes) {
        const copy = moved(shape, shift.x, shift.y)
        const seen = through ? seenThrough(through, copy, (n) => scene.spend('clipEdges', n, element)) : undefined
        for (const whole of seen?.shapes ?? []) showShape(scene, element, context, { ...whole, source: area.source })
        cut.push(...(seen?.cut ?? []))
      }
    }
  if (cut.length === 0) return
  const why = 'The edge of the shape cuts through its pattern, which is not worked out.'
  scene.collector.ignore(sourceAt(element, context), why, PICTURE, unionOfBoxes(cut))
}

const segmentsIn = (contours: readonly Contour[]): number => contours.reduce((n, c) => n + c.segments.length, 0)

interface Range {
  first: number
  count: number
}

/** Which tiles meet a box, counted from the pattern's own. */
function placesOver(box: Box, frame: Box, matrix: Matrix): { columns: Range; rows: Range } {
  const back = inverse(matrix)
  const inPattern = boxOfPoints(cornersOf(box).map((corner) => apply(back, corner))) ?? box
  const range = (from: number, size: number, start: number, step: number): Range => {
    const first = Math.floor((from - start) / step)
    return { first, count: Math.floor((from + size - start) / step) - first + 1 }
  }
  return {
    columns: range(inPattern.x, inPattern.width, frame.x, frame.width),
    rows: range(inPattern.y, inPattern.height, frame.y, frame.height),
  }
}

function moved(shape: Shape, x: number, y: number): Shape {
  const there = (p: { x: number; y: number }) => ({ x: p.x + x, y: p.y + y })
  const contours = shape.contours.map(({ start, segments, closed }) => ({
    start: there(start),
    segments: segments.map((s) =>
      s.kind === 'line'
        ? { kind: s.kind, to: there(s.to) }
        : { kind: s.kind, c1: there(s.c1), c2: there(s.c2), to: there(s.to) },
    ),
    closed,
  }))
  const { circle } = shape
  return {
    ...shape,
    contours,
    box: { ...shape.box, ...there(shape.box) },
    ...(circle ? { circle: { ...there(circle), radius: circle.radius } } : {}),
  }
}
