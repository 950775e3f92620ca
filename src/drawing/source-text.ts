import type { Matrix } from '../geometry/matrix.js'
import { decode } from './decode.js'
import { isElement, readDocument, type Element } from './document.js'
import type { Drawing, Source } from './drawing.js'
import { readPainted } from './read.js'

/** A drawing together with its own text: which characters each element takes up, so that they can be changed and no others. */

/** An element in the text: offsets count UTF-16 units of the decoded text. */
export interface Written {
  element: Element
  /** As it is written, prefix and all. */
  name: string
  start: number
  /** Behind the start tag. */
  inside: number
  /** Behind the end tag. */
  end: number
}

export interface WrittenDrawing {
  text: string
  drawing: Drawing
  root: Written
  /** The element at a place that the drawing names; undefined when it was not found in the text. */
  at: (source: Source) => Written | undefined
  /** From an element's own user space to millimetres; of one that is painted several times, the last time. */
  spaceOf: (element: Element) => Matrix | undefined
}

/**
 * Reads a drawing once more, with its text.
 * @throws {Refusal} as reading it does.
 */
export function readWritten(bytes: Uint8Array, options: { scale?: number }): WrittenDrawing {
  const text = decode(bytes)
  const document = readDocument(text)
  const spaces = new Map<Element, Matrix>()
  const drawing = readPainted(document, options, spaces)
  const written = writtenIn(text, document.root)
  const bySpot = new Map(written.map((one) => [keyOf(one.element.spot), one]))
  return {
    text,
    drawing,
    root: written[0],
    at: (source) => bySpot.get(keyOf(source)),
    spaceOf: (element) => spaces.get(element),
  }
}

const keyOf = ({ line, column }: { line: number; column: number }): string => `${line}:${column}`

/** Everything in XML that holds a `<` (XML 1.0, 2.5 to 2.8 and 3.1); the text is known to be well-formed. */
const MARK =
  /<!--[^]*?-->|<\?[^]*?\?>|<!\[CDATA\[[^]*?\]\]>|<!DOCTYPE(?:[^["'>]|"[^"]*"|'[^']*'|\[(?:[^\]"'<]|"[^"]*"|'[^']*'|<!--[^]*?-->|<)*\])*>|<\/[^>]*>|<([^\s/>!?]+)(?:[^"'>]|"[^"]*"|'[^']*')*?(\/?)>/g

/** In the order of the text, the outermost first; that one alone where the tags found are not the elements that were read. */
function writtenIn(text: string, root: Element): Written[] {
  const elements = inOrder(root)
  const found: Written[] = []
  const open: Written[] = []
  for (const { 0: mark, 1: name, 2: slash, index } of text.matchAll(MARK)) {
    const end = index + mark.length
    if (name !== undefined) {
      const one = { element: elements[found.length], name, start: index, inside: end, end }
      found.push(one)
      if (slash === '') open.push(one)
    } else if (mark.startsWith('</')) {
      const closed = open.pop()
      if (closed) closed.end = end
    }
  }
  const isSure = found.length === elements.length && open.length === 0
  return isSure ? found : [{ element: root, name: root.name, start: 0, inside: 0, end: text.length }]
}

function inOrder(root: Element): Element[] {
  const found: Element[] = []
  const waiting = [root]
  for (let element = waiting.pop(); element; element = waiting.pop()) {
    found.push(element)
    waiting.push(...element.children.filter(isElement).reverse())
  }
  return found
}
