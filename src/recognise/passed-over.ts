import type { Drawing, IgnoredElement } from '../drawing/drawing.js'
import { unionOfBoxes } from '../geometry/box.js'
import type { Ignored, Unread } from '../sign/sign.js'
import type { Cloud } from './colours.js'
import type { Labelled } from './labelling.js'
import type { LaidRun } from './layout.js'
import { namedPart, type PartMapping } from './parts.js'

/** What the reader of drawings passed over, and what was said to be ignored: what it leaves open, and where it is listed. */
export interface PassedOver {
  unread: Unread[]
  ignored: Ignored[]
  /** Places where something was painted that is not understood. */
  clouds: Cloud[]
}

export function passedOver(drawing: Drawing, mapping: PartMapping): PassedOver {
  const entries = drawing.ignored.map((one) => ({
    one,
    named: one.labels && namedPart(one.labels, mapping, new Set()),
  }))
  const open = entries.filter(({ named }) => named?.part !== 'ignore').map(({ one }) => one)
  return {
    unread: unreadOf(open.filter(({ couldBe }) => couldBe.length > 0)),
    ignored: entries.map(({ one: { source, why, couldBe }, named }) => {
      if (named?.part === 'ignore') return { source, why: toBeIgnored(named.how) }
      return { source, why: couldBe.length > 0 ? `${why} ${LEFT_OPEN}` : why }
    }),
    clouds: open.filter(({ couldBe }) => couldBe.includes('colour')).map(({ box, why }) => ({ box, why })),
  }
}

export const LEFT_OPEN = 'What depends on it is left undecided.'

export const toBeIgnored = (how: string): string => `It is to be ignored: ${how}.`

/** What was not understood, once for each reason. */
function unreadOf(open: readonly IgnoredElement[]): Unread[] {
  const byReason = new Map<string, IgnoredElement[]>()
  for (const one of open) {
    const reason = `${one.why} ${one.couldBe.join()}`
    byReason.set(reason, [...(byReason.get(reason) ?? []), one])
  }
  return [...byReason.values()].map((alike) => {
    const [{ source, why, couldBe }] = alike
    const box = alike.every((one) => one.box) ? unionOfBoxes(alike.map((one) => one.box)) : undefined
    const said = alike.length > 1 ? `${why} (${alike.length} elements)` : why
    return { place: { element: 'drawing', box, source }, why: said, couldBe }
  })
}

/** Shapes that were said to be ignored. */
export const saidToIgnore = ({ shapes }: Labelled): Ignored[] =>
  shapes.flatMap(({ shape, named }) =>
    named?.part === 'ignore' ? [{ source: shape.source, why: toBeIgnored(named.how) }] : [],
  )

/** Live text that is set in ways that are not carried out, by its place in the file. */
export const notSet = (runs: readonly LaidRun[]): Ignored[] =>
  runs.flatMap(({ drawn }) =>
    drawn.unsupported.length === 0
      ? []
      : [
          {
            source: drawn.source,
            why: `The text is set with ${drawn.unsupported.join(', ')}, which is not carried out. ${LEFT_OPEN}`,
          },
        ],
  )
