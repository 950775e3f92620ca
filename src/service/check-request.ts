import { z } from 'zod'
import {
  DEFAULT_STANDARDS,
  DEFAULT_USE,
  DotDiameter,
  LONGEST_OPTION,
  Options,
  Scale,
  Standards,
} from '../check-options.js'
import { POTTERY_ROOM } from '../sign/examples.js'
import { hasContent, SignDescription } from '../sign/description.js'
import { USES } from '../sign/sign.js'
import { LIMITS } from './settings.js'

/** What POST /v1/checks and /v1/readings take: the body as JSON, the parts of a form, the query beside a bare drawing. */

const request = z.strictObject({
  standards: Standards.optional(),
  sign: SignDescription.optional(),
  drawing: z.string().max(LIMITS.drawing).optional().describe('An SVG document as text.'),
  program: z.string().max(LIMITS.drawing).optional().describe('Instead of a drawing: a drilling program as text.'),
  options: Options.optional(),
})

export const CheckRequest = request
  .superRefine(({ sign, drawing, program }, context) => {
    const drawn = drawing ?? program
    if (drawing !== undefined && program !== undefined)
      context.addIssue({ code: 'custom', path: ['program'], message: 'stands beside a drawing: give one of the two' })
    if (!sign && drawn === undefined)
      context.addIssue({ code: 'custom', path: ['sign'], message: 'is missing: give a sign, a drawing or both' })
    if (sign && drawn === undefined && !hasContent(sign))
      context.addIssue({
        code: 'custom',
        path: ['sign'],
        message: 'holds nothing to check: give lettering, braille or pictograms',
      })
  })
  .meta({
    id: 'CheckRequest',
    description: 'One sign as a description, a drawing or both, and the standards to hold it against.',
    examples: [{ standards: DEFAULT_STANDARDS, sign: POTTERY_ROOM }],
  })
export type CheckRequest = z.infer<typeof CheckRequest>

/** The keys of the body as one schema, to find what a misspelt key was meant to be. */
export const CheckRequestKeys = request

export const CheckForm = z
  .strictObject({
    drawing: z.string().meta({ contentMediaType: 'image/svg+xml', description: 'The SVG file.' }).optional(),
    program: z
      .string()
      .meta({ contentMediaType: 'text/x-gcode', description: 'Instead of a drawing: the drilling program.' })
      .optional(),
    sign: SignDescription.optional(),
    standards: z.string().optional().describe('Ids parted by commas, or a JSON array.'),
    options: Options.optional(),
  })
  .meta({ id: 'CheckForm', description: 'The same as parts of a form.' })

export const CheckQuery = z.strictObject({
  standards: z.string().optional().describe('Ids parted by commas. Only beside a bare drawing, like all parameters.'),
  use: z
    .enum(USES)
    .optional()
    .describe(`What the sign is for; without it ${DEFAULT_USE} is assumed, and the report says so.`),
  scale: z.coerce.number().pipe(Scale).optional().describe('Millimetres per user unit.'),
  dotBaseDiameter: z.coerce
    .number()
    .pipe(DotDiameter)
    .optional()
    .describe('Millimetres, of the dots that a drilling program makes.'),
  decisionRule: z.enum(['simple', 'guarded']).optional(),
  unitSystem: z.enum(['printed', 'both']).optional(),
  language: z.enum(['en']).optional(),
  properNames: z.string().optional().describe('Names parted by commas; empty: there are none.'),
  panel: z
    .string()
    .min(1)
    .max(LONGEST_OPTION)
    .optional()
    .describe('Of several panels on one sheet, the one that is the sign: its number or its id.'),
  part: z
    .string()
    .optional()
    .describe('A JSON object from layer, id or class to part. `part.<name>=<part>` does the same for one name.'),
})
