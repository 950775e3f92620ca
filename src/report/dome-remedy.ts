import type { Judgement } from '../judge/finding.js'
import { diametersFor, heightsFor, room, roomiest } from '../windows/dome.js'
import { DIAMETER, HEIGHT, RADIUS } from '../windows/domes.js'
import { isEmpty, meet, type Ends } from '../windows/ends.js'
import { othersInPlay } from './in-play.js'
import { worstValue } from './observed.js'

/** What a limit on the radius of the dome leaves of the height and of the base of a dot, on this sign. */

/** The size that dots have, where no row fails on it: one that is to be changed itself ties nothing. */
function sizeOf(quantity: string, all: readonly Judgement[]): number | undefined {
  const rows = all.filter(({ requirement }) => requirement.quantity === quantity)
  if (rows.some(({ verdict }) => verdict === 'fail')) return undefined
  return rows.map((row) => worstValue(row)).find((value) => value !== undefined)
}

/**
 * The ends that a row on the radius leaves of the quantity that a judgement failed on.
 * @param within what other rows leave; of two ranges of heights the one without domes that overhang is meant
 * @returns `none` where the row leaves nothing; undefined where it says nothing of this quantity
 */
export function domeEnds(
  judgement: Judgement,
  row: Judgement,
  all: readonly Judgement[],
  within: Ends,
): Ends | 'none' | undefined {
  const { quantity } = judgement.requirement
  if (row.requirement.quantity !== RADIUS) return undefined
  const radii = { min: row.limit.min, max: row.limit.max }
  if (quantity === HEIGHT) {
    const diameter = sizeOf(DIAMETER, all)
    return diameter === undefined
      ? undefined
      : (roomiest(left(heightsFor(diameter, radii), within), diameter) ?? 'none')
  }
  const height = quantity === DIAMETER ? sizeOf(HEIGHT, all) : undefined
  return height === undefined ? undefined : (diametersFor(height, radii) ?? 'none')
}

const left = (ranges: readonly Ends[], within: Ends): Ends[] =>
  ranges.map((range) => meet(range, within)).filter((range) => !isEmpty(range))

interface Change {
  row: Judgement
  window: Ends
}

/** What to change so that the radius is right: the height or the base, whichever has more room for its size. */
export function domeInstead(judgement: Judgement, all: readonly Judgement[]): Change | undefined {
  if (judgement.requirement.quantity !== RADIUS) return undefined
  const others = othersInPlay(judgement, all)
  const changes = [HEIGHT, DIAMETER].flatMap((quantity): Change[] => {
    const rows = others.filter(({ requirement }) => requirement.quantity === quantity)
    const within = rows.map(({ limit: { min, max } }): Ends => ({ min, max })).reduce(meet, {})
    const [row] = rows
    const ends = row && !isEmpty(within) ? domeEnds(row, judgement, all, within) : undefined
    const window = ends === undefined || ends === 'none' ? undefined : meet(ends, within)
    return row && window && !isEmpty(window) ? [{ row, window }] : []
  })
  return changes.sort((a, b) => share(b) - share(a))[0]
}

const share = ({ window }: Change): number => room(window) / (window.min ?? 1)
