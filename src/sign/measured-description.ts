import { z } from 'zod'
import { UNITS } from './length.js'
import { isNumberUnit, MEASURABLE, MEASURABLE_QUANTITIES, NUMBER_UNITS, type MeasurableQuantity } from './quantities.js'
import { LONGEST_NAME, text } from './text.js'

/** What was read off a gauge on the made sign or at its place. */

export const MOST_VALUES = 1000
/** No instrument reads more, in any unit of a sign: a reading beyond it is a slip. */
export const LARGEST_READING = 1_000_000

const Reading = z.number().nonnegative().max(LARGEST_READING)

type WrittenUnit = (typeof WRITTEN_UNITS)[number]
const WRITTEN_UNITS = [...UNITS, 'ratio', ...NUMBER_UNITS] as const

/** Whether a unit is one that the quantity can be given in: a length in mm or in, all else in the one unit that it has. */
function suits(unit: WrittenUnit, quantity: MeasurableQuantity): boolean {
  const own = MEASURABLE[quantity]
  return own === 'length' ? unit !== 'ratio' && !isNumberUnit(unit) : unit === own
}

export const MeasuredDescription = z
  .strictObject({
    quantity: z.enum(MEASURABLE_QUANTITIES, { error: 'is no quantity that can be measured here' }),
    values: z.array(Reading).min(1).max(MOST_VALUES),
    unit: z
      .enum(WRITTEN_UNITS)
      .optional()
      .describe('Absent: the `units` of the description for a length, else the one unit of the quantity.'),
    expandedUncertainty: Reading.optional().describe('With coverage factor 2, in the unit of the values.'),
    instrument: text(LONGEST_NAME).optional(),
  })
  .refine(({ quantity, unit }) => unit === undefined || suits(unit, quantity), {
    path: ['unit'],
    error:
      'does not suit the quantity: lengths are in mm or in, shares and proportions are a ratio, other figures have a unit of their own',
  })
  .meta({ id: 'MeasuredDescription', description: 'Values read with an instrument; they win over declared ones.' })
export type MeasuredDescription = z.infer<typeof MeasuredDescription>
