import type { Attributes } from './attributes.js'
import { readPlain } from './plain.js'
import type { Spot } from './refuse.js'
import { readStrictly } from './strict.js'

/**
 * The gate: what the tree reader may see. The text is checked to be well-formed XML with namespaces, everything's place is
 * noted, and limits are kept while reading, before anything is built. What passes is written again in a canonical form that
 * svg-parser cannot misread (it turns numeric ids into numbers, leaves entities and prefixes as they are, drops blanks and knows
 * no positions): elements and texts carry only their number, and the raw data stand beside it.
 */

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

/**
 * Reads XML text. What is plain is read once; all else is read by the strict reader, which finds every fault.
 * @throws {Refusal} `malformed-drawing` with line and column, `entities-not-accepted`, or `too-complex`.
 */
export const gate = (text: string): Gated => readPlain(text) ?? readStrictly(text)
