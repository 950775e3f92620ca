import { meanScale, type Matrix } from '../geometry/matrix.js'
import { dashesOf } from './dashes.js'
import type { Element } from './document.js'
import type { Paint, Stroke } from './drawing.js'
import { GRADIENTS, isUniform, stopsOf } from './gradient.js'
import { parseReference } from './reference.js'
import { lengthsAt, type Context, type Scene } from './scene.js'
import type { Style } from './style.js'

/** Fill and stroke of an element: SVG 1.1, chapter 11. */

/** What a paint server may hide: a pattern holds shapes, a gradient only colours. */
export interface Painted<P extends Paint> {
  paint: P
  /** The element that the paint refers to, when it is a pattern. */
  pattern?: Element
}

const WRITTEN_LENGTH = 100

/** A paint that is longer as written is not looked into. */
const LONGEST_PAINT = 1000

/** Undefined when nothing is painted: `none`, a reference that leads nowhere, or no opacity left. */
export function fillOf(scene: Scene, here: Context): Painted<Paint> | undefined {
  const { style, opacity } = here
  return seenAs(here, resolve(scene, style.fill, style, style.fillOpacity * opacity))
}

/**
 * The stroke, its width in millimetres by the mean scale of `matrix`. A stroke of width 0 is given all the same: nothing
 * is painted, but a machine may follow it.
 */
export function strokeOf(scene: Scene, here: Context, matrix: Matrix): Painted<Stroke> | undefined {
  const { style, opacity } = here
  const painted = seenAs(here, resolve(scene, style.stroke, style, style.strokeOpacity * opacity))
  if (!painted) return undefined
  const stroke: Stroke = {
    ...painted.paint,
    width: style.strokeWidth * meanScale(matrix),
    linecap: style.strokeLinecap,
    linejoin: style.strokeLinejoin,
    dashed: dashesOf(style, lengthsAt(scene, here)) !== undefined,
  }
  return { ...painted, paint: stroke }
}

/** Behind a filter the colour is no longer that of the paint. */
function seenAs({ tint }: Context, painted: Painted<Paint> | undefined): Painted<Paint> | undefined {
  if (!tint || !painted) return painted
  const { opacity, written } = painted.paint
  return { ...painted, paint: { opacity, written } }
}

function resolve(scene: Scene, written: string, style: Style, opacity: number): Painted<Paint> | undefined {
  if (written === 'none' || !(opacity > 0)) return undefined
  if (written.length > LONGEST_PAINT) return unresolved(written, opacity)
  const text = written.trim()
  const context = /^context-(fill|stroke)$/.exec(text)
  if (context) return ofContext(scene, written, style, opacity, context[1] === 'fill' ? 'fill' : 'stroke')
  const reference = parseReference(text)
  if (!reference) return solid(scene, text, written, style, opacity)
  const { target, rest } = reference
  const server = scene.find(target)
  if (server && GRADIENTS.test(server.name)) return gradient(scene, server, written, opacity)
  if (server && /^(pattern|hatch)$/.test(server.name)) return { ...unresolved(written, opacity), pattern: server }
  if (server && /^(meshgradient|solidColor)$/.test(server.name)) return unresolved(written, opacity)
  if (rest !== '') return solid(scene, rest, written, style, opacity)
  // A reference into another file may lead to anything; one that leads nowhere in this file paints nothing (SVG 2, 13.2).
  return target.startsWith('#') ? undefined : unresolved(written, opacity)
}

const unresolved = (written: string, opacity: number): Painted<Paint> => ({
  paint: { opacity, written: written.slice(0, WRITTEN_LENGTH) },
})

function solid(scene: Scene, text: string, written: string, style: Style, opacity: number): Painted<Paint> | undefined {
  if (/^none$/i.test(text)) return undefined
  const colour = scene.colour(/^currentcolor$/i.test(text) ? style.color : text)
  const left = opacity * (colour?.alpha ?? 1)
  if (!(left > 0)) return undefined
  return { paint: { rgb: colour?.rgb, opacity: left, written: written.slice(0, WRITTEN_LENGTH) } }
}

/** SVG 2, 13.2: inside a marker or a clone, the paint of what refers to it; without one, nothing is painted. */
function ofContext(
  scene: Scene,
  written: string,
  { context }: Style,
  opacity: number,
  side: 'fill' | 'stroke',
): Painted<Paint> | undefined {
  if (!context) return undefined
  const found = resolve(scene, context[side], context, opacity)
  return found && { ...found, paint: { ...found.paint, written: written.slice(0, WRITTEN_LENGTH) } }
}

function gradient(scene: Scene, server: Element, written: string, opacity: number): Painted<Paint> | undefined {
  const stops = stopsOf(scene, server)
  if (!stops) return unresolved(written, opacity)
  if (stops.every((stop) => stop[3] === 0)) return undefined
  const { paint } = unresolved(written, opacity)
  if (!isUniform(stops)) return { paint: { ...paint, stops: stops.map(([r, g, b, own]) => [r, g, b, own * opacity]) } }
  const [[red, green, blue, own]] = stops
  return { paint: { ...paint, rgb: [red, green, blue], opacity: own * opacity } }
}
