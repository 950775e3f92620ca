import { parse, type Node as ParsedNode } from 'svg-parser'
import { gate, SVG_NAMESPACE, type Gated } from './gate.js'
import type { Spot } from './refuse.js'

/** An element of the drawing as written, with nothing resolved yet. */
export interface Element {
  /** Local name: `circle` for `<svg:circle>` too. */
  name: string
  namespace: string
  /** Attributes without a namespace under their name, others under `{namespace}name`. */
  attributes: ReadonlyMap<string, string>
  children: Child[]
  parent?: Element
  spot: Spot
}

/** An element, or text between tags as written, blanks and all. */
export type Child = Element | string

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

/** Gives each element of the canonical text its raw data back, in document order and without recursion. */
function buildTree(gated: Gated, visit: (element: Element) => void): Element {
  const holder: Element = { name: '', namespace: '', attributes: new Map(), children: [], spot: { line: 1, column: 1 } }
  const waiting: (ParsedNode | string)[] = [parse(gated.canonical).children[0]]
  const parents: Element[] = [holder]
  for (let node = waiting.pop(), parent = parents.pop(); node && parent; node = waiting.pop(), parent = parents.pop()) {
    if (typeof node === 'string' || node.type !== 'element') continue
    const number = Number(node.properties?.['n'])
    if (node.tagName === 't') {
      parent.children.push(gated.texts[number])
      continue
    }
    const { name, namespace, attributes, spot } = gated.tags[number]
    const element: Element = {
      name,
      namespace,
      attributes,
      children: [],
      parent: parent === holder ? undefined : parent,
      spot,
    }
    parent.children.push(element)
    visit(element)
    for (let i = node.children.length - 1; i >= 0; i--) {
      waiting.push(node.children[i])
      parents.push(element)
    }
  }
  const root = holder.children[0]
  if (root === undefined || !isElement(root))
    throw new Error('svg-parser gave no root for text that the gate let through')
  return root
}
