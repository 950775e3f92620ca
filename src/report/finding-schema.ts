import { z } from 'zod'
import { NUMBER_UNITS } from '../sign/quantities.js'
import { CONFIDENCES } from '../standards/standard.js'
import { ReportPlace } from './place-schema.js'
import { ReportConformity, ReportSample } from './statistics-schema.js'

export const VERDICTS = ['pass', 'fail', 'undetermined', 'not-applicable'] as const
export const REASONS = ['missing-fact', 'within-uncertainty', 'needs-judgement', 'unreadable', 'limit-reached'] as const
export const STAGES = ['drawing', 'product', 'site'] as const

export const ReportVerdict = z.enum(VERDICTS).meta({
  id: 'Verdict',
  description: '`undetermined` always has a reason; `not-applicable` when nothing is asked of this sign.',
})
export const ReportReason = z.enum(REASONS).meta({ id: 'Reason', description: 'Why a finding is undetermined.' })
export const ReportStage = z.enum(STAGES).meta({
  id: 'Stage',
  description: 'Where the evidence comes from: the drawing, the finished product or the site.',
})
export const ReportUnit = z.enum(['mm', 'ratio', ...NUMBER_UNITS, 'kind', 'truth']).meta({
  id: 'Unit',
  description:
    'Millimetres, a plain ratio (0.15, not 15), a count, lux, gloss units, one of several kinds, or a yes or no.',
})

export const ReportMeasured = z
  .strictObject({
    value: z
      .union([z.number(), z.string(), z.boolean()])
      .describe('In `unit`; the mean where it stands for several; `true` for a length that nothing limits.'),
    unit: ReportUnit,
    inches: z.number().nullable().describe('`value` in inches; null when it is not a length.'),
    min: z.number().nullable().describe('Least single value, in `unit`.'),
    max: z.number().nullable().describe('Greatest single value, in `unit`.'),
    count: z.int().describe('How many single values were looked at.'),
    uncertainty: z
      .number()
      .nullable()
      .describe('Standard uncertainty of `value` (k = 1), in `unit`; null when unknown.'),
    basis: z
      .enum(['declared', 'drawn', 'measured'])
      .describe('Said by the client, taken from the drawing, or measured with an instrument.'),
    instrument: z.string().nullable().describe('What it was measured with, when the client said so.'),
    method: z.string().describe('How it was got, for people.'),
    conformity: ReportConformity.optional().describe('Only of a value that was measured with a stated uncertainty.'),
    sample: ReportSample.optional().describe('Only where two or more values were measured.'),
  })
  .meta({ id: 'Measured', description: 'What was found on the sign.' })

export const ReportLimit = z
  .strictObject({
    min: z.number().nullable().describe('Least value allowed, in `unit`, as it was used.'),
    max: z.number().nullable().describe('Greatest value allowed, in `unit`, as it was used.'),
    allowed: z.array(z.string()).nullable().describe('The kinds that pass, when `unit` is `kind`.'),
    unit: ReportUnit,
    printed: z.string().describe('The limit as the standard prints it.'),
  })
  .meta({ id: 'Limit', description: 'What is allowed.' })

export const ReportRemedy = z
  .strictObject({
    quantity: z.string().describe('The quantity to change.'),
    min: z.number().nullable().describe('Least value that passes in every printed unit, in `unit`.'),
    max: z.number().nullable().describe('Greatest value that passes in every printed unit, in `unit`.'),
    aim: z
      .number()
      .nullable()
      .describe('What to set it to, in `unit`; null when it is not a number or no number keeps every row.'),
    unit: ReportUnit,
    expected: z.string().nullable().describe('The kind, words or cells to use instead; null for numbers.'),
    text: z.string().describe('The same for people.'),
    common: z
      .strictObject({
        min: z.number().nullable(),
        max: z.number().nullable(),
        standards: z.array(z.string()).describe('Those of the standards asked that limit the quantity.'),
      })
      .nullable()
      .describe(
        'What the standards asked allow together on this quantity, in `unit`; null when one was asked, or where they leave no number.',
      ),
  })
  .meta({ id: 'Remedy', description: 'The change of one quantity that would turn the failure into a pass.' })

export const ReportUnitSplit = z
  .strictObject({
    judged: z.enum(['in', 'mm']).describe('The unit that decided.'),
    pass: z.enum(['in', 'mm']).describe('The printed unit in which the value passes.'),
    fail: z.enum(['in', 'mm']).describe('The printed unit in which the value fails.'),
  })
  .meta({ id: 'UnitSplit', description: 'The printed inches and the printed millimetres judge differently.' })

export const ReportCitation = z
  .strictObject({
    document: z
      .string()
      .describe('The document in which the row was read; the `sources` of the standard say where it is published.'),
    clause: z.string().describe('The clause, or the exception that was used.'),
    scopedBy: z.string().describe('The clause that puts this one in force.'),
    confidence: z
      .enum(CONFIDENCES)
      .describe('How surely the row is known: `verified` was read in the document itself.'),
    note: z.string().nullable().describe('What to know about the reading of this clause.'),
  })
  .meta({ id: 'Citation', description: 'Where the requirement was read.' })

export const ReportFinding = z
  .strictObject({
    requirement: z.string().describe('`<standard>/<clause>/<slug>`.'),
    clause: z.string(),
    title: z.string(),
    asks: z.string().describe('What the clause asks for, in our own words.'),
    force: z.enum(['shall', 'should', 'advice']).describe('Only `shall` decides a verdict.'),
    stage: ReportStage,
    quantity: z.string(),
    limit: ReportLimit,
    citation: ReportCitation,
    verdict: ReportVerdict,
    reason: ReportReason.nullable().describe('Null unless undetermined.'),
    measured: ReportMeasured.nullable().describe('Null when nothing could be measured.'),
    margin: z
      .number()
      .nullable()
      .describe(
        'Distance of the worst single value inside (+) or outside (-) the nearer limit, in the unit of the limit.',
      ),
    unitSplit: ReportUnitSplit.nullable(),
    where: z.array(ReportPlace).describe('The offenders of a failure, or what left it undetermined.'),
    whereTotal: z.int().describe('How many places there are; `where` lists at most a hundred of them.'),
    message: z.string().describe('The finding for people.'),
    remedy: ReportRemedy.nullable().describe('Null unless failed.'),
    fingerprint: z.string().describe('The same for the same finding on the same sign, whatever else changes.'),
  })
  .meta({ id: 'Finding', description: 'One requirement judged on one sign.' })

export type Finding = z.infer<typeof ReportFinding>
export type ReportVerdict = z.infer<typeof ReportVerdict>
export type ReportStage = z.infer<typeof ReportStage>
export type Remedy = z.infer<typeof ReportRemedy>
export type Measured = z.infer<typeof ReportMeasured>
