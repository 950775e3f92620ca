import { z } from 'zod'
import { MILLIMETRES_PER_INCH } from '../sign/length.js'
import { NUMBER_UNITS } from '../sign/quantities.js'
import type { Limit } from '../standards/standard.js'

/** A limit as clients read it: in millimetres or as a share, beside what is printed. */

export const PublishedUnit = z.enum(['mm', 'ratio', ...NUMBER_UNITS, 'kind', 'truth'])

export const PublishedLimit = z
  .strictObject({
    kind: z.string(),
    min: z.number().optional(),
    max: z.number().optional(),
    unit: PublishedUnit,
    pass: z.array(z.string()).optional().describe('Kinds that pass.'),
    judgement: z.array(z.string()).optional().describe('Kinds that a person has to judge.'),
    printed: z.string().describe('As the standard prints it.'),
  })
  .meta({ id: 'PublishedLimit', description: 'What a value must satisfy. A ratio is a share: 0.15, not 15.' })
export type PublishedLimit = z.infer<typeof PublishedLimit>

/** Lengths in the unit that the standard puts first, by the multiplication that inputs go through too. */
export function publishedLimit(limit: Limit, firstUnit: 'in' | 'mm'): PublishedLimit {
  const { kind, printed } = limit
  switch (limit.kind) {
    case 'length': {
      const inches = firstUnit === 'in' ? limit.in : undefined
      const { min, max } = inches ?? limit.mm
      const factor = inches ? MILLIMETRES_PER_INCH : 1
      return { kind, ...ends(min, max, factor), unit: 'mm', printed }
    }
    case 'ratio':
      return { kind, ...ends(limit.min, limit.max, 1), unit: 'ratio', printed }
    case 'number':
      return { kind, ...ends(limit.min, limit.max, 1), unit: limit.unit, printed }
    case 'nominal': {
      const inches = firstUnit === 'in' ? limit.in : undefined
      const exact = inches === undefined ? limit.mm : inches * MILLIMETRES_PER_INCH
      return { kind, ...ends(exact, exact, 1), unit: 'mm', printed }
    }
    case 'one-of':
      return { kind, pass: limit.pass, judgement: limit.judgement, unit: 'kind', printed }
    case 'yes':
      return { kind, unit: 'truth', printed }
    case 'by-viewing-distance':
    case 'distance-share':
    case 'distance-steps':
      return { kind, unit: 'mm', printed }
  }
}

const ends = (min: number | undefined, max: number | undefined, factor: number) => ({
  ...(min !== undefined && { min: min * factor }),
  ...(max !== undefined && { max: max * factor }),
})
