import { Attributes } from './attributes.js'
import { Canonical } from './canonical.js'
import type { Gated } from './gate.js'
import { LIMITS } from './limits.js'
import { outermostScope, Scope, SVG_NAMESPACE, XML_NAMESPACE, XMLNS_NAMESPACE } from './namespaces.js'
import { giveUp, NotPlain, PlainText, type Name } from './plain-text.js'
import type { Spot } from './refuse.js'

/**
 * The fast lane of the gate: XML as drawing programs nearly always write it, read in leaps from one mark to the next. It knows
 * only what it is sure of. At anything else (a fault, a limit, an entity of the file's own, a name beyond ASCII …) it gives up,
 * and the strict reader reads the text from the start. What it does read is what the strict reader would have read.
 */

/** In quotes of either kind. */
function quoted(pattern: string): string {
  return `(?:"${pattern}"|'${pattern}')`
}

/** Characters that XML does not have, those beyond U+FFFF, which count as one column, and line breaks of old (XML 1.0, 2.2, 2.11). */
const UNUSUAL = /[^\t\n\r -\ud7ff\ue000-\ufffd]|\r(?!\n)/
const DECLARATION = new RegExp(
  `<\\?xml version=${quoted('1\\.0')}(?: encoding=${quoted('[A-Za-z][\\w.-]*')})?(?: standalone=${quoted('(?:yes|no)')})? ?\\?>`,
  'y',
)
/** A document type that declares nothing of its own. */
const DOCTYPE = new RegExp(
  `<!DOCTYPE svg(?: PUBLIC ${quoted('[\\w .:/+-]{1,100}')}\\s{1,40}${quoted('[\\w.:/-]{1,200}')})?\\s{0,40}>`,
  'y',
)
/** No drawing program writes more; names are compared with each other. */
const MOST_ATTRIBUTES = 64

/** Undefined when the text holds anything that is not plain. */
export function readPlain(text: string): Gated | undefined {
  if (UNUSUAL.test(text)) return undefined
  try {
    return new PlainReader(text).read()
  } catch (error) {
    if (error instanceof NotPlain) return undefined
    throw error
  }
}

/** An element that is not closed yet, with what is in scope round it. */
interface Open {
  name: Name
  outer: Scope
}

class PlainReader {
  private readonly text: PlainText
  private readonly canonical = new Canonical()
  private readonly open: Open[] = []
  private scope = outermostScope()

  constructor(text: string) {
    this.text = new PlainText(text)
  }

  read(): Gated {
    const { text } = this
    text.skip(DECLARATION)
    this.skipMisc()
    if (text.skip(DOCTYPE)) this.skipMisc()
    this.startTag()
    while (this.open.length > 0) this.content()
    this.skipMisc()
    return text.atEnd ? this.canonical.finish() : giveUp()
  }

  /** Blanks and comments. */
  private skipMisc(): void {
    do this.text.skipBlanks()
    while (this.text.skipComment())
  }

  /** Text up to the next mark, and what that mark begins. */
  private content(): void {
    const { text, canonical } = this
    // Blanks alone matter between words only.
    if (!text.startsWith('<') && (canonical.inWords || !text.skipBlanksToTag())) this.addText(text.upToTag())
    if (text.startsWith('</')) this.endTag()
    else if (text.skipComment()) return
    else if (text.startsWith('<![CDATA[')) this.addText(text.cdata())
    else this.startTag()
  }

  private addText(piece: string): void {
    this.canonical.text(piece)
    if (this.canonical.textLength > LIMITS.textLength) giveUp()
  }

  private startTag(): void {
    const { text, canonical } = this
    const spot = text.startTag()
    const name = text.name()
    if (canonical.depth >= LIMITS.depth || canonical.count >= LIMITS.elements) giveUp()
    const names: Name[] = []
    const values: string[] = []
    let ends = text.tagEnds()
    for (; ends === undefined; ends = text.tagEnds()) {
      names.push(text.name())
      values.push(text.value())
    }
    if (names.length > MOST_ATTRIBUTES) giveUp()
    this.open.push({ name, outer: this.scope })
    this.addElement(name, names, values, spot)
    if (ends === 'closed') this.close()
  }

  private endTag(): void {
    if (this.text.endTag() !== this.open[this.open.length - 1].name) giveUp()
    this.close()
  }

  private close(): void {
    this.scope = this.open.pop()?.outer ?? this.scope
    this.canonical.close()
  }

  private addElement(name: Name, names: readonly Name[], values: readonly string[], spot: Spot): void {
    names.forEach(({ declares }, i) => {
      if (declares !== undefined) this.declare(declares, values[i])
    })
    const namespace = this.scope.find(name.prefix) ?? giveUp()
    if (this.canonical.count === 0 && (name.local !== 'svg' || namespace !== SVG_NAMESPACE)) giveUp()
    const attributes = new Attributes(this.pairsOf(names, values))
    this.canonical.open({ name: name.local, namespace, attributes, children: [], parent: undefined, spot })
  }

  private declare(prefix: string, uri: string): void {
    const reserved = prefix.startsWith('xml') || uri === XML_NAMESPACE || uri === XMLNS_NAMESPACE
    if (reserved || uri !== uri.trim() || (uri === '' && prefix !== '')) giveUp()
    if (this.scope === this.open[this.open.length - 1].outer) this.scope = new Scope(this.scope)
    this.scope.bind(prefix, uri)
  }

  private pairsOf(names: readonly Name[], values: readonly string[]): string[] {
    const pairs: string[] = []
    for (let i = 0; i < names.length; i++) {
      const key = this.keyOf(names[i])
      for (let j = 0; j < pairs.length; j += 2) if (pairs[j] === key) giveUp()
      pairs.push(key, values[i])
    }
    return pairs
  }

  /** The name of an attribute: the default namespace does not hold for it. */
  private keyOf({ prefix, local, declares }: Name): string {
    if (declares !== undefined) return `{${XMLNS_NAMESPACE}}${local}`
    return prefix === '' ? local : `{${this.scope.find(prefix) ?? giveUp()}}${local}`
  }
}
