import { attributeOf, attributeSet, type Edit } from '../../drawing/rewrite.js'
import type { Shape } from '../../drawing/drawing.js'
import type { Written, WrittenDrawing } from '../../drawing/source-text.js'
import { parseColour } from '../../drawing/colour.js'
import { brailleContours, ownersOf, type Contours } from './marks.js'
import { hexOf } from './dot-markup.js'
import { contoursWithin } from './move.js'
import { NO_CHANGE, NotCorrectable, type Rewrite, type Rgb } from './outcome.js'
import type { Sheet } from './sheet.js'

/** Characters in another colour: the fill of their elements is changed, and nothing else. */

const SHARED = 'The characters are painted by elements that paint other things too.'
const NOT_FOUND = 'The elements that paint the characters were not found in the text of the drawing.'

/** @param colours the new colour of each lettering, by its number */
export function recoloured(sheet: Sheet, colours: ReadonlyMap<number, Rgb>): Rewrite | NotCorrectable {
  const { sign, written } = sheet
  const { drawing, at } = written
  const dots = brailleContours(sign, drawing)
  const edits = new Map<Written, Edit>()
  const shapes = new Map<Shape, Rgb>()
  const texts = new Map<number, Rgb>()
  for (const [n, colour] of colours) {
    const { lines } = sign.lettering[n]
    let found = 0
    for (const { place } of lines) {
      const own = place.box
        ? sameColour(contoursWithin(written, place.box, dots), sheet, n)
        : new Map<Shape, Set<number>>()
      const owners = ownersOf(own, written)
      if (!owners) return new NotCorrectable(NOT_FOUND)
      for (const { written: element, shapes: painted, isWhole } of owners) {
        if (!isWhole) return new NotCorrectable(SHARED)
        edits.set(element, filled(written, element, colour))
        for (const shape of painted) shapes.set(shape, colour)
        found++
      }
      drawing.texts.forEach((text, i) => {
        if (text.source.line !== place.source?.line || text.source.column !== place.source.column) return
        const element = at(text.source)
        if (!element) return
        edits.set(element, filled(written, element, colour))
        texts.set(i, colour)
        found++
      })
    }
    if (found === 0) return new NotCorrectable(NOT_FOUND)
  }
  return { ...NO_CHANGE, edits: [...edits.values()], recoloured: shapes, retinted: texts }
}

/** Without what has another colour than the characters: their counters may be painted over them in that of the ground. */
function sameColour(contours: Contours, { sign }: Sheet, n: number): Contours {
  const { colour } = sign.lettering[n]
  const css = 'value' in colour ? colour.value.css : undefined
  const rgb = css === undefined ? undefined : parseColour(css)?.rgb
  const alike = (fill: readonly number[] | undefined) =>
    fill !== undefined && rgb !== undefined && fill.every((value, i) => Math.abs(value - rgb[i]) <= SAME_COLOUR)
  return new Map([...contours].filter(([{ fill }]) => alike(fill?.rgb)))
}

/** One step of eight bits. */
const SAME_COLOUR = 1 / 255

const FILL = /(^|;)(\s*)fill\s*:[^;]*/

/** The fill where it is written: in the style of the element, else in its attribute, else as a style of its own. */
function filled({ text }: WrittenDrawing, element: Written, colour: Rgb): Edit {
  const hex = hexOf(colour)
  const style = attributeOf(text, element, 'style')
  if (style === undefined && attributeOf(text, element, 'fill') !== undefined)
    return attributeSet(text, element, 'fill', hex)
  if (style === undefined || style.trim() === '') return attributeSet(text, element, 'style', `fill:${hex}`)
  const changed = FILL.test(style)
    ? style.replace(FILL, (_, before: string, blank: string) => `${before}${blank}fill:${hex}`)
    : `${style.replace(/;?\s*$/, '')};fill:${hex}`
  return attributeSet(text, element, 'style', changed)
}
