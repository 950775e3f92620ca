import { parse, type Node as ParsedNode } from 'svg-parser'
import { gate, type Child, type Element, type Gated } from './gate.js'
import { SVG_NAMESPACE } from './namespaces.js'

export type { Child, Element }

export interface SvgDocument {
  root: Element
  /** The first element of each id, as references find it. */
  byId: ReadonlyMap<string, Element>
  /** All `<style>` elements, in document order. */
  styleElements: Element[]
}

export const XLINK_HREF = '{http://www.w3.org/1999/xlink}href'

export const isSvg = (element: Element): boolean => element.namespace === SVG_NAMESPACE

export const isElement = (child: Child): child is Element => typeof child !== 'string'

/** Text of an element's own text children, blanks and all. */
export const ownText = (element: Element): string =>
  element.children.map((child) => (isElement(child) ? '' : child)).join('')

/**
 * The drawing's elements as a tree.
 * @throws {Refusal} what the gate refuses.
 */
export function readDocument(text: string): SvgDocument {
  const gated = gate(text)
  const byId = new Map<string, Element>()
  const styleElements: Element[] = []
  const root = buildTree(gated, (element) => {
    const id = element.attributes.get('id')
    if (id && !byId.has(id)) byId.set(id, element)
    if (element.name === 'style' && isSvg(element)) styleElements.push(element)
  })
  return { root, byId, styleElements }
}

/** Puts each element and text where the canonical text has it, in document order and without recursion. */
function buildTree(gated: Gated, visit: (element: Element) => void): Element {
  const waiting: (ParsedNode | string)[] = [parse(gated.canonical).children[0]]
  const parents: (Element | undefined)[] = [undefined]
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    const parent = parents.pop()
    if (typeof node === 'string' || node.type !== 'element') continue
    const number = Number(node.properties?.['n'])
    if (node.tagName === 't') {
      parent?.children.push(gated.texts[number])
      continue
    }
    const element = gated.elements[number]
    element.parent = parent
    parent?.children.push(element)
    visit(element)
    for (let i = node.children.length - 1; i >= 0; i--) {
      waiting.push(node.children[i])
      parents.push(element)
    }
  }
  return gated.elements[0]
}
