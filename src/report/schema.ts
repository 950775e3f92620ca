import { z } from 'zod'
import { NUMBER_UNITS } from '../sign/quantities.js'
import { PARTS, USES } from '../sign/sign.js'
import { STANDARD_KINDS } from '../standards/standard.js'
import { ReportFinding, ReportStage, ReportVerdict } from './finding-schema.js'
import { ReportBox, ReportPlace, ReportSource } from './place-schema.js'

/** The report: what every check answers, and the source of its JSON Schema. Lengths are millimetres. */

const length = (what: string) => z.number().nullable().describe(`${what}, mm; null when it is not known.`)

export const ReportReading = z
  .strictObject({
    panel: z.strictObject({ width: length('Width'), height: length('Height') }),
    lettering: z
      .array(
        z.strictObject({
          text: z.string().nullable().describe('The characters of one line; null when they could not be read.'),
          part: z.enum(PARTS).describe('Read by touch, by sight, or both.'),
          characterHeight: length('Height of the characters'),
          box: ReportBox.nullable(),
        }),
      )
      .describe('The lettering, one entry a line.'),
    braille: z
      .array(
        z.strictObject({
          lines: z.array(
            z.strictObject({
              cells: z.string().nullable().describe('Unicode braille, U+2800 for a blank cell; null when unread.'),
              text: z
                .string()
                .nullable()
                .describe('What the cells say in print, shown only when it translates to exactly these cells.'),
              box: ReportBox.nullable(),
            }),
          ),
          dots: z.int().describe('How many raised dots the block has.'),
          dotBaseDiameter: length('Diameter of the dots at their base'),
          dotSpacing: length('Distance of neighbouring dots in a cell, centre to centre'),
          cellSpacing: length('Distance of the same dot in neighbouring cells'),
          lineSpacing: length('Distance of the same dot in neighbouring lines'),
          rotation: z
            .number()
            .describe(
              'Degrees clockwise from the x axis to the reading direction, of a mirrored block after the mirror is taken away.',
            ),
          mirrored: z.boolean().describe('Drawn for reading from the other side.'),
        }),
      )
      .describe('The braille, one entry a block.'),
    pictograms: z.array(z.strictObject({ meaning: z.string().nullable(), field: ReportBox.nullable() })),
    borders: z.array(z.strictObject({ box: ReportBox, raised: z.boolean().nullable() })),
  })
  .meta({ id: 'Reading', description: 'What a finger or an eye would read off the sign.' })

export const ReportAssumption = z
  .strictObject({ about: z.string().describe('One word: `scale`, `part`, `conflict` and so on.'), text: z.string() })
  .meta({ id: 'Assumption', description: 'Something that was not said and had to be assumed.' })

export const ReportIgnored = z
  .strictObject({ source: ReportSource, why: z.string() })
  .meta({ id: 'Ignored', description: 'An element of the drawing that was not looked at.' })

export const ReportUnread = z
  .strictObject({
    where: ReportPlace,
    why: z.string(),
    couldBe: z.array(z.enum(['braille', 'lettering', 'pictogram', 'border', 'colour'])),
  })
  .meta({ id: 'Unread', description: 'Something that was seen and not understood.' })

export const ReportQuestion = z
  .strictObject({
    pointer: z.string().describe('Where in the request the answer belongs, a JSON Pointer.'),
    ask: z.string(),
    unit: z
      .enum(['mm', 'in', 'ratio', ...NUMBER_UNITS])
      .nullable()
      .describe(
        'The unit of the answer, when it is a number: `units` of the description, so that a bare number there is right.',
      ),
    choices: z.array(z.string()).nullable().describe('The possible answers, when there are only some.'),
    decides: z.array(z.string()).describe('The requirements that the answer helps to decide.'),
  })
  .meta({ id: 'Question', description: 'A fact that the client could add.' })

export const ReportToMeasure = z
  .strictObject({
    requirement: z.string(),
    clause: z.string(),
    title: z.string(),
    stage: ReportStage,
    limit: z.string().describe('The limit as printed.'),
    how: z.string().describe('How to measure it.'),
  })
  .meta({ id: 'ToMeasure', description: 'Something undetermined that a gauge or a tape would decide.' })

const count = z.int().nonnegative()

export const ReportSummary = z
  .strictObject({ pass: count, fail: count, undetermined: count, notApplicable: count })
  .describe('How many findings of each verdict, whatever their force.')

export const ReportStandard = z
  .strictObject({
    id: z.string(),
    revision: z.int().describe('Ours; raised by one whenever a row changes.'),
    title: z.string(),
    edition: z.string(),
    kind: z
      .enum(STANDARD_KINDS)
      .describe('`reference-geometry`: sizes with a name, which no code asks of a sign; all its rows are advice.'),
    supersededBy: z.string().nullable().describe('The edition that took its place; null when none did.'),
    digest: z.string().describe('Digest of the whole table.'),
    verdict: ReportVerdict.describe('Over its findings of force `shall`.'),
    summary: ReportSummary,
    sources: z
      .array(
        z.strictObject({
          document: z.string().describe('The document, as citations name it.'),
          where: z.string().describe('Where it is published.'),
        }),
      )
      .describe('Where the rows of the table were read.'),
  })
  .meta({ id: 'ReportStandard', description: 'A standard that the sign was held against.' })

export const ReportEngine = z
  .strictObject({
    version: z.string().describe('Version of this service.'),
    braille: z.strictObject({
      name: z.string(),
      version: z.string(),
      tables: z.record(z.string(), z.string()).describe('The translation table used for each braille code.'),
      digest: z.string().describe('Digest of the tables.'),
    }),
  })
  .meta({ id: 'Engine', description: 'What made the report.' })

export const Report = z
  .strictObject({
    id: z.string().describe('Digest of the question: the same question has the same id and the same report.'),
    mark: z.string().nullable().describe('The mark of the sign in its schedule, when it was given.'),
    use: z.enum(USES),
    verdict: ReportVerdict.describe('Over all findings of force `shall`.'),
    stages: z
      .strictObject({ drawing: ReportVerdict, product: ReportVerdict, site: ReportVerdict })
      .describe('The same, for each stage alone.'),
    summary: ReportSummary,
    standards: z.array(ReportStandard).describe('In the order in which they were asked, each with its own verdict.'),
    decisionRule: z
      .enum(['simple', 'guarded'])
      .describe('`guarded` leaves a value undetermined that lies within its uncertainty of a limit.'),
    unitSystem: z.enum(['printed', 'both']).describe('`both`: the printed inches and millimetres must both pass.'),
    findings: z.array(ReportFinding).describe('In the order of the standards and of their tables.'),
    reading: ReportReading,
    assumptions: z.array(ReportAssumption),
    ignored: z.array(ReportIgnored),
    unread: z.array(ReportUnread),
    questions: z.array(ReportQuestion),
    toMeasure: z.array(ReportToMeasure),
    caveats: z.array(z.string()),
    engine: ReportEngine,
  })
  .meta({ id: 'Report', description: 'One sign held against one or more standards.' })

export type Report = z.infer<typeof Report>
export type ReportReading = z.infer<typeof ReportReading>
export type ReportQuestion = z.infer<typeof ReportQuestion>
export type ReportToMeasure = z.infer<typeof ReportToMeasure>
