import { SaxesParser, type SaxesTagNS } from 'saxes'
import { Attributes } from './attributes.js'
import { entitiesOf, limitExpansion } from './entities.js'
import { LIMITS } from './limits.js'
import { malformed, quote, tooComplex, type Spot } from './refuse.js'

/**
 * The gate: what the tree reader may see. saxes checks that the text is well-formed XML with namespaces and knows where
 * everything stands; limits are kept while reading, before anything is built. What passes is written again in a canonical
 * form that svg-parser cannot misread (it turns numeric ids into numbers, leaves entities and prefixes as they are, drops
 * blanks and knows no positions): elements and texts carry only their number, and the raw data stand beside it.
 */

export const SVG_NAMESPACE = 'http://www.w3.org/2000/svg'

/** An element as written, not yet in its place in the tree. */
export interface Element {
  /** Local name: `circle` for `<svg:circle>` too. */
  name: string
  namespace: string
  /** Attributes without a namespace under their name, others under `{namespace}name`. */
  attributes: Attributes
  children: Child[]
  parent: Element | undefined
  spot: Spot
}

/** An element, or text between tags as written, blanks and all. */
export type Child = Element | string

export interface Gated {
  /** `<e n="0"><t n="0"/>…</e>`: numbers of elements and of texts. */
  canonical: string
  elements: Element[]
  texts: string[]
}

/** The text is handed to saxes in pieces, so that a limit stops it early. */
const PIECE = 65_536

/**
 * Reads XML text once, from start to end.
 * @throws {Refusal} `malformed-drawing` with line and column, `entities-not-accepted`, or `too-complex`.
 */
export function gate(text: string): Gated {
  const parser = new SaxesParser({ xmlns: true, position: true })
  const elements: Element[] = []
  const texts: string[] = []
  const canonical: string[] = []
  let depth = 0
  let attributes = 0
  /** The depth of the outermost open `text` element, 0 outside of any: only there do blanks alone matter. */
  let wordsFrom = 0
  let textLength = 0
  let opened: Spot = { line: 1, column: 1 }
  const here = (): Spot => ({ line: parser.line, column: parser.column + 1 })

  const addText = (piece: string) => {
    if (depth === 0 || (wordsFrom === 0 && BLANK.test(piece))) return
    textLength += piece.length
    if (textLength > LIMITS.textLength) throw tooComplex('characters of text', LIMITS.textLength, textLength, here())
    canonical.push(`<t n="${texts.length}"/>`)
    texts.push(piece)
  }

  parser.on('error', (error) => {
    throw malformed(`This is not well-formed XML: ${plain(error.message)}.`, here())
  })
  parser.on('doctype', (doctype) => {
    const entities = entitiesOf(doctype, here())
    limitExpansion(text, entities, here())
    for (const [name, value] of entities) parser.ENTITIES[name] = value
  })
  parser.on('opentagstart', ({ name }) => {
    opened = startOfTag(text, parser, name)
    attributes = 0
    depth++
    if (depth > LIMITS.depth) throw tooComplex('elements inside one another', LIMITS.depth, depth, opened)
    if (elements.length >= LIMITS.elements) throw tooComplex('elements', LIMITS.elements, elements.length + 1, opened)
  })
  parser.on('attribute', ({ name, value }) => {
    attributes++
    if (attributes > LIMITS.attributesPerElement)
      throw tooComplex('attributes on one element', LIMITS.attributesPerElement, attributes, opened)
    if (value.length > LIMITS.attributeLength)
      throw tooComplex(`characters in the attribute ${quote(name)}`, LIMITS.attributeLength, value.length, opened)
  })
  parser.on('opentag', (tag) => {
    if (elements.length === 0) checkRoot(tag.local, tag.uri, opened)
    if (wordsFrom === 0 && tag.local === 'text') wordsFrom = depth
    canonical.push(`<e n="${elements.length}">`)
    elements.push({
      name: tag.local,
      namespace: tag.uri,
      attributes: attributesOf(tag),
      children: [],
      parent: undefined,
      spot: opened,
    })
  })
  parser.on('closetag', () => {
    if (wordsFrom === depth) wordsFrom = 0
    depth--
    canonical.push('</e>')
  })
  parser.on('text', addText)
  parser.on('cdata', addText)
  for (let at = 0; at < text.length; at += PIECE) parser.write(text.slice(at, at + PIECE))
  parser.close()
  return { canonical: canonical.join(''), elements, texts }
}

/** Where a tag's `<` stands, when saxes has just read its name and the one character after it. */
function startOfTag(text: string, parser: SaxesParser<{ xmlns: true }>, name: string): Spot {
  const column = parser.column - name.length - 1
  if (column >= 1) return { line: parser.line, column }
  // The character after the name was a line break: the tag stands at the end of the line before.
  const start = parser.position - name.length - 2
  return { line: Math.max(1, parser.line - 1), column: start - text.lastIndexOf('\n', start) }
}

const BLANK = /^[ \t\r\n]*$/

/** A name without a prefix is taken from the keys: the engine keeps one copy of each, which makes it quick to compare. */
function attributesOf({ attributes }: SaxesTagNS): Attributes {
  const pairs: string[] = []
  for (const key of Object.keys(attributes)) {
    const { uri, local, value } = attributes[key]
    pairs.push(uri === '' ? key : `{${uri}}${local}`, value)
  }
  return new Attributes(pairs)
}

/** The message of saxes without its own positions and full stop. */
const plain = (message: string): string => message.replace(/^\d+:\d+: /, '').replace(/\.$/, '')

function checkRoot(name: string, namespace: string, spot: Spot): void {
  if (name === 'svg' && namespace === SVG_NAMESPACE) return
  if (name !== 'svg')
    throw malformed(`The outermost element is <${name.slice(0, 40)}>; a drawing starts with <svg>.`, spot)
  const found = namespace === '' ? 'no namespace' : `the namespace ${quote(namespace)}`
  throw malformed(`The <svg> element has ${found}, so nothing of it is drawn. Write xmlns="${SVG_NAMESPACE}".`, spot)
}
