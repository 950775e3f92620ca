import { z } from 'zod'
import { PART_NAMES } from '../recognise/parts.js'
import { POTTERY_ROOM } from '../sign/examples.js'
import { hasContent, SignDescription } from '../sign/description.js'
import { USES } from '../sign/sign.js'
import { LIMITS } from './settings.js'

/** What POST /v1/checks and /v1/readings take: the body as JSON, the parts of a form, the query beside a bare drawing. */

const LONGEST_ID = 100
const LONGEST_NAME = 200
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

const Scale = z.number().positive().max(LARGEST_SCALE)
const DotDiameter = z.number().positive().max(LARGEST_DOT)

export const Options = z
  .strictObject({
    part: z
      .record(z.string().max(LONGEST_NAME), z.enum(PART_NAMES))
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
    properNames: z.array(z.string().max(LONGEST_NAME)).max(MOST_NAMES).optional(),
    panel: z
      .union([z.string().min(1).max(LONGEST_NAME), z.int().positive()])
      .optional()
      .describe('Of several panels on one sheet, the one that is the sign: its number or its id.'),
  })
  .meta({ id: 'CheckOptions', description: 'How to read the drawing and how to decide.' })
export type Options = z.infer<typeof Options>

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
    .max(LONGEST_NAME)
    .optional()
    .describe('Of several panels on one sheet, the one that is the sign: its number or its id.'),
  part: z
    .string()
    .optional()
    .describe('A JSON object from layer, id or class to part. `part.<name>=<part>` does the same for one name.'),
})
