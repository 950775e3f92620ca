import { z } from 'zod'
import { Report } from '../../report/schema.js'

/** Shapes of POST /v1/corrections. */

const Told = z.union([z.number(), z.string(), z.boolean()]).nullable()

export const Change = z
  .strictObject({
    requirement: z.string().describe('The requirement that failed and does not any more.'),
    from: Told.describe(
      'The worst single value before, in `unit`; cells, a colour or a kind where there is no number.',
    ),
    to: Told.describe('The same afterwards; null when the requirement does not apply any more.'),
    unit: z.string().describe('The unit of both, as in a finding.'),
    text: z.string().describe('The change for people.'),
  })
  .meta({ id: 'Change', description: 'One requirement that was put right.' })

export const NotCorrected = z
  .strictObject({
    requirement: z.string(),
    why: z.string().describe('What keeps it from being put right without a decision about the design.'),
  })
  .meta({ id: 'NotCorrected', description: 'A requirement that still fails.' })

export const Correction = z
  .strictObject({
    drawing: z.string().describe('The drawing; the same text as was sent, but for what was put right.'),
    changes: z.array(Change),
    notCorrected: z.array(NotCorrected),
    report: Report.describe('The check of the very drawing that is answered.'),
  })
  .meta({ id: 'Correction', description: 'A drawing put right, with what was changed and what was not.' })

export type CorrectionContent = z.infer<typeof Correction>
export type Change = z.infer<typeof Change>
export type NotCorrected = z.infer<typeof NotCorrected>
