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
  const stroke = strokeAt(judgement, row)
  if (stroke === undefined) return undefined
  if (own === GAP && its === GAP_IN_STROKES) return (end) => end * stroke
  return own === GAP_IN_STROKES && its === GAP ? (end) => end / stroke : undefined
}

/** The stroke, in millimetres, of the characters that a judgement failed on; the least where it is not told which they are. */
export function strokeAt(...judgements: Judgement[]): number | undefined {
  const at = judgements[0]?.decisive[0]?.places[0]?.element
  const all = judgements.flatMap(({ measurement }) => measurement?.observations ?? [])
  const strokes = (wanted: typeof all) =>
    wanted
      .map(({ context }) => context?.['strokeThickness'])
      .filter((stroke) => typeof stroke === 'number' && stroke > 0)
  const own = strokes(all.filter(({ places }) => places[0]?.element === at))
  const known = (own.length > 0 ? own : strokes(all)) as number[]
  return known.length > 0 ? Math.min(...known) : undefined
}
