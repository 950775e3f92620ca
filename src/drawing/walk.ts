import type { Box } from '../geometry/box.js'
import { SHAPE_NAMES } from './basic-shapes.js'
import { NOTHING, PICTURE, WORDS, type CouldBe } from './collector.js'
import { isElement, isSvg, type Element } from './document.js'
import { leave } from './effects.js'
import { enter } from './enter.js'
import { parseLength } from './length.js'
import { isSeenWhole } from './place.js'
import { boxOfFrame } from './region.js'
import { lengthsAt, sourceAt, type Context, type Scene } from './scene.js'
import { renderShape } from './shape.js'
import { renderText } from './text.js'
import { renderUse, renderViewport } from './use.js'

/** The walk through the drawing in paint order: what each element of SVG does to what is seen. */

/** Elements that paint nothing where they stand. */
const SILENT = new Set(
  (
    'defs metadata title desc style linearGradient radialGradient meshgradient pattern hatch clipPath mask marker symbol ' +
    'filter font font-face view cursor color-profile solidColor namedview'
  ).split(' '),
)

/** Elements that are seen, or were meant to be, and are not worked out. */
const PASSED_OVER: Readonly<Record<string, { why: string; couldBe: CouldBe }>> = {
  image: { why: 'It is a picture, which is not looked into.', couldBe: PICTURE },
  foreignObject: { why: 'It holds something that is not SVG.', couldBe: PICTURE },
  flowRoot: { why: 'It is text of a kind that only one drawing program shows.', couldBe: WORDS },
}

const ANIMATION = /^(animate|set$|discard$)/

/** Namespaces of drawing programs' own notes, by their start: never anything that is painted. */
const NOTES = [
  'http://sodipodi.',
  'http://www.inkscape.org/',
  'http://ns.adobe.com/',
  'http://creativecommons.org/',
  'http://web.resource.org/cc/',
  'http://www.w3.org/1999/02/22-rdf-syntax-ns#',
  'http://purl.org/dc/',
  'http://www.bohemiancoding.com/',
  'http://www.serif.com/',
  'http://schemas.microsoft.com/visio/',
  'http://www.corel.com/',
  'http://xml.openoffice.org/',
]

/** Paints one element and all that is in it. @throws {Refusal} `too-complex` */
export function visit(scene: Scene, element: Element, parent: Context): void {
  if (!isSvg(element)) {
    if (!NOTES.some((start) => element.namespace.startsWith(start)))
      scene.collector.ignore(sourceAt(element, parent), `<${element.name.slice(0, 40)}> is no element of SVG.`, NOTHING)
    return
  }
  if (SILENT.has(element.name) || !meetsConditions(element)) return
  if (!SHAPE_NAMES.has(element.name) && (ANIMATION.test(element.name) || element.name === 'script'))
    return scene.collector.ignore(sourceAt(element, parent), 'The drawing is read as it stands still.', NOTHING)
  const context = enter(scene, element, parent)
  if (!context) return
  scene.spaces?.set(element, context.matrix)
  render(scene, element, context)
  leave(scene, context, parent)
}

function render(scene: Scene, element: Element, context: Context): void {
  const { name } = element
  if (SHAPE_NAMES.has(name)) return renderShape(scene, element, context)
  switch (name) {
    case 'g':
    case 'a':
      return visitChildren(scene, element, context)
    case 'svg':
      return renderViewport(scene, element, context, {}, visitChildren)
    case 'switch':
      return visitFirst(scene, element, context)
    case 'use':
      return renderUse(scene, element, context, visit, visitChildren)
    case 'text':
      return renderText(scene, element, context)
    default:
      return passOver(scene, element, context)
  }
}

export function visitChildren(scene: Scene, element: Element, context: Context): void {
  for (const child of element.children) if (isElement(child)) visit(scene, child, context)
}

/** SVG 1.1, 5.8.2: the first child whose conditions are met, and no other. */
function visitFirst(scene: Scene, element: Element, context: Context): void {
  const first = element.children.find(
    (child) => isElement(child) && isSvg(child) && !SILENT.has(child.name) && meetsConditions(child),
  )
  if (first !== undefined && isElement(first)) visit(scene, first, context)
}

/** The tests of SVG 1.1, 5.8: no extension is known, every feature is, and signs are read in English. */
function meetsConditions({ attributes }: Element): boolean {
  if (attributes.has('requiredExtensions')) return false
  const language = attributes.get('systemLanguage')
  return language === undefined || language.split(',').some((tag) => /^\s*en(-|\s*$)/i.test(tag))
}

function passOver(scene: Scene, element: Element, context: Context): void {
  const known = Object.hasOwn(PASSED_OVER, element.name) ? PASSED_OVER[element.name] : undefined
  if (!known) {
    const why = `<${element.name.slice(0, 40)}> is no element that is painted here.`
    return scene.collector.ignore(sourceAt(element, context), why, NOTHING)
  }
  if (!context.style.visible) return
  const frame = frameOf(scene, element, context)
  const box = frame && boxOfFrame(frame, context.matrix)
  if (!box || !Object.values(box).every(Number.isFinite))
    return scene.collector.ignore(sourceAt(element, context), known.why, known.couldBe, undefined, context.labels)
  if (isSeenWhole(scene, element, context, box, known.couldBe))
    scene.collector.ignore(sourceAt(element, context), known.why, known.couldBe, box, context.labels)
}

/** The rectangle of an element that has one, in user units. */
function frameOf(scene: Scene, element: Element, context: Context): Box | undefined {
  const lengths = lengthsAt(scene, context)
  const read = (name: string, axis: 'x' | 'y') => parseLength(element.attributes.get(name) ?? '0', axis, lengths)
  const [x, y, width, height] = [read('x', 'x'), read('y', 'y'), read('width', 'x'), read('height', 'y')]
  if (x === undefined || y === undefined || !width || !height) return undefined
  return { x, y, width, height }
}
