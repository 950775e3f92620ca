import { z } from 'zod'
import { PART_NAMES } from './recognise/parts.js'
import { USES } from './sign/sign.js'

/** What may be said beside a sign, one at a time or a whole set: the standards, how to read a drawing, how to decide. */

const LONGEST_ID = 100
export const LONGEST_OPTION = 200
const MOST_STANDARDS = 40
const MOST_PARTS = 200
const MOST_NAMES = 500
const LARGEST_SCALE = 10_000
const LARGEST_DOT = 100

export const DEFAULT_STANDARDS = ['us-ada-2010']
export const DEFAULT_USE = 'permanent-room'

export const Standards = z
  .array(z.string().min(1).max(LONGEST_ID))
  .min(1)
  .max(MOST_STANDARDS)
  .describe('Ids of standards; `id@revision` pins one to a revision.')
  .meta({ examples: [DEFAULT_STANDARDS] })

/** Millimetres per user unit. */
export const Scale = z.number().positive().max(LARGEST_SCALE)
/** Millimetres. */
export const DotDiameter = z.number().positive().max(LARGEST_DOT)

export const Options = z
  .strictObject({
    part: z
      .record(z.string().max(LONGEST_OPTION), z.enum(PART_NAMES))
      .refine((parts) => Object.keys(parts).length <= MOST_PARTS, `names more than ${MOST_PARTS} layers`)
      .optional()
      .describe('Which part a layer, id or class of the drawing is.'),
    scale: Scale.optional().describe('Millimetres per user unit, for a drawing that has no scale.'),
    dotBaseDiameter: DotDiameter.optional().describe(
      'Millimetres, of the dots that a drilling program makes: it does not tell their size.',
    ),
    decisionRule: z
      .enum(['simple', 'guarded'])
      .optional()
      .describe('`guarded`: a value within its uncertainty of a limit is undetermined.'),
    unitSystem: z
      .enum(['printed', 'both'])
      .optional()
      .describe('`both`: a value must pass in inches and in millimetres as printed.'),
    language: z.enum(['en']).optional(),
    use: z.enum(USES).optional().describe('What the sign is for, when there is no description that says so.'),
    properNames: z.array(z.string().max(LONGEST_OPTION)).max(MOST_NAMES).optional(),
    panel: z
      .union([z.string().min(1).max(LONGEST_OPTION), z.int().positive()])
      .optional()
      .describe('Of several panels on one sheet, the one that is the sign: its number or its id.'),
  })
  .meta({ id: 'CheckOptions', description: 'How to read the drawing and how to decide.' })
export type Options = z.infer<typeof Options>
