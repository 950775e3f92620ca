import { attributeOf, attributeSet, type Edit } from '../../drawing/rewrite.js'
import type { Element } from '../../drawing/document.js'
import type { Shape, Source } from '../../drawing/drawing.js'
import { isKnown } from '../../sign/sign.js'
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
  const dots = brailleContours(sign, written.drawing)
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
      for (const [i, run] of runsOf(place.source, sheet, n)) {
        edits.set(run, filled(written, run, colour))
        texts.set(i, colour)
        found++
      }
    }
    if (found === 0) return new NotCorrectable(NOT_FOUND)
  }
  return { ...NO_CHANGE, edits: [...edits.values()], recoloured: shapes, retinted: texts }
}

/** Without what has another colour than the characters: their counters may be painted over them in that of the ground. */
function sameColour(contours: Contours, sheet: Sheet, n: number): Contours {
  const isOwn = colourTest(sheet, n)
  return new Map([...contours].filter(([{ fill }]) => isOwn(fill?.rgb)))
}

function colourTest({ sign }: Sheet, n: number): (fill: readonly number[] | undefined) => boolean {
  const { colour } = sign.lettering[n]
  const css = isKnown(colour) ? colour.value.css : undefined
  const rgb = css === undefined ? undefined : parseColour(css)?.rgb
  return (fill) =>
    fill !== undefined && rgb !== undefined && fill.every((value, i) => Math.abs(value - rgb[i]) <= SAME_COLOUR)
}

/** The runs of live text in the colour of a line that stand in one text element with its first one, by their number. */
function runsOf(source: Source | undefined, sheet: Sheet, n: number): [number, Written][] {
  const { drawing, at } = sheet.written
  const first = source && at(source)
  const whole = first && textOf(first.element)
  if (!whole) return []
  const isOwn = colourTest(sheet, n)
  return drawing.texts.flatMap(({ source: own, fill }, i): [number, Written][] => {
    const run = at(own)
    return run && textOf(run.element) === whole && isOwn(fill?.rgb) ? [[i, run]] : []
  })
}

function textOf(element: Element): Element | undefined {
  for (let one: Element | undefined = element; one; one = one.parent) if (one.name === 'text') return one
  return undefined
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
