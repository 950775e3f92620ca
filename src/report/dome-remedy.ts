import type { Judgement } from '../judge/finding.js'
import { diametersFor, heightsFor } from '../windows/dome.js'
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
 * @param within what other rows leave; of two ranges of heights the one with more room in it is meant
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
    return diameter === undefined ? undefined : roomiest(heightsFor(diameter, radii), within)
  }
  const height = quantity === DIAMETER ? sizeOf(HEIGHT, all) : undefined
  return height === undefined ? undefined : (diametersFor(height, radii) ?? 'none')
}

const room = ({ min = 0, max = Infinity }: Ends): number => max - min

function roomiest(ranges: readonly Ends[], within: Ends): Ends | 'none' {
  const left = ranges.map((range) => meet(range, within)).filter((range) => !isEmpty(range))
  return left.sort((a, b) => room(b) - room(a))[0] ?? 'none'
}

/** What to change so that the radius is right: the height, else the base. */
export function domeInstead(
  judgement: Judgement,
  all: readonly Judgement[],
): { row: Judgement; window: Ends } | undefined {
  if (judgement.requirement.quantity !== RADIUS) return undefined
  const others = othersInPlay(judgement, all)
  for (const quantity of [HEIGHT, DIAMETER]) {
    const rows = others.filter(({ requirement }) => requirement.quantity === quantity)
    const within = rows.map(({ limit: { min, max } }): Ends => ({ min, max })).reduce(meet, {})
    const [row] = rows
    const ends = row && !isEmpty(within) ? domeEnds(row, judgement, all, within) : undefined
    const window = ends === undefined || ends === 'none' ? undefined : meet(ends, within)
    if (row && window && !isEmpty(window)) return { row, window }
  }
  return undefined
}
