import { toMillimetres, type Unit } from './length.js'
import type { MeasuredDescription } from './measured-description.js'
import { MEASURABLE } from './quantities.js'
import type { MeasuredQuantity } from './sign.js'

/**
 * Readings of a gauge: lengths in millimetres, all else in the one unit of its quantity.
 * @param index place in the client's list
 * @param units what a length without a unit is written in
 */
export function describeMeasured(item: MeasuredDescription, index: number, units: Unit): MeasuredQuantity {
  const unit = item.unit === 'in' || item.unit === 'mm' ? item.unit : units
  const isLength = MEASURABLE[item.quantity] === 'length'
  const toModel = (value: number): number => (isLength ? toMillimetres(value, unit) : value)
  return {
    quantity: item.quantity,
    values: item.values.map(toModel),
    ...(item.expandedUncertainty !== undefined && { expandedUncertainty: toModel(item.expandedUncertainty) }),
    ...(item.instrument !== undefined && { instrument: item.instrument }),
    place: { element: `measured/${index}`, pointer: `/sign/measured/${index}` },
  }
}
