import { isElement, isSvg, type Element } from './document.js'
import { parseColour } from './colour.js'
import { lineOf, styleFromAncestors } from './resource.js'
import type { Scene } from './scene.js'
import { parseOpacity } from './style.js'
import { parseNumber } from './numbers.js'

/** The colours of a gradient: SVG 1.1, 13.2. Where each of them is seen is not worked out, only which there are. */

export type Stop = [red: number, green: number, blue: number, opacity: number]

export const GRADIENTS = /^(linearGradient|radialGradient)$/

/**
 * The stops that are seen, in order; none when the gradient has none, and then nothing is painted (SVG 1.1, 13.2.4).
 * Undefined when a colour is not understood.
 */
export function stopsOf(scene: Scene, gradient: Element): Stop[] | undefined {
  if (!scene.stopsRead.has(gradient)) scene.stopsRead.set(gradient, readStops(scene, gradient))
  return scene.stopsRead.get(gradient)
}

function readStops(scene: Scene, gradient: Element): Stop[] | undefined {
  const owner = lineOf(scene, gradient, GRADIENTS).find((element) => stopElements(element).length > 0)
  if (!owner) return []
  const stops = stopElements(owner).map((element) => stopOf(scene, element))
  if (stops.some((stop) => stop === undefined)) return undefined
  const read = stops.filter((stop) => stop !== undefined)
  const hidden = gradient.name === 'radialGradient' ? hiddenBefore(read.map(({ offset }) => offset)) : 0
  return read.slice(hidden).map(({ stop }) => stop)
}

const stopElements = ({ children }: Element): Element[] =>
  children.filter(isElement).filter((child) => child.name === 'stop' && isSvg(child))

function stopOf(scene: Scene, element: Element): { stop: Stop; offset: number } | undefined {
  const declared = scene.cascade.of(element)
  const written = declared.get('stop-color')?.trim() ?? 'black'
  const colour = parseColour(/^currentcolor$/i.test(written) ? styleFromAncestors(scene, element).color : written)
  if (!colour) return undefined
  const opacity = (parseOpacity(declared.get('stop-opacity')?.trim()) ?? 1) * colour.alpha
  return { stop: [...colour.rgb, opacity], offset: offsetOf(element.attributes.get('offset') ?? '0') }
}

function offsetOf(text: string): number {
  const percent = /^(.*)%\s*$/.exec(text)
  const value = parseNumber(percent ? percent[1] : text) ?? 0
  return Math.min(1, Math.max(0, percent ? value / 100 : value))
}

/** A circle starts at its middle: of the stops at offset 0, only the last colours anything. */
function hiddenBefore(offsets: readonly number[]): number {
  const first = offsets.findIndex((offset) => offset > 0)
  return first < 0 ? Math.max(0, offsets.length - 1) : Math.max(0, first - 1)
}

/** Whether all stops are one and the same colour. */
export const isUniform = ([first, ...rest]: readonly Stop[]): boolean =>
  rest.every((stop) => stop.every((v, i) => v === first[i]))
