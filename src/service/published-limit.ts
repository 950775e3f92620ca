import { z } from 'zod'
import { resolve } from '../judge/limits.js'
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
export function publishedLimit(limit: Limit, clause: string, firstUnit: 'in' | 'mm'): PublishedLimit {
  const { kind, min, max, pass, unit, printed } = resolve(limit, clause, firstUnit)
  return {
    kind,
    ...(min !== undefined && { min }),
    ...(max !== undefined && { max }),
    ...(limit.kind === 'one-of' && { pass, judgement: limit.judgement }),
    unit,
    printed,
  }
}
