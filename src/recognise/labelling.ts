import type { DrawnText, Drawing, Shape } from '../drawing/drawing.js'
import { boxContains } from '../geometry/box.js'
import type { Assumption, Lettering } from '../sign/sign.js'
import { namedPart, unknownDataPart, type NamedPart, type PartMapping } from './parts.js'

/** Every shape and text of a drawing with the part that it was said to be. */
export interface Labelled {
  shapes: { shape: Shape; named?: NamedPart }[]
  texts: { text: DrawnText; named?: NamedPart }[]
  assumptions: Assumption[]
  /** Whether anything was said to be characters for both touch and sight. */
  saysBoth: boolean
}

export function labelParts(drawing: Drawing, mapping: PartMapping): Labelled {
  const deaf = namesOfTheWhole(drawing)
  const strange = new Set(
    [...drawing.shapes, ...drawing.texts].map((e) => unknownDataPart(e.labels)).filter((s) => s !== undefined),
  )
  const shapes = drawing.shapes.map((shape) => ({ shape, named: namedPart(shape.labels, mapping, deaf) }))
  const texts = drawing.texts.map((text) => ({ text, named: namedPart(text.labels, mapping, deaf) }))
  const assumptions = [...strange].map((part) => ({
    about: 'part',
    text: `data-part="${part}" is no part that is known here; names and geometry decided instead.`,
  }))
  const saysBoth = [...shapes, ...texts].some(({ named }) => named?.part === 'both')
  if (!hasOnlyRaisedNames([...shapes, ...texts])) return { shapes, texts, assumptions, saysBoth }
  return {
    shapes: shapes.map(({ shape, named }) => ({ shape, named: forBoth(named) })),
    texts: texts.map(({ text, named }) => ({ text, named: forBoth(named) })),
    assumptions: [...assumptions, { about: 'part', text: ONE_SET }],
    saysBoth,
  }
}

/** Marks the characters for both that nobody said are: they were taken for it. */
export const markAssumed = (lettering: Lettering[], { saysBoth }: Labelled): Lettering[] =>
  lettering.map((l) => (l.part === 'both' && !saysBoth ? { ...l, partAssumed: true } : l))

const ONE_SET =
  'Characters are named raised and none visual: they are taken for one set that serves touch and sight. ' +
  'Where the visual characters are on another sign, say data-part="raised".'

/** Whether names (and names alone) tell of raised characters, and nothing of characters to be read by sight. */
function hasOnlyRaisedNames(elements: readonly { named?: NamedPart }[]): boolean {
  const parts = elements.flatMap(({ named }) => (named ? [named] : []))
  const raised = parts.filter(({ part }) => part === 'raised')
  return (
    raised.length > 0 &&
    raised.every((n) => !n.explicit) &&
    !parts.some(({ part }) => part === 'visual' || part === 'both')
  )
}

const forBoth = (named: NamedPart | undefined): NamedPart | undefined =>
  named?.part === 'raised' ? { ...named, part: 'both' } : named

/**
 * Names that stand on everything, where one shape holds all others: they are names of the sign (“braille sign 12”), not of a
 * part of it.
 */
function namesOfTheWhole({ shapes, texts }: Drawing): ReadonlySet<string> {
  const [first, ...others] = [...shapes, ...texts]
  if (!first || others.length === 0) return new Set()
  let common = new Set(first.labels.names)
  for (const { labels } of others) {
    const names = new Set(labels.names)
    common = new Set([...common].filter((name) => names.has(name)))
    if (common.size === 0) return common
  }
  const largest = shapes.reduce<Shape | undefined>((a, b) => (a && sizeOf(a) >= sizeOf(b) ? a : b), undefined)
  const held = largest && shapes.every((s) => boxContains(largest.box, s.box))
  return held && shapes.length > 1 ? common : new Set()
}

const sizeOf = ({ box }: Shape) => box.width * box.height
