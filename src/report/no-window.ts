import type { Judgement } from '../judge/finding.js'
import { isEmpty, meet } from '../windows/ends.js'
import { noneSatisfies } from './excluding-words.js'
import { namedRows, standardsOf } from './in-play.js'
import { MILLIMETRES_PER_INCH, roundUp } from './numbers.js'
import { worstValue } from './observed.js'
import { wordsFor } from './quantities.js'
import { GAP, GAP_IN_STROKES, moveTogether, strokeAt } from './ties.js'
import type { Window } from './window.js'

/** What to do where no value of a failed quantity keeps every row. */

/** A change of another quantity that leaves room. */
export interface Instead {
  /** The row on that quantity, with the value that it has where the failure is. */
  row: Judgement
  window: { min?: number; max?: number }
}

/** The stroke that a gap must not be wider than so many of, and the least gap: in millimetres. */
interface Strokes {
  stroke: number
  /** What the stroke must be. */
  needed: number
}

/** How thick the stroke must be, so that the gap as it is, or the least gap that is allowed, is not too many strokes wide. */
function strokesFor(judgement: Judgement, against: Judgement): Strokes | undefined {
  const [gap, inStrokes] = judgement.requirement.quantity === GAP ? [judgement, against] : [against, judgement]
  const most = inStrokes.limit.max
  const least = gap.limit.min
  const stroke = strokeAt(judgement, against)
  if (gap.requirement.quantity !== GAP || inStrokes.requirement.quantity !== GAP_IN_STROKES) return undefined
  if (most === undefined || least === undefined || stroke === undefined) return undefined
  const strokes = inStrokes === judgement ? worstValue(judgement) : undefined
  return { stroke, needed: Math.max(least, (strokes ?? 0) * stroke) / most }
}

/** A thicker stroke in place of a gap that would have to be narrower than is allowed; undefined where it is not that. */
export function thickerStroke(
  judgement: Judgement,
  against: Judgement,
  all: readonly Judgement[],
): Instead | undefined {
  if (judgement.requirement.quantity !== GAP_IN_STROKES) return undefined
  const strokes = strokesFor(judgement, against)
  const row = all.find(
    ({ requirement, verdict }) =>
      requirement.quantity === 'raised.strokeThickness' &&
      requirement.force === 'shall' &&
      verdict !== 'not-applicable',
  )
  const element = judgement.decisive[0]?.places[0]?.element
  const seen = row?.measurement?.observations.find(({ places }) => places[0]?.element === element)
  const height = seen?.context?.['characterHeight']
  if (!strokes || !row || !seen || typeof height !== 'number') return undefined
  const window = meet({ min: strokes.needed / height }, { min: row.limit.min, max: row.limit.max })
  return isEmpty(window) ? undefined : { row: { ...row, decisive: [seen] }, window }
}

const length = (millimetres: number): string =>
  `${roundUp(millimetres, 2).toFixed(2)} mm (${roundUp(millimetres / MILLIMETRES_PER_INCH, 3).toFixed(3)} in)`

/** The sentence for people. It names the rows that leave no room, and no number to aim at. */
export function noWindow(judgement: Judgement, { of, against }: Extract<Window, { against: Judgement }>): string {
  const strokes = strokesFor(judgement, against)
  if (strokes)
    return `With a stroke of ${strokes.stroke.toFixed(2)} mm no gap is both wide enough and few enough strokes wide: make the stroke at least ${length(strokes.needed)} wide first.`
  const rows = namedRows([of, against])
  if (!moveTogether(of, against)) return noneSatisfies(wordsFor(judgement.requirement.quantity).name, rows)
  return standardsOf([of, against]).length > 1
    ? noneSatisfies('mounting height of this sign', rows)
    : closerTogether(of, against)
}

function closerTogether(one: Judgement, other: Judgement): string {
  const [low, high] = one.limit.min === undefined ? [other, one] : [one, other]
  const [from, to] = [low.limit.min, high.limit.max]
  const most = from === undefined || to === undefined ? '' : `, at most ${Math.floor(to - from)} mm apart in height`
  return `No mounting height is right for all lines of the sign: move its lowest and its highest line closer together${most}.`
}
