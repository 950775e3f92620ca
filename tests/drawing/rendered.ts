import { Resvg } from '@resvg/resvg-js'
import { expect } from 'vitest'
import type { Drawing, Paint, Shape } from '../../src/drawing/drawing.js'
import { read } from './svg.js'

/**
 * Outside reference: pictures by resvg (@resvg/resvg-js). A drawing as it was written and the shapes that were read from it,
 * written as plain paths, have to give the same picture.
 */

const PIXELS_PER_MM = 6

interface Picture {
  pixels: Uint8Array
  width: number
}

const render = (markup: string): Picture => {
  const drawn = new Resvg(markup, {
    font: { loadSystemFonts: false },
    background: '#fff',
    fitTo: { mode: 'width', value: 100 * PIXELS_PER_MM },
  }).render()
  return { pixels: drawn.pixels, width: drawn.width }
}

const colour = ({ rgb }: Paint): string => {
  if (!rgb) throw new Error('a colour is not known')
  return `rgb(${rgb.map((v) => Math.round(v * 255)).join()})`
}

const pathOf = ({ contours }: Shape): string =>
  contours
    .map(({ start, segments, closed }) => {
      const parts = segments.map((s) =>
        s.kind === 'line' ? `L${s.to.x} ${s.to.y}` : `C${s.c1.x} ${s.c1.y} ${s.c2.x} ${s.c2.y} ${s.to.x} ${s.to.y}`,
      )
      return `M${start.x} ${start.y}${parts.join('')}${closed ? 'Z' : ''}`
    })
    .join('')

/** The shapes alone, as an SVG that holds nothing but paths in millimetres. */
function plain({ shapes, viewport: { width, height } }: Drawing): string {
  const paths = shapes.map((shape) => {
    const { fill, stroke, fillRule } = shape
    const filled = fill
      ? `fill="${colour(fill)}" fill-opacity="${fill.opacity}" fill-rule="${fillRule}"`
      : 'fill="none"'
    const stroked = stroke
      ? `stroke="${colour(stroke)}" stroke-opacity="${stroke.opacity}" stroke-width="${stroke.width}" stroke-linecap="${stroke.linecap}" stroke-linejoin="${stroke.linejoin}"`
      : ''
    return `<path d="${pathOf(shape)}" ${filled} ${stroked}/>`
  })
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">${paths.join('')}</svg>`
}

/** A component that differs by more, of 255, is not the same. */
const TONE = 64
/** So many pixels of the whole picture may differ. */
const MOST_DIFFERENT = 12

/**
 * Pixels of one picture that are like none of the pixels of the other round the same place: the edges of shapes may be mixed
 * in other ways, and patterns are drawn from a picture of their tile.
 */
function strangers(one: Picture, other: Picture): number {
  const { pixels, width } = one
  const alike = (i: number, j: number) => [0, 1, 2].every((c) => Math.abs(pixels[i + c] - other.pixels[j + c]) <= TONE)
  const round = [-1, 0, 1].flatMap((y) => [-1, 0, 1].map((x) => 4 * (y * width + x)))
  let count = 0
  for (let i = 0; i < pixels.length; i += 4)
    if (!alike(i, i) && !round.some((step) => i + step >= 0 && i + step < pixels.length && alike(i, i + step))) count++
  return count
}

/** What was read, once it is known to look like what was written. */
export function readAsRendered(markup: string): Drawing {
  const drawing = read(markup)
  const [wanted, got] = [render(markup), render(plain(drawing))]
  expect(got.width).toBe(wanted.width)
  const different = Math.max(strangers(wanted, got), strangers(got, wanted))
  expect(different, 'pixels that differ').toBeLessThanOrEqual(MOST_DIFFERENT)
  // A page with nothing on it would prove nothing.
  expect(wanted.pixels.some((v) => v < 255 - TONE)).toBe(true)
  return drawing
}
