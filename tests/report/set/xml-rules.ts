import type { Tree } from './xml-tree.js'

/** What a schema asks of elements, as a table, and what of a document is not as it asks. */

type Content = 'text' | 'any' | 'date' | 'empty' | 'children'

export interface Rule {
  content: Content
  /** Children in their order, or in any with `isMixed`; `!`: one must be there, `*`: any number, otherwise at most one. */
  children?: string[]
  /** Attributes; `!`: must be there and not be blank. */
  attributes?: string[]
  isMixed?: boolean
}

/** By name, or by `parent/name` where elements of one name differ. */
export type Rules = Record<string, Rule>

/** As shared-types.xsd of BCF has it: lower case alone. */
const GUID = /^[a-f0-9]{8}-[a-f0-9]{4}-[a-f0-9]{4}-[a-f0-9]{4}-[a-f0-9]{12}$/
/** XML Schema, part 2, xs:dateTime, without its years of five digits. */
const DATE_TIME = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)?$/

/** What in a document is not as the schemas ask, in words; empty when nothing is. */
export function xmlFaults(rules: Rules, tree: Tree, parent = ''): string[] {
  const rule = rules[`${parent}/${tree.name}`] ?? rules[tree.name]
  if (!rule) return [`${parent}/${tree.name} is no element that was typed here`]
  const faults: string[] = [...attributeFaults(tree, rule), ...orderFaults(tree, rule)]
  const text = tree.text.trim()
  if (rule.content === 'text' && text === '') faults.push(`${tree.name} is blank`)
  if (rule.content === 'date' && (!DATE_TIME.test(text) || Number.isNaN(Date.parse(text))))
    faults.push(`${tree.name} is no date: ${text}`)
  if ((rule.content === 'children' || rule.content === 'empty') && text !== '') faults.push(`${tree.name} holds text`)
  return [...faults, ...tree.children.flatMap((child) => xmlFaults(rules, child, tree.name))]
}

function attributeFaults({ name, attributes }: Tree, rule: Rule): string[] {
  const known = rule.attributes ?? []
  const bare = known.map((attribute) => attribute.replace('!', ''))
  return [
    ...Object.keys(attributes)
      .filter((attribute) => !bare.includes(attribute))
      .map((one) => `${name} has ${one}`),
    ...known
      .filter((one) => one.endsWith('!') && !attributes[one.slice(0, -1)]?.trim())
      .map((one) => `${name} lacks ${one}`),
    ...(attributes.Guid !== undefined && !GUID.test(attributes.Guid)
      ? [`${name} has the GUID ${attributes.Guid}`]
      : []),
  ]
}

function orderFaults({ name, children }: Tree, rule: Rule): string[] {
  const known = (rule.children ?? []).map((child) => child.replace(/[!*]/, ''))
  const places = children.map((child) => known.indexOf(child.name))
  const count = (child: string) => children.filter((one) => one.name === child).length
  return [
    ...children.filter((_, i) => places[i] === -1).map((child) => `${name} holds ${child.name}`),
    ...places
      .filter((place, i) => !rule.isMixed && i > 0 && place < (places[i - 1] ?? 0))
      .map(() => `${name} is not in order`),
    ...(rule.children ?? [])
      .filter((child) => child.endsWith('!') && count(child.slice(0, -1)) !== 1)
      .map((child) => `${name} lacks ${child}`),
    ...known
      .filter((child) => !rule.children?.includes(`${child}*`) && count(child) > 1)
      .map((child) => `${name} has many ${child}`),
  ]
}
