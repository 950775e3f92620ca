import { BLANK } from '../../braille/cells.js'
import { cellsOf } from '../../measure/pairing.js'
import type { Finding } from '../../report/finding-schema.js'
import { isKnown, type Sign } from '../../sign/sign.js'
import type { Change } from './schema.js'
import { WORDING } from './braille.js'
import { offenders, type Sheet } from './sheet.js'

/** What was put right, row by row, with the values before and after. */
export function changesOf(before: Sheet, after: Sheet): Change[] {
  const now = new Map(after.report.findings.map((finding) => [finding.requirement, finding]))
  return before.report.findings.flatMap((finding): Change[] => {
    const then = now.get(finding.requirement)
    if (finding.verdict !== 'fail' || !then || then.verdict === 'fail') return []
    const [from, to] = valuesOf(finding, then, before.sign, after.sign)
    const { requirement, limit, title } = finding
    const text =
      to === null
        ? `${title}: ${said(from, limit.unit)} before; it does not apply any more.`
        : `${title}: changed from ${said(from, limit.unit)} to ${said(to, limit.unit)}.`
    return [{ requirement, from, to, unit: limit.unit, text }]
  })
}

type Told = Change['from']

function valuesOf(from: Finding, to: Finding, before: Sign, after: Sign): [Told, Told] {
  if (WORDING.includes(from.quantity)) return [allCells(before), allCells(after)]
  if (from.quantity.startsWith('contrast.')) {
    const [then] = offenders(from, 'lettering', before.lettering.length)
    return [coloursOf(before, then), coloursOf(after, then)]
  }
  return [worstOf(from), worstOf(to)]
}

const allCells = (sign: Sign): string => sign.braille.map((block) => cellsOf(block) ?? '').join(BLANK)

function coloursOf({ lettering }: Sign, n: number | undefined): string | null {
  const one = n === undefined ? undefined : lettering[n]
  const css = one && isKnown(one.colour) ? one.colour.value.css : undefined
  const behind = one && isKnown(one.background) ? one.background.value.css : undefined
  return css === undefined ? null : behind === undefined ? css : `${css} on ${behind}`
}

/** The single value that lies farthest beyond the limit, or nearest to it. */
function worstOf({ measured, limit }: Finding): Told {
  if (!measured) return null
  const { value, min, max } = measured
  if (typeof value !== 'number') return value
  const [least, most] = [min ?? value, max ?? value]
  const below = limit.min === null ? -Infinity : limit.min - least
  const above = limit.max === null ? -Infinity : most - limit.max
  return below >= above ? least : most
}

const DECIMALS = 3

function said(value: Told, unit: string): string {
  if (value === null) return 'nothing measured'
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string') return value
  const number = String(Number(value.toFixed(DECIMALS)))
  return unit === 'mm' ? `${number} mm` : number
}
