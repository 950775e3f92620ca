import type { Shape } from '../../drawing/drawing.js'
import { apply, inverse, isSimilarity, meanScale, type Matrix } from '../../geometry/matrix.js'
import type { Point } from '../../geometry/point.js'
import { decimalsFor } from './path-owner.js'

/** Braille dots as SVG: circles of a group of their own, or subpaths of a path that holds them with other things. */

export interface NewDot extends Point {
  /** Without a stroke. */
  width: number
}

/** Control points of a quarter of a circle, as a share of its radius: the usual cubic is off by less than 0.03 % (Goldapp 1991). */
const QUARTER = 0.551915

const teller = (space: Matrix) => {
  const decimals = decimalsFor(space)
  return (value: number): string => String(Number(value.toFixed(decimals)) + 0)
}

/** A dot as a subpath, in the coordinates of a path. @param clockwise as seen, for the rule by which the path is filled */
export function dotSubpath({ x, y, width }: NewDot, space: Matrix, clockwise: boolean): string {
  const back = inverse(space)
  const say = teller(space)
  const r = width / 2
  const turn = clockwise ? 1 : -1
  const at = (across: number, down: number): string => {
    const p = apply(back, { x: x + across * r, y: y + down * turn * r })
    return `${say(p.x)},${say(p.y)}`
  }
  const q = QUARTER
  return (
    `M${at(1, 0)} C${at(1, q)} ${at(q, 1)} ${at(0, 1)} C${at(-q, 1)} ${at(-1, q)} ${at(-1, 0)} ` +
    `C${at(-1, -q)} ${at(-q, -1)} ${at(0, -1)} C${at(q, -1)} ${at(1, -q)} ${at(1, 0)} Z`
  )
}

/** How a group of dots is written. */
export interface GroupStyle {
  /** Of the outermost element, with a colon where there is one. */
  prefix: string
  /** Whether the group is named as braille. */
  named: boolean
  /** Whether a style sheet may reach the circles: each then carries its own style. */
  sheets: boolean
}

/** @param like a dot that was there: the new ones are painted like it */
export function dotGroup(
  dots: readonly NewDot[],
  like: Shape,
  space: Matrix,
  { prefix, named, sheets }: GroupStyle,
): string {
  const back = inverse(space)
  const say = teller(space)
  const paint = paintOf(like, meanScale(space), say)
  const round = isSimilarity(space)
  const style = sheets ? ` style="${paint}"` : ''
  const marks = dots.map((dot) => {
    const { x, y } = apply(back, dot)
    return round
      ? `<${prefix}circle cx="${say(x)}" cy="${say(y)}" r="${say(dot.width / 2 / meanScale(space))}"${style}/>`
      : `<${prefix}path d="${dotSubpath(dot, space, true)}"${style}/>`
  })
  const part = named ? ' data-part="braille"' : ''
  return `<${prefix}g${part} style="${paint}">\n${marks.join('\n')}\n</${prefix}g>\n`
}

function paintOf({ fill, stroke }: Shape, scale: number, say: (value: number) => string): string {
  const filled = fill ? `fill:${colourOf(fill)}${fill.opacity < 1 ? `;fill-opacity:${fill.opacity}` : ''}` : 'fill:none'
  if (!stroke) return `${filled};stroke:none`
  const thin = stroke.opacity < 1 ? `;stroke-opacity:${stroke.opacity}` : ''
  return `${filled};stroke:${colourOf(stroke)};stroke-width:${say(stroke.width / scale)}${thin};stroke-dasharray:none`
}

/** Names and numbers of colours are kept as written; all else is told by its components. */
function colourOf({ rgb, written }: { rgb?: [number, number, number]; written: string }): string {
  if (/^(#[\da-f]{3,8}|[a-z]+|rgb\([\d., %]+\))$/i.test(written) && !/^(currentcolor|inherit|context)/i.test(written))
    return written
  return rgb ? hexOf(rgb) : 'black'
}

export const hexOf = (rgb: readonly number[]): string =>
  `#${rgb
    .map((value) =>
      Math.round(value * 255)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`
