import { unionOfBoxes } from '../geometry/box.js'
import type { Matrix } from '../geometry/matrix.js'
import { Cascade } from './cascade.js'
import { Collector, sourceOf } from './collector.js'
import { decode } from './decode.js'
import { readDocument, type Element, type SvgDocument } from './document.js'
import type { Drawing } from './drawing.js'
import { NO_LABELS } from './labels.js'
import { readPage } from './page.js'
import { leave } from './effects.js'
import { enter } from './enter.js'
import { Scene, type Context } from './scene.js'
import { settle } from './settle.js'
import { computeStyle, INITIAL_STYLE, MEDIUM_FONT_SIZE } from './style.js'
import { visitChildren } from './walk.js'

/**
 * A drawing from the bytes of an SVG file to shapes and texts in millimetres, in paint order. What is not understood is
 * listed with what it may have been; it is never dropped in silence.
 * @param options.scale millimetres per user unit; wins over the size that the drawing states.
 * @throws {Refusal} `malformed-drawing` or `entities-not-accepted` with line and column, `too-large` or `too-complex` with
 * the limit and what was met, `scale-unknown` when nothing says how large the drawing is.
 */
export const readDrawing = (bytes: Uint8Array, options: { scale?: number } = {}): Drawing =>
  readPainted(readDocument(decode(bytes)), options)

/**
 * The same, of elements that are known.
 * @param spaces is told each element's map from its own user space to millimetres
 */
export function readPainted(
  document: SvgDocument,
  options: { scale?: number },
  spaces?: Map<Element, Matrix>,
): Drawing {
  const { root } = document
  const cascade = new Cascade(document)
  const collector = new Collector()
  const declared = cascade.of(root)
  const side = (name: 'width' | 'height') => declared.get(name) ?? root.attributes.get(name)
  const page = readPage(root, { width: side('width'), height: side('height') }, options.scale)
  const style = computeStyle(declared, INITIAL_STYLE, { viewport: page.viewport, rootFontSize: MEDIUM_FONT_SIZE })
  const scene = new Scene(document, cascade, page, collector, style.fontSize, visitChildren, spaces)
  const start: Context = {
    matrix: page.matrix,
    style: INITIAL_STYLE,
    opacity: 1,
    viewport: page.viewport,
    labels: NO_LABELS,
    clips: [],
    chain: { element: root },
    depth: 0,
  }
  const context = enter(scene, root, start)
  if (context) {
    spaces?.set(root, context.matrix)
    visitChildren(scene, root, context)
    leave(scene, context, start)
  }
  for (const { element, why, couldBe } of cascade.gaps) collector.ignore(sourceOf(element), why, couldBe)
  const viewport = viewportOf(page, collector)
  const { shapes, texts, assumptions } = settle(collector, { x: 0, y: 0, ...viewport })
  return {
    viewport,
    scale: page.scale,
    shapes,
    texts,
    ignored: collector.ignored,
    assumptions: [...page.assumptions, ...assumptions],
  }
}

/** The page; a side that the drawing does not state reaches to the farthest shape. */
function viewportOf(page: { width?: number; height?: number }, { shapes }: Collector): Drawing['viewport'] {
  if (page.width !== undefined && page.height !== undefined) return { width: page.width, height: page.height }
  const all = unionOfBoxes(shapes.map((shape) => shape.box))
  return {
    width: page.width ?? Math.max(0, all ? all.x + all.width : 0),
    height: page.height ?? Math.max(0, all ? all.y + all.height : 0),
  }
}
