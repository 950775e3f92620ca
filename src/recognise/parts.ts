import type { Labels } from '../drawing/drawing.js'

/**
 * Which part of a sign an element was said to be, in the contract's order: the request's mapping, `data-part`, the part
 * words in ids, classes and layer names. What nobody said, the geometry has to tell.
 */

export const PART_NAMES = ['raised', 'visual', 'both', 'braille', 'pictogram', 'border', 'panel', 'ignore'] as const
export type PartName = (typeof PART_NAMES)[number]

export type PartMapping = Readonly<Record<string, PartName>>

export interface NamedPart {
  part: PartName
  /** What said so, for people. */
  how: string
  /** Whether the client said so for this purpose, rather than a name that happens to hold the word. */
  explicit: boolean
}

/** Words that tell a part when they stand in a name. The plural is read too. Common practice of sign drawings, no source. */
const WORDS: ReadonlyMap<string, PartName> = new Map<string, PartName>([
  ...PART_NAMES.map((name): [string, PartName] => [name, name]),
  ['pict', 'pictogram'],
  ['picto', 'pictogram'],
])

/** Among several words in one name, a thing tells more than a property: a “raised border” is a border. */
const PROPERTIES: ReadonlySet<PartName> = new Set(['raised', 'visual', 'both'])

const isPartName = (text: string): text is PartName => (PART_NAMES as readonly string[]).includes(text)

/** The words of a name: cut at everything that is no letter and where a capital follows a small letter. */
const wordsOf = (name: string): string[] =>
  name
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter(Boolean)

/** The part that one name tells, if it holds a part word. Raised and visual together are both. */
export function partInName(name: string): PartName | undefined {
  const found = wordsOf(name)
    .map((word) => WORDS.get(word) ?? WORDS.get(word.replace(/s$/, '')))
    .filter((part) => part !== undefined)
  if (found.includes('ignore')) return 'ignore'
  const thing = found.filter((part) => !PROPERTIES.has(part)).at(-1)
  if (thing) return thing
  return found.includes('raised') && found.includes('visual') ? 'both' : found.at(-1)
}

/**
 * The part that an element was said to be, or undefined when nobody said.
 * @param deaf names that are not listened to, because they stand on the whole drawing
 */
export function namedPart(labels: Labels, mapping: PartMapping, deaf: ReadonlySet<string>): NamedPart | undefined {
  for (const name of labels.names)
    if (Object.hasOwn(mapping, name)) return { part: mapping[name], how: `the request maps “${name}”`, explicit: true }
  const said = labels.dataPart?.trim().toLowerCase()
  if (said !== undefined && isPartName(said)) return { part: said, how: `data-part="${said}"`, explicit: true }
  for (const name of labels.names) {
    const part = deaf.has(name) ? undefined : partInName(name)
    if (part) return { part, how: `the name “${name}”`, explicit: false }
  }
  return undefined
}

/** A `data-part` that is none of ours, to be said. */
export const unknownDataPart = ({ dataPart }: Labels): string | undefined =>
  dataPart !== undefined && !isPartName(dataPart.trim().toLowerCase()) ? dataPart : undefined
