import type { Block, CssNode, Selector } from 'css-tree'
import { cssTree } from '../libraries.js'
import type { CouldBe } from './collector.js'
import type { Declaration } from './declarations.js'
import type { Element } from './document.js'
import { ownText } from './document.js'
import { LIMITS } from './limits.js'
import { tooComplex } from './refuse.js'

/** Style sheets to rules, parsed by css-tree. Nothing that a sheet points to is ever loaded. */

/** One selector with its block. */
export interface Rule {
  selector: string
  /** Selectors 4, 17: numbers of ids; of classes, attributes and pseudo-classes; of types. */
  specificity: [number, number, number]
  /** What an element that matches certainly has; neither when the selector does not tell. */
  key: { id?: string; class?: string; type?: string }
  declarations: Declaration[]
}

/** Something in a sheet that may change what is seen and was not applied. */
export interface SheetGap {
  element: Element
  why: string
  couldBe: CouldBe
}

export interface Sheets {
  rules: Rule[]
  gaps: SheetGap[]
}

/** @throws {Refusal} `too-complex` for sheets that are too long, nested too deep or hold too many selectors. */
export function readSheets(elements: readonly Element[]): Sheets {
  const sheets: Sheets = { rules: [], gaps: [] }
  let length = 0
  for (const element of elements) {
    if (!/^\s*(text\/css\s*)?(;.*)?$/i.test(element.attributes.get('type') ?? '')) continue
    if (!appliesToScreen(element.attributes.get('media') ?? '')) continue
    const text = ownText(element)
    length += text.length
    if (length > LIMITS.styleSheetLength)
      throw tooComplex('characters in its style sheets', LIMITS.styleSheetLength, length, element.spot)
    addRules(parseSheet(text, element), element, sheets)
  }
  return sheets
}

function parseSheet(text: string, element: Element): CssNode {
  // css-tree descends by recursion, and drops what is too deep for it without a word.
  const depth = bracketDepth(text)
  if (depth > LIMITS.depth)
    throw tooComplex('brackets inside one another in its style sheet', LIMITS.depth, depth, element.spot)
  return cssTree().parse(text.replace(/<!--|-->/g, ''), { parseValue: false })
}

/** How many brackets of any kind stand inside one another; those in comments and strings count too. */
function bracketDepth(text: string): number {
  let depth = 0
  let deepest = 0
  for (const [bracket] of text.matchAll(/[([{)\]}]/g)) {
    depth = '([{'.includes(bracket) ? depth + 1 : Math.max(0, depth - 1)
    deepest = Math.max(deepest, depth)
  }
  return deepest
}

/** Only the media types that hold for every screen are known to hold; a condition on sizes is not. */
const appliesToScreen = (query: string): boolean => /^\s*((only\s+)?(all|screen)\s*)?$/i.test(query)
const neverApplies = (query: string): boolean =>
  /^\s*(only\s+)?(print|speech|aural|braille|embossed|tty|tv|projection)\b/i.test(query)

function addRules(node: CssNode, element: Element, sheets: Sheets): void {
  if (node.type !== 'StyleSheet' && node.type !== 'Block') return
  for (const child of node.children.toArray()) {
    if (child.type === 'Rule') {
      if (child.prelude.type !== 'SelectorList') continue
      const declarations = declarationsOf(child.block)
      for (const selector of child.prelude.children.toArray()) {
        if (selector.type !== 'Selector') continue
        if (sheets.rules.length >= LIMITS.styleSelectors)
          throw tooComplex('style rules', LIMITS.styleSelectors, sheets.rules.length + 1, element.spot)
        sheets.rules.push(ruleOf(selector, declarations))
      }
    } else if (child.type === 'Atrule') {
      const query = child.prelude ? cssTree().generate(child.prelude) : ''
      const name = child.name.toLowerCase()
      if (name === 'media' && child.block && appliesToScreen(query)) addRules(child.block, element, sheets)
      else addGap(name, query, element, sheets)
    }
  }
}

function addGap(name: string, query: string, element: Element, sheets: Sheets): void {
  if (name === 'charset' || name === 'namespace' || (name === 'media' && neverApplies(query))) return
  if (/keyframes$|^page$|^property$/.test(name)) return
  const why = `The style sheet's @${name.slice(0, 20)} was not applied.`
  sheets.gaps.push({ element, why, couldBe: name === 'font-face' ? ['lettering'] : ['colour'] })
}

function declarationsOf(block: Block): Declaration[] {
  return block.children.toArray().flatMap((node) => {
    if (node.type !== 'Declaration') return []
    const value = cssTree().generate(node.value).trim()
    return [{ property: node.property.toLowerCase(), value, important: node.important !== false }]
  })
}

function ruleOf(selector: Selector, declarations: Declaration[]): Rule {
  const key: Rule['key'] = {}
  for (const part of selector.children.toArray().reverse()) {
    if (part.type === 'Combinator') break
    if (part.type === 'IdSelector') key.id = plainName(part.name)
    if (part.type === 'ClassSelector') key.class = plainName(part.name)
    if (part.type === 'TypeSelector' && part.name !== '*') key.type = plainName(part.name)
  }
  return { selector: cssTree().generate(selector), specificity: specificityOf(selector), key, declarations }
}

/** A name that stands for itself; one with an escape or a namespace is left to the selector engine. */
const plainName = (name: string): string | undefined => (/[\\|]/.test(name) ? undefined : name)

function specificityOf(selector: Selector): [number, number, number] {
  const sum: [number, number, number] = [0, 0, 0]
  for (const part of selector.children.toArray()) {
    if (part.type === 'IdSelector') sum[0]++
    else if (part.type === 'ClassSelector' || part.type === 'AttributeSelector') sum[1]++
    else if (part.type === 'TypeSelector' && part.name !== '*') sum[2]++
    else if (part.type === 'PseudoElementSelector') sum[2]++
    else if (part.type === 'PseudoClassSelector') {
      if (part.name === 'where') continue
      if (!/^(is|not|has|matches)$/.test(part.name)) sum[1]++
      mostSpecific(part.children?.toArray() ?? []).forEach((n, i) => (sum[i] += n))
    }
  }
  return sum
}

/** The greatest specificity among the selectors of a pseudo-class's arguments. */
function mostSpecific(nodes: CssNode[]): [number, number, number] {
  const selectors = nodes.flatMap((n) => (n.type === 'SelectorList' ? n.children.toArray() : [n]))
  const all = selectors.flatMap((n) => (n.type === 'Selector' ? [specificityOf(n)] : []))
  return all.sort(compareSpecificity).pop() ?? [0, 0, 0]
}

export const compareSpecificity = (a: readonly number[], b: readonly number[]): number =>
  a[0] - b[0] || a[1] - b[1] || a[2] - b[2]
