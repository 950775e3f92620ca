import { z } from 'zod'
import { MILLIMETRES_PER_INCH } from '../sign/length.js'
import { NUMBER_UNITS } from '../sign/quantities.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import { Requirement, type Limit } from '../standards/standard.js'

/** A standard as its table is published: the limits in millimetres or as ratios, beside what is printed. */

const StandardEntry = z.strictObject({
  id: z.string(),
  title: z.string(),
  edition: z.string(),
  jurisdiction: z.string(),
  revision: z.int().positive().describe('Ours; raised by one whenever a row changes.'),
  digest: z.string().describe('Digest of the whole table.'),
})

export const StandardList = z
  .strictObject({ standards: z.array(StandardEntry) })
  .meta({ id: 'StandardList', description: 'The standards that a sign can be held against.' })

const PublishedLimit = z
  .strictObject({
    kind: z.string(),
    min: z.number().optional(),
    max: z.number().optional(),
    unit: z.enum(['mm', 'ratio', ...NUMBER_UNITS, 'kind', 'truth']),
    pass: z.array(z.string()).optional().describe('Kinds that pass.'),
    judgement: z.array(z.string()).optional().describe('Kinds that a person has to judge.'),
    printed: z.string().describe('As the standard prints it.'),
  })
  .meta({ id: 'PublishedLimit', description: 'What a value must satisfy. A ratio is a share: 0.15, not 15.' })

const PublishedRow = Requirement.pick({
  requirement: true,
  clause: true,
  title: true,
  text: true,
  force: true,
  stage: true,
  quantity: true,
  howToMeasure: true,
})
  .extend({
    limit: PublishedLimit,
    exceptions: z.array(
      z.strictObject({
        when: z.string(),
        clause: z.string(),
        text: z.string(),
        exempt: z.boolean(),
        limit: PublishedLimit.optional(),
      }),
    ),
    uses: z.array(z.string()).describe('Uses of a sign that the row is in force for.'),
    citation: z.strictObject({
      document: z.string(),
      where: z.string(),
      confidence: z.string(),
      note: z.string().optional(),
    }),
  })
  .meta({ id: 'PublishedRow', description: 'One requirement.' })

export const StandardTable = StandardEntry.extend({ requirements: z.array(PublishedRow) }).meta({
  id: 'StandardTable',
  description: 'One edition of a standard, row by row.',
})
export type StandardTable = z.infer<typeof StandardTable>

export const standardEntry = (standard: LoadedStandard) => {
  const { id, title, edition, jurisdiction, revision, digest } = standard
  return { id, title, edition, jurisdiction, revision, digest }
}

export function standardTable(standard: LoadedStandard): StandardTable {
  const publish = (limit: Limit) => publishedLimit(limit, standard.firstUnit)
  return {
    ...standardEntry(standard),
    requirements: standard.requirements.map((row) => {
      const { requirement, clause, title, text, force, stage, quantity, howToMeasure, citation, scope } = row
      const { document = citation.source, where = '' } = standard.sources[citation.source] ?? {}
      return {
        ...{ requirement, clause, title, text, force, stage, quantity, howToMeasure },
        limit: publish(row.limit),
        exceptions: row.exceptions.map((exception) => ({
          ...{ when: exception.when, clause: exception.clause, text: exception.text, exempt: exception.exempt },
          ...(exception.limit && { limit: publish(exception.limit) }),
        })),
        uses: [...scope.uses],
        citation: {
          ...{ document, where, confidence: citation.confidence },
          ...(citation.note !== undefined && { note: citation.note }),
        },
      }
    }),
  }
}

/** Lengths in the unit that the standard puts first, by the multiplication that inputs go through too. */
function publishedLimit(limit: Limit, firstUnit: 'in' | 'mm'): z.infer<typeof PublishedLimit> {
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
    case 'nominal':
      return { kind, ...ends(limit.mm, limit.mm, 1), unit: 'mm', printed }
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
