import { meanScale, type Matrix } from '../geometry/matrix.js'
import { parseColour } from './colour.js'
import type { Element } from './document.js'
import type { Paint, Stroke } from './drawing.js'
import { parseNumbers } from './numbers.js'
import type { Style } from './style.js'

/** Fill and stroke of an element: SVG 1.1, chapter 11. */

/** What a paint server may hide: a pattern holds shapes, a gradient only colours. */
export interface Painted<P extends Paint> {
  paint: P
  /** The element that the paint refers to, when it is a pattern. */
  pattern?: Element
}

export type Find = (reference: string) => Element | undefined

const WRITTEN_LENGTH = 100

/** A paint that is longer as written is not looked into. */
const LONGEST_PAINT = 1000

/** Undefined when nothing is painted: `none`, a reference that leads nowhere, or no opacity left. */
export function fillOf(style: Style, opacity: number, find: Find): Painted<Paint> | undefined {
  return resolve(style.fill, style, style.fillOpacity * opacity, find)
}

/**
 * The stroke, its width in millimetres by the mean scale of `matrix`. A stroke of width 0 is given all the same: nothing
 * is painted, but a machine may follow it.
 */
export function strokeOf(style: Style, opacity: number, matrix: Matrix, find: Find): Painted<Stroke> | undefined {
  const painted = resolve(style.stroke, style, style.strokeOpacity * opacity, find)
  if (!painted) return undefined
  const stroke: Stroke = {
    ...painted.paint,
    width: style.strokeWidth * meanScale(matrix),
    linecap: style.strokeLinecap,
    linejoin: style.strokeLinejoin,
    dashed: isDashed(style.strokeDasharray),
  }
  return { ...painted, paint: stroke }
}

const REFERENCE = /^url\(\s*(?:"([^"]*)"|'([^']*)'|([^)'"]*))\s*\)\s*(.*)$/s

/** SVG 1.1, 11.4: a list with a negative number is an error, one of zeros a solid line. */
function isDashed(written: string): boolean {
  if (written === 'none') return false
  const { numbers } = parseNumbers(written.slice(0, LONGEST_PAINT).replace(/[a-z%]+/gi, ' '))
  return numbers.some((n) => n > 0) && numbers.every((n) => n >= 0)
}

function resolve(written: string, style: Style, opacity: number, find: Find): Painted<Paint> | undefined {
  if (written === 'none') return undefined
  if (written.length > LONGEST_PAINT) return opacity > 0 ? unresolved(written, opacity, undefined) : undefined
  const text = written.trim()
  const reference = text.startsWith('url(') ? REFERENCE.exec(text) : undefined
  if (!reference) return solid(text, written, style, opacity)
  const target = (reference[1] ?? reference[2] ?? reference[3]).trim()
  const server = find(target)
  const fallback = reference[4].trim()
  if (server && /^(linearGradient|radialGradient|pattern|meshgradient|hatch|solidColor)$/.test(server.name))
    return opacity > 0
      ? unresolved(written, opacity, server.name === 'pattern' || server.name === 'hatch' ? server : undefined)
      : undefined
  if (fallback !== '') return solid(fallback, written, style, opacity)
  // A reference into another file may lead to anything; one that leads nowhere in this file paints nothing (SVG 2, 13.2).
  return target.startsWith('#') || opacity === 0 ? undefined : unresolved(written, opacity, undefined)
}

const unresolved = (written: string, opacity: number, pattern: Element | undefined): Painted<Paint> => ({
  paint: { opacity, written: written.slice(0, WRITTEN_LENGTH) },
  pattern,
})

function solid(text: string, written: string, style: Style, opacity: number): Painted<Paint> | undefined {
  if (/^none$/i.test(text)) return undefined
  const colour = parseColour(/^currentcolor$/i.test(text) ? style.color : text)
  const left = opacity * (colour?.alpha ?? 1)
  if (!(left > 0)) return undefined
  return { paint: { rgb: colour?.rgb, opacity: left, written: written.slice(0, WRITTEN_LENGTH) } }
}
