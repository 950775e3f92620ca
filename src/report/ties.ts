import type { Judgement } from '../judge/finding.js'
import type { Ends } from './numbers.js'
import { worstValue } from './observed.js'

/** What one row leaves of the quantity of another: of the same quantity, or of one that the same change moves. */

/** Heights above the floor that move together when the panel is moved. */
const MOVE_WITH_THE_PANEL = new Set([
  'installation.lowestBaseline',
  'installation.highestBaseline',
  'installation.raisedLowestBaseline',
  'installation.brailleBaselineLowest',
  'installation.brailleBaselineHighest',
  'installation.lowestTactile',
  'installation.highestTactile',
  'installation.tactileLine',
  'installation.centreHeight',
  'installation.topHeight',
  'installation.brailleHighest',
  'installation.headroom',
  'symbol.centreHeight',
  'visual.heightAboveFloor',
])

/** One gap, in millimetres and as a share of the stroke. */
export const GAP = 'raised.characterSpacing'
export const GAP_IN_STROKES = 'raised.characterSpacingInStrokes'

/** One stroke, in millimetres and as a share of the character height. */
const STROKE = 'raised.strokeWidth'
const STROKE_OF_HEIGHT = 'raised.strokeThickness'

export const moveTogether = (one: Judgement, other: Judgement): boolean =>
  MOVE_WITH_THE_PANEL.has(one.requirement.quantity) && MOVE_WITH_THE_PANEL.has(other.requirement.quantity)

/**
 * The ends of a row as ends of the quantity that a judgement failed on, on this sign: a value inside them keeps the row.
 * Undefined when the row says nothing of that quantity.
 */
export function endsOn(judgement: Judgement, row: Judgement, { min, max }: Ends): Ends | undefined {
  const change = changeTo(judgement, row)
  return (
    change && { min: min === undefined ? undefined : change(min), max: max === undefined ? undefined : change(max) }
  )
}

function changeTo(judgement: Judgement, row: Judgement): ((end: number) => number) | undefined {
  const [own, its] = [judgement.requirement.quantity, row.requirement.quantity]
  if (own === its) return judgement.limit.unit === row.limit.unit ? (end) => end : undefined
  if (moveTogether(judgement, row)) {
    const [at, rowAt] = [worstValue(judgement), worstValue(row)]
    return at === undefined || rowAt === undefined ? undefined : (end) => end + (at - rowAt)
  }
  return (
    toShare(judgement, row, [GAP, GAP_IN_STROKES], 'strokeThickness') ??
    toShare(judgement, row, [STROKE, STROKE_OF_HEIGHT], 'characterHeight')
  )
}

/** Between a length and what share it is of another length of the same characters. */
function toShare(
  judgement: Judgement,
  row: Judgement,
  [length, share]: [string, string],
  whole: Whole,
): ((end: number) => number) | undefined {
  const [own, its] = [judgement.requirement.quantity, row.requirement.quantity]
  const isLength = own === length && its === share
  if (!isLength && !(own === share && its === length)) return undefined
  const of = leastOf(whole, judgement, row)
  if (of === undefined) return undefined
  return isLength ? (end) => end * of : (end) => end / of
}

type Whole = 'strokeThickness' | 'characterHeight'

/** The stroke, in millimetres, of the characters that a judgement failed on; the least where it is not told which they are. */
export const strokeAt = (...judgements: Judgement[]): number | undefined => leastOf('strokeThickness', ...judgements)

function leastOf(whole: Whole, ...judgements: Judgement[]): number | undefined {
  const at = judgements[0]?.decisive[0]?.places[0]?.element
  const all = judgements.flatMap(({ measurement }) => measurement?.observations ?? [])
  const lengths = (wanted: typeof all) =>
    wanted.map(({ context }) => context?.[whole]).filter((length) => typeof length === 'number' && length > 0)
  const own = lengths(all.filter(({ places }) => places[0]?.element === at))
  const known = (own.length > 0 ? own : lengths(all)) as number[]
  return known.length > 0 ? Math.min(...known) : undefined
}
