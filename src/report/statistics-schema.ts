import { z } from 'zod'

/** What statistics say of values that were measured with an instrument. Shares and probabilities are 0.95, not 95. */

export const ReportConformity = z
  .strictObject({
    value: z
      .number()
      .describe('The single value that was judged, in `unit`: the one nearest to a limit, or beyond it.'),
    expandedUncertainty: z
      .number()
      .describe('Twice the standard uncertainty (k = 2), in `unit`: the width of a guard band.'),
    probability: z
      .number()
      .describe('How probable it is that the true value keeps the limit, given this value alone (JCGM 106:2012, 7).'),
    guarded: z
      .enum(['pass', 'fail', 'within-uncertainty'])
      .describe('What the guarded rule says of this value, whichever rule was asked for (JCGM 106:2012, 8.3).'),
    assumption: z.string().describe('What this rests on, for people.'),
  })
  .meta({ id: 'Conformity', description: 'How surely a measured value keeps its limit.' })

const ReportInterval = z
  .strictObject({
    min: z.number().nullable().describe('In `unit`; null against limits that have no lower end.'),
    max: z.number().nullable().describe('In `unit`; null against limits that have no upper end.'),
    coverage: z.number().describe('The share of all values that lies within.'),
    confidence: z.number().describe('How surely it does.'),
  })
  .meta({ id: 'ToleranceInterval', description: 'Where a share of all values lies, read or not.' })

const ReportShare = z
  .strictObject({ atLeast: z.number(), confidence: z.number() })
  .meta({ id: 'ShareWithin', description: 'The least share of all values, read or not, that keeps the limits.' })

const ReportCapability = z
  .strictObject({
    cp: z.number().nullable().describe('Room between the limits over six standard deviations; null with one limit.'),
    cpk: z.number().describe('Distance of the mean from the nearer limit over three standard deviations.'),
    cpkMin: z.number().describe('Lower confidence limit of `cpk`.'),
    cpkMax: z.number().describe('Upper confidence limit of `cpk`.'),
    confidence: z.number().describe('How surely `cpk` lies between them.'),
  })
  .meta({
    id: 'Capability',
    description: 'Capability indices (NIST/SEMATECH e-Handbook, 6.1.6); rough with fewer than some fifty readings.',
  })

export const ReportSample = z
  .strictObject({
    count: z.int().describe('How many readings.'),
    mean: z.number().describe('In `unit`.'),
    standardDeviation: z.number().describe('Of a single reading, in `unit`.'),
    interval: ReportInterval.nullable().describe('Null where nothing but equal readings was given.'),
    shareWithin: ReportShare.nullable().describe('Null where it cannot be said to be more than a half.'),
    capability: ReportCapability.nullable().describe('Null where nothing but equal readings was given.'),
    moreReadings: z
      .int()
      .nullable()
      .describe(
        'How many more readings with the same mean and spread would put `interval` within the limits; 0 when it lies there. Null when no reasonable number would, or a single value has failed already.',
      ),
    assumption: z.string().describe('What all but the first three rest on, for people.'),
  })
  .meta({ id: 'Sample', description: 'What several readings say of all values, read or not.' })

export type Conformity = z.infer<typeof ReportConformity>
export type Sample = z.infer<typeof ReportSample>
