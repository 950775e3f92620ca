import { compile, type Options } from 'css-select'
import { ANYTHING } from './collector.js'
import { parseDeclarations, type Declaration } from './declarations.js'
import { isElement, type Child, type Element, type SvgDocument } from './document.js'
import { LIMITS } from './limits.js'
import { quote, tooComplex } from './refuse.js'
import { compareSpecificity, readSheets, type Rule, type SheetGap } from './stylesheet.js'

/**
 * What is declared for an element: its presentation attributes, then the rules that match it, then its `style` attribute
 * (SVG 1.1, 6.4; CSS Cascading 3, 6). Selectors are matched by css-select; an index by id, class and type keeps most rules
 * from being tried, and the elements that the others look at are counted.
 */

/** Attributes that count as declarations of the property of the same name, with the least weight. */
const PRESENTATION = new Set(
  (
    'fill fill-opacity fill-rule stroke stroke-opacity stroke-width stroke-linecap stroke-linejoin stroke-dasharray ' +
    'stroke-dashoffset stroke-miterlimit opacity visibility display color clip-path clip-rule mask filter marker-start marker-mid ' +
    'marker-end overflow vector-effect font font-family font-size font-style font-weight font-variant font-stretch ' +
    'letter-spacing word-spacing text-anchor writing-mode direction baseline-shift dominant-baseline alignment-baseline ' +
    'text-decoration transform-origin paint-order stop-color stop-opacity mask-type'
  ).split(' '),
)

/** A value that stands elsewhere: CSS Custom Properties 1, 3. */
const VARIABLE = /var\(/i
const PAINTS = new Set(['fill', 'stroke', 'color', 'stop-color'])

export type Declared = ReadonlyMap<string, string>

export class Cascade {
  readonly gaps: SheetGap[]
  private readonly cache = new Map<Element, Declared>()
  private readonly byId = new Map<string, Matcher[]>()
  private readonly byClass = new Map<string, Matcher[]>()
  private readonly byType = new Map<string, Matcher[]>()
  private readonly others: Matcher[] = []
  private readonly ruleCount: number
  private steps = 0

  /** @throws {Refusal} `too-complex` for style sheets beyond the limits. */
  constructor(document: SvgDocument) {
    const { rules, gaps } = readSheets(document.styleElements)
    this.gaps = gaps
    rules.forEach((rule, order) => this.index(rule, order))
    this.ruleCount = rules.length
  }

  /** Declared values by property, the winning ones only. The text of a value is as written. */
  of(element: Element): Declared {
    const known = this.cache.get(element)
    if (known) return known
    const declared = this.declaredFor(element, this.matching(element), element.attributes.get('style'))
    this.cache.set(element, declared.size === 0 ? NOTHING_DECLARED : declared)
    return declared
  }

  private declaredFor(element: Element, matching: readonly Matcher[], style: string | undefined): Declared {
    const plain = matching.length === 0 && style === undefined
    if (plain && !element.attributes.hasAny(PRESENTATION)) return NOTHING_DECLARED
    const declared = new Map<string, string>()
    element.attributes.forEach((name, value) => {
      if (PRESENTATION.has(name) && !this.isVariable(element, name, value)) declared.set(name, value)
    })
    if (plain) return declared
    const important = new Set<string>()
    const apply = ({ property, value, important: strong }: Declaration) => {
      if (this.isVariable(element, property, value) || (important.has(property) && !strong)) return
      if (strong) important.add(property)
      declared.set(property, value)
    }
    for (const { rule } of matching) rule.declarations.forEach(apply)
    if (style !== undefined) parseDeclarations(style).forEach(apply)
    return declared
  }

  /**
   * Values with variables are not worked out: a paint is then not known, and any other property is told, for what it would
   * have changed is read as if it were not declared.
   */
  private isVariable(element: Element, property: string, value: string): boolean {
    if (!VARIABLE.test(value) || PAINTS.has(property) || property.startsWith('--')) return false
    const why = `Its property ${quote(property)} is a variable, which is not worked out.`
    this.gaps.push({ element, why, couldBe: ANYTHING })
    return true
  }

  private index(rule: Rule, order: number): void {
    const { id, class: className, type } = rule.key
    const matcher: Matcher = { rule, order }
    if (id !== undefined) append(this.byId, id, matcher)
    else if (className !== undefined) append(this.byClass, className, matcher)
    else if (type !== undefined) append(this.byType, type, matcher)
    else this.others.push(matcher)
  }

  private matching(element: Element): Matcher[] {
    if (this.ruleCount === 0) return NO_MATCHERS
    const candidates = new Set([
      ...this.others,
      ...(this.byType.get(element.name) ?? []),
      ...(this.byId.get(element.attributes.get('id') ?? '') ?? []),
      ...classesOf(element).flatMap((name) => this.byClass.get(name) ?? []),
    ])
    return [...candidates].filter((matcher) => this.test(matcher, element)).sort(compareMatchers)
  }

  private test(matcher: Matcher, element: Element): boolean {
    this.count(1, element)
    matcher.matches ??= this.compile(matcher.rule, element)
    return matcher.matches(element)
  }

  private compile(rule: Rule, element: Element): (element: Element) => boolean {
    try {
      return compile<Child, Element>(rule.selector, this.options(element))
    } catch {
      // Parts like ::before never paint anything in a drawing.
      if (!rule.selector.includes('::'))
        this.gaps.push({ element, why: `The style rule ${quote(rule.selector)} was not applied.`, couldBe: ['colour'] })
      return () => false
    }
  }

  private count(steps: number, element: Element): void {
    this.steps += steps
    if (this.steps > LIMITS.selectorSteps)
      throw tooComplex('elements that its style rules look at', LIMITS.selectorSteps, this.steps, element.spot)
  }

  /** How css-select walks the tree; every element it is shown is counted. */
  private options(element: Element): Options<Child, Element> {
    const counted = (children: Child[]): Child[] => {
      this.count(children.length + 1, element)
      return children
    }
    return {
      xmlMode: true,
      adapter: {
        isTag: isElement,
        getAttributeValue: (e, name) => e.attributes.get(name),
        hasAttrib: (e, name) => e.attributes.has(name),
        getName: (e) => e.name,
        getChildren: (node) => (isElement(node) ? counted(node.children) : []),
        getParent: (e) => (this.count(1, element), e.parent ?? null),
        getSiblings: (node) => (isElement(node) ? counted(node.parent?.children ?? [node]) : [node]),
        getText: () => '',
        removeSubsets: (nodes) => nodes,
      },
    }
  }
}

const NOTHING_DECLARED: Declared = new Map()
const NO_MATCHERS: Matcher[] = []

interface Matcher {
  rule: Rule
  order: number
  matches?: (element: Element) => boolean
}

const compareMatchers = (a: Matcher, b: Matcher): number =>
  compareSpecificity(a.rule.specificity, b.rule.specificity) || a.order - b.order

function append(index: Map<string, Matcher[]>, key: string, matcher: Matcher): void {
  const list = index.get(key)
  if (list) list.push(matcher)
  else index.set(key, [matcher])
}

/** The class names of an element. */
export const classesOf = (element: Element): string[] =>
  (element.attributes.get('class') ?? '').split(/[ \t\r\n\f]+/).filter((name) => name !== '')
