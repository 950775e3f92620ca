import { decide, UNRECOGNISED, type Decision } from './decide.js'
import { fitLine, type FittedLine } from './fit.js'
import { lookAt, type Look } from './look.js'
import { joined, type Part, type Row } from './rows.js'

/** A row with what its characters look like, read under the scale that fits them best. */
export interface ReadRow {
  parts: Row
  fits: FittedLine[]
  decisions: Decision[]
}

interface Seen {
  part: Part
  look: Look
}

export function readRow(row: Row): ReadRow {
  const seen = row.flatMap((part): Seen[] => {
    const look = lookAt(part.ink, part.box)
    return look ? [{ part, look }] : []
  })
  return decided(withPercents(seen))
}

function decided(seen: readonly Seen[]): ReadRow {
  const fits = fitLine(seen.map((s) => s.look))
  const decisions = fits.length > 0 ? decide(fits) : seen.map(() => UNRECOGNISED)
  return { parts: seen.map((s) => s.part), fits, decisions }
}

/** No farther from the most similar reference than this is a per cent sign. */
const PERCENT_DISTANCE = 14

/** A per cent sign has three pieces, which alone look like others: put together where that looks like one. */
function withPercents(seen: readonly Seen[]): Seen[] {
  const result: Seen[] = []
  for (let i = 0; i < seen.length; i++) {
    const percent = percentOf(seen.slice(i, i + 3))
    result.push(percent ?? seen[i])
    if (percent) i += 2
  }
  return result
}

function percentOf(three: readonly Seen[]): Seen | undefined {
  if (three.length < 3) return undefined
  const [left, bar, right] = three.map((s) => s.part.box)
  const rising = left.height < bar.height && right.height < bar.height && left.y < right.y
  if (!rising || right.x - (left.x + left.width) >= bar.width) return undefined
  const part = joined(three.map((s) => s.part))
  const look = lookAt(part.ink, part.box)
  const nearest = look?.likenesses.at(0)
  return look && nearest?.label === '%' && nearest.distance < PERCENT_DISTANCE ? { part, look } : undefined
}
