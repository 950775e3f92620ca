import { z } from 'zod'

/** Lengths as a client writes them, and the one multiplication that turns them into millimetres. */

export const UNITS = ['mm', 'in'] as const
export type Unit = (typeof UNITS)[number]

/** By definition (international inch, 1959). */
export const MILLIMETRES_PER_INCH = 25.4

/** No length of a sign or of its place is longer; in either unit. */
export const LONGEST = 100_000

const WRONG_LENGTH = 'expected a number, or { "value": number, "unit": "mm" | "in" }'

const length = (number: z.ZodNumber) =>
  z.union([number, z.strictObject({ value: number, unit: z.enum(UNITS) })], { error: WRONG_LENGTH })

export const Length = length(z.number().positive().max(LONGEST)).meta({
  id: 'Length',
  description: 'A length above zero: a bare number in the `units` of the description, or a value with its own unit.',
  examples: [6.9, { value: 0.1, unit: 'in' }],
})
export type Length = z.infer<typeof Length>

export const Distance = length(z.number().nonnegative().max(LONGEST)).meta({
  id: 'Distance',
  description: 'A length that may be zero, written like every length.',
  examples: [250, { value: 48, unit: 'in' }],
})

export const Coordinate = length(z.number().min(-LONGEST).max(LONGEST)).meta({
  id: 'Coordinate',
  description:
    'A place along an axis, written like a length: x to the right, y down, from the panel’s top left corner.',
  examples: [20, { value: 0.75, unit: 'in' }],
})

/** The length in millimetres; `units` is what a bare number means. */
export function toMillimetres(written: Length, units: Unit): number {
  const { value, unit } = typeof written === 'number' ? { value: written, unit: units } : written
  return unit === 'in' ? value * MILLIMETRES_PER_INCH : value
}
