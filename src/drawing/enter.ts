import { determinant, IDENTITY, multiply, translation, type Matrix } from '../geometry/matrix.js'
import type { Declared } from './cascade.js'
import { ANYTHING, NOTHING } from './collector.js'
import type { Element } from './document.js'
import { applyEffects } from './effects.js'
import { labelsOf } from './labels.js'
import { parseLengths } from './length.js'
import { LIMITS } from './limits.js'
import { tooComplex } from './refuse.js'
import { contextInside, lengthsAt, sourceAt, type Context, type Scene } from './scene.js'
import { computeStyle, parseOpacity, type Style } from './style.js'
import { parseTransform } from './transform.js'

/**
 * What holds inside an element: its style, transform, opacity, names, clip. Undefined when nothing of it is painted.
 * @throws {Refusal} `too-complex` when elements stand too deep inside one another.
 */
export function enter(scene: Scene, element: Element, parent: Context): Context | undefined {
  scene.spend('rendered', 1, element)
  const depth = parent.depth + 1
  if (depth > LIMITS.renderedDepth)
    throw tooComplex('elements inside one another, references resolved', LIMITS.renderedDepth, depth, element.spot)
  const declared = scene.cascade.of(element)
  if (declared.get('display')?.trim() === 'none') return hidden(scene, element, parent, 'It is not displayed.')
  const style = styleOf(scene, element, declared, parent)
  const here = contextInside(parent, element, style)
  const own = ownTransform(scene, element, declared, here)
  if (!own) {
    scene.collector.ignore(sourceAt(element, parent), 'Its transform cannot be read.', ANYTHING)
    return undefined
  }
  if (own !== IDENTITY) {
    here.matrix = multiply(parent.matrix, own)
    if (determinant(here.matrix) === 0) return undefined
  }
  here.labels = labelsOf(element, parent.labels)
  if (declared.size === 0) return here
  here.opacity = parent.opacity * (parseOpacity(declared.get('opacity')) ?? 1)
  if (here.opacity === 0) return hidden(scene, element, parent, 'It is wholly transparent.')
  applyEffects(scene, element, declared, here)
  return here
}

/** Elements that hold a part of a sign rather than one shape of it. */
const HOLDERS = new Set(['g', 'a', 'svg', 'use', 'text'])

/** A part that is named and not seen is told, so that nobody looks for it in vain. */
function hidden(scene: Scene, element: Element, parent: Context, why: string): undefined {
  const labels = labelsOf(element, parent.labels)
  const named = labels !== parent.labels && (HOLDERS.has(element.name) || element.attributes.has('data-part'))
  if (named) scene.collector.ignore(sourceAt(element, parent), why, NOTHING, undefined, labels)
}

function styleOf(scene: Scene, element: Element, declared: Declared, parent: Context): Style {
  const style =
    declared.size === 0
      ? parent.style
      : computeStyle(declared, parent.style, { viewport: parent.viewport, rootFontSize: scene.rootFontSize })
  const space = element.attributes.get('{http://www.w3.org/XML/1998/namespace}space')
  return space === undefined ? style : { ...style, preserveSpace: space === 'preserve' }
}

/** CSS properties that move an element and are not worked out, with the values that do not move it. */
const OTHER_MOVES = ['rotate', 'scale', 'translate', 'offset-path', 'transform-box', 'zoom']
const NO_MOVE = /^(none|view-box|1|normal)$/

/** The map from the element's user space to its parent's; undefined when it cannot be read. */
function ownTransform(scene: Scene, element: Element, declared: Declared, here: Context): Matrix | undefined {
  const attribute = element.attributes.get('transform')
  if (declared.size === 0) return attribute === undefined ? IDENTITY : parseTransform(attribute, 'attribute')
  for (const name of OTHER_MOVES) {
    const written = declared.get(name)
    if (written !== undefined && !NO_MOVE.test(written.trim())) return undefined
  }
  const property = declared.get('transform')
  if (property === undefined && attribute === undefined) return IDENTITY
  const list =
    property !== undefined ? parseTransform(property, 'property') : parseTransform(attribute ?? '', 'attribute')
  const origin = declared.get('transform-origin')
  if (!list || origin === undefined) return list
  if (/%|[a-z]{4}/i.test(origin)) return undefined
  const lengths = lengthsAt(scene, here)
  const [x, y = 0] = [parseLengths(origin, 'x', lengths)[0], parseLengths(origin, 'y', lengths)[1]]
  return x === undefined ? undefined : multiply(translation(x, y), multiply(list, translation(-x, -y)))
}
