import { resolve, resolveAtDistance } from '../../judge/limits.js'
import type { BrailleCode, LetteringPart, Section } from '../../sign/sign.js'
import type { Common } from '../../windows/common.js'
import { isEmpty, meet, type Ends } from '../../windows/ends.js'
import type { RowInForce } from '../../windows/in-force.js'
import type { Window } from '../../windows/window.js'
import { preferBoth } from './aim.js'

/** What the standards ask of a drawing together, by quantity; read from their common windows. */
export interface Wanted {
  part: LetteringPart
  /** The ends of a quantity, inside both printed units where they agree; without ends where nothing is asked. */
  ends: (quantity: string) => Ends
  /** The same with the rows of which only a sign can tell whether they are in force. */
  likelyEnds: (quantity: string) => Ends
  /** The kinds that pass everywhere; undefined where nothing is asked. */
  kinds: (quantity: string) => string[] | undefined
  /** Whether some row in force asks for this. */
  asks: (quantity: string) => boolean
  /** The requirements that limit any of these quantities. */
  requirements: (quantities: readonly string[]) => RowInForce[]
  code: BrailleCode
  capitals: 'names-only' | 'kept' | 'free'
  /** Whether several lines of text bring in requirements that one line does not. */
  prefersOneLine: boolean
}

const SECTION: Section = 'straight'

export function wantedOf(common: Common, part: LetteringPart, viewingDistance: number | undefined): Wanted {
  const windowsOf = (quantity: string): Window[] =>
    common.windows.filter(
      (w) =>
        w.quantity === quantity &&
        (w.parts === undefined || w.parts.includes(part)) &&
        (w.sections === undefined || w.sections.includes(SECTION)),
    )
  const ends = (quantity: string): Ends =>
    withDistance(windowsOf(quantity).reduce(narrowed, {}), quantity, common, part, viewingDistance)
  const asks = (quantity: string): boolean => windowsOf(quantity).length > 0
  return {
    part,
    ends,
    likelyEnds: (quantity) => withConditional(ends(quantity), quantity, common),
    kinds: (quantity) => {
      const region = windowsOf(quantity)[0]?.region
      return region && 'kinds' in region ? region.kinds : undefined
    },
    asks,
    requirements: (quantities) => quantities.flatMap((quantity) => windowsOf(quantity).flatMap(({ rows }) => rows)),
    code: asks('braille.uncontracted') ? 'ueb-uncontracted' : 'ueb-contracted',
    capitals: asks('braille.capitalsKept') ? 'kept' : asks('braille.capitals') ? 'names-only' : 'free',
    prefersOneLine: common.conditional.some(({ when }) => when.includes('several-tactile-lines')),
  }
}

/** A window as judged and, where the other printed unit leaves something of it, inside that as well. */
function narrowed(so: Ends, { region, rows }: Window): Ends {
  if (!('ends' in region)) return so
  const other = rows.reduce<Ends>((all, { limit }) => meet(all, limit.other ?? {}), {})
  return meet(so, isEmpty(other) ? region.ends : preferBoth(region.ends, other))
}

function withConditional(ends: Ends, quantity: string, { conditional }: Common): Ends {
  return conditional.reduce((so, { standard, row, limit, clause, isException }) => {
    if (row.quantity !== quantity || isException || limit === null) return so
    const { min, max, other } = resolve(limit, clause, standard.firstUnit)
    const own: Ends = { ...(min !== undefined && { min }), ...(max !== undefined && { max }) }
    return preferBoth(so, preferBoth(own, other ?? {}))
  }, ends)
}

/** The ends with the least length for a viewing distance, where a row in force gives one. */
function withDistance(
  ends: Ends,
  quantity: string,
  { conditional }: Common,
  part: LetteringPart,
  distance: number | undefined,
): Ends {
  if (distance === undefined) return ends
  return conditional.reduce((so, { row, limit, when, isException, clause }) => {
    const { parts } = row.scope
    const isAbout = row.quantity === quantity && (parts === undefined || parts.includes(part)) && !isException
    if (!isAbout || when.length > 1 || when[0] !== 'viewing-distance') return so
    if (limit?.kind !== 'distance-share' && limit?.kind !== 'distance-steps') return so
    const resolved = resolveAtDistance(limit, clause, distance)
    return resolved?.min === undefined ? so : preferBoth(so, { min: resolved.min })
  }, ends)
}
