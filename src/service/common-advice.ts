import { z } from 'zod'
import { resolve } from '../judge/limits.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import type { Requirement } from '../standards/standard.js'
import { isWithin } from '../windows/ends.js'
import type { Window } from '../windows/window.js'
import { PublishedLimit, publishedLimit } from './published-limit.js'

/** Sizes of reference geometries beside the windows: whether what has a name would do. */

export const CommonAdvice = z
  .strictObject({
    requirement: z.string(),
    clause: z.string(),
    quantity: z.string(),
    limit: PublishedLimit,
    within: z
      .boolean()
      .nullable()
      .describe('Whether the whole size lies in the common window; null where there is no such window.'),
  })
  .meta({ id: 'CommonAdvice', description: 'A size with a name, which no code asks of a sign.' })
export type CommonAdvice = z.infer<typeof CommonAdvice>

export const adviceOf = (standards: readonly LoadedStandard[], windows: readonly Window[]): CommonAdvice[] =>
  standards
    .filter(({ kind }) => kind === 'reference-geometry')
    .flatMap((standard) =>
      standard.requirements.map((row) => ({
        ...{ requirement: row.requirement, clause: row.clause, quantity: row.quantity },
        limit: publishedLimit(row.limit, row.clause, standard.firstUnit),
        within: isInside(row, standard, windows),
      })),
    )

function isInside(row: Requirement, { firstUnit }: LoadedStandard, windows: readonly Window[]): boolean | null {
  const window = windows.find(({ quantity }) => quantity === row.quantity)
  const { min, max } = resolve(row.limit, row.clause, firstUnit)
  const sizes = [min, max].filter((end) => end !== undefined)
  if (!window || !('ends' in window.region) || sizes.length === 0) return null
  const { ends } = window.region
  const isBounded = (min !== undefined || ends.min === undefined) && (max !== undefined || ends.max === undefined)
  return isBounded && sizes.every((size) => isWithin(size, ends))
}
