import type { Report } from '../../report/schema.js'
import { MEASURABLE, MEASURABLE_QUANTITIES, type MeasurableQuantity } from '../../sign/quantities.js'
import { clauseOf } from '../../report/numbering.js'
import { unitPrinted } from '../../report/set/inspection.js'
import type { Unit } from '../../sign/length.js'

/** What of a sign a gauge or a tape would decide, quantity by quantity. */

export const isMeasurable = (quantity: string): quantity is MeasurableQuantity => Object.hasOwn(MEASURABLE, quantity)

export interface ToMeasure {
  quantity: MeasurableQuantity
  title: string
  /** Each requirement that the readings help to decide. */
  limits: { clause: string; printed: string }[]
  /** In which a length is asked for at first, as on the inspection sheet: that which the code prints first. */
  unit: Unit
}

/** First the finished sign, then its place, then what the drawing leaves open. */
const STAGES = ['product', 'site', 'drawing']

export function toMeasureOf(report: Report): ToMeasure[] {
  const found = new Map<MeasurableQuantity, ToMeasure>()
  const inOrder = [...report.toMeasure].sort((a, b) => STAGES.indexOf(a.stage) - STAGES.indexOf(b.stage))
  for (const { requirement } of inOrder) {
    const finding = report.findings.find((one) => one.requirement === requirement)
    if (!finding || !isMeasurable(finding.quantity)) continue
    const { quantity, title, limit } = finding
    const entry = found.get(quantity) ?? {
      quantity,
      title,
      limits: [],
      unit: unitPrinted(limit) === 'in' ? 'in' : 'mm',
    }
    entry.limits.push({ clause: clauseOf(report, finding), printed: limit.printed })
    found.set(quantity, entry)
  }
  return [...found.values()]
}

/** What else could be measured again: every other quantity of a requirement that applies. */
export function othersOf(
  report: Report,
  listed: readonly ToMeasure[],
): { quantity: MeasurableQuantity; title: string }[] {
  const taken = new Set<string>(listed.map(({ quantity }) => quantity))
  const others = new Map<MeasurableQuantity, string>()
  for (const { quantity, title, verdict } of report.findings)
    if (verdict !== 'not-applicable' && isMeasurable(quantity) && !taken.has(quantity) && !others.has(quantity))
      others.set(quantity, title)
  return MEASURABLE_QUANTITIES.flatMap((quantity) => {
    const title = others.get(quantity)
    return title === undefined ? [] : [{ quantity, title }]
  })
}
