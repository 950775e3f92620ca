import type { Box } from '../geometry/box.js'
import { boxOfContours } from '../geometry/curve.js'
import { IDENTITY } from '../geometry/matrix.js'
import { outlineOf, SHAPE_NAMES } from './basic-shapes.js'
import type { Element } from './document.js'
import { lengthsAt, type Context, type Scene } from './scene.js'

/**
 * The box round an element's geometry in its own user space, which `objectBoundingBox` units count in (SVG 1.1, 7.11).
 * Undefined for what is no single shape, and for a shape without width or height, to which such units do not apply.
 */
export function objectBox(scene: Scene, element: Element, context: Context): Box | undefined {
  if (!SHAPE_NAMES.has(element.name)) return undefined
  const declared = scene.cascade.of(element)
  const read = (name: string) => declared.get(name) ?? element.attributes.get(name)
  const box = boxOfContours(outlineOf(element.name, read, lengthsAt(scene, context), IDENTITY).contours)
  return box && box.width > 0 && box.height > 0 ? box : undefined
}
