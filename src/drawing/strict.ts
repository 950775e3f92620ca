import { SaxesParser, type SaxesTagNS } from 'saxes'
import { Attributes } from './attributes.js'
import { Canonical } from './canonical.js'
import { entitiesOf, limitExpansion } from './entities.js'
import type { Gated } from './gate.js'
import { LIMITS } from './limits.js'
import { SVG_NAMESPACE } from './namespaces.js'
import { malformed, quote, tooComplex, type Spot } from './refuse.js'

/** The gate's strict reader: saxes, which knows all of XML and where everything stands. */

/** The text is handed to saxes in pieces, so that a limit stops it early. */
const PIECE = 65_536

/**
 * Reads XML text once, from start to end.
 * @throws {Refusal} `malformed-drawing` with line and column, `entities-not-accepted`, or `too-complex`.
 */
export function readStrictly(text: string): Gated {
  const parser = new SaxesParser({ xmlns: true, position: true })
  const canonical = new Canonical()
  let attributes = 0
  let opened: Spot = { line: 1, column: 1 }
  const here = (): Spot => ({ line: parser.line, column: parser.column + 1 })

  const addText = (piece: string) => {
    canonical.text(piece)
    const { textLength } = canonical
    if (textLength > LIMITS.textLength) throw tooComplex('characters of text', LIMITS.textLength, textLength, here())
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
    const [depth, count] = [canonical.depth + 1, canonical.count + 1]
    if (depth > LIMITS.depth) throw tooComplex('elements inside one another', LIMITS.depth, depth, opened)
    if (count > LIMITS.elements) throw tooComplex('elements', LIMITS.elements, count, opened)
  })
  parser.on('attribute', ({ name, value }) => {
    attributes++
    if (attributes > LIMITS.attributesPerElement)
      throw tooComplex('attributes on one element', LIMITS.attributesPerElement, attributes, opened)
    if (value.length > LIMITS.attributeLength)
      throw tooComplex(`characters in the attribute ${quote(name)}`, LIMITS.attributeLength, value.length, opened)
  })
  parser.on('opentag', (tag) => {
    if (canonical.count === 0) checkRoot(tag.local, tag.uri, opened)
    canonical.open({
      name: tag.local,
      namespace: tag.uri,
      attributes: attributesOf(tag),
      children: [],
      parent: undefined,
      spot: opened,
    })
  })
  parser.on('closetag', () => canonical.close())
  parser.on('text', addText)
  parser.on('cdata', addText)
  for (let at = 0; at < text.length; at += PIECE) parser.write(text.slice(at, at + PIECE))
  parser.close()
  return canonical.finish()
}

/** Where a tag's `<` stands, when saxes has just read its name and the one character after it. */
function startOfTag(text: string, parser: SaxesParser<{ xmlns: true }>, name: string): Spot {
  const column = parser.column - name.length - 1
  if (column >= 1) return { line: parser.line, column }
  // The character after the name was a line break: the tag stands at the end of the line before.
  const start = text.lastIndexOf('<', parser.position - 1)
  return { line: Math.max(1, parser.line - 1), column: start - text.lastIndexOf('\n', start) }
}

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
