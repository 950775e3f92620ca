import { z } from 'zod'
import { PARTS, SECTIONS } from '../sign/sign.js'
import type { LoadedStandard } from '../standards/catalogue.js'
import { Change, Requirement, STANDARD_KINDS, TableGap, type Limit } from '../standards/standard.js'
import { PublishedLimit, publishedLimit } from './published-limit.js'

/** A standard as its table is published: what is in force for what, the limits, what is left out and what changed. */

const StandardEntry = z.strictObject({
  id: z.string(),
  title: z.string(),
  edition: z.string(),
  jurisdiction: z.string(),
  kind: z
    .enum(STANDARD_KINDS)
    .describe('`reference-geometry`: sizes with a name, which no code asks of a sign; they are advice.'),
  supersededBy: z.string().nullable().describe('The id of the edition that took its place; null when none did.'),
  revision: z.int().positive().describe('Ours; raised by one whenever a row changes.'),
  digest: z.string().describe('Digest of the whole table.'),
})

export const StandardList = z
  .strictObject({ standards: z.array(StandardEntry) })
  .meta({ id: 'StandardList', description: 'The standards that a sign can be held against.' })

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
    parts: z.array(z.enum(PARTS)).optional().describe('Only lettering of these parts is looked at.'),
    sections: z.array(z.enum(SECTIONS)).optional().describe('Only characters with these sections are looked at.'),
    when: z.array(z.string()).describe('Conditions that a sign must meet for the row to be in force.'),
    scopedBy: z.string().describe('The clause that puts the row in force.'),
    citation: z.strictObject({
      document: z.string(),
      where: z.string(),
      confidence: z.string(),
      note: z.string().optional(),
    }),
  })
  .meta({ id: 'PublishedRow', description: 'One requirement.' })

const PublishedGap = TableGap.meta({ id: 'PublishedGap', description: 'What the table leaves out, and why.' })
const PublishedChange = Change.meta({ id: 'PublishedChange', description: 'One raise of the revision.' })

export const StandardTable = StandardEntry.extend({
  gaps: z.array(PublishedGap),
  requirements: z.array(PublishedRow),
}).meta({ id: 'StandardTable', description: 'One edition of a standard, row by row.' })
export type StandardTable = z.infer<typeof StandardTable>

export const StandardChanges = z
  .strictObject({ id: z.string(), changes: z.array(PublishedChange).describe('Newest last.') })
  .meta({ id: 'StandardChanges', description: 'How the table of one standard changed.' })
export type StandardChanges = z.infer<typeof StandardChanges>

export const standardEntry = (standard: LoadedStandard) => {
  const { id, title, edition, jurisdiction, kind, supersededBy = null, revision, digest } = standard
  return { id, title, edition, jurisdiction, kind, supersededBy, revision, digest }
}

export const standardChanges = ({ id, changes }: LoadedStandard): StandardChanges => ({ id, changes })

export function standardTable(standard: LoadedStandard): StandardTable {
  return {
    ...standardEntry(standard),
    gaps: standard.gaps,
    requirements: standard.requirements.map((row) => publishedRow(row, standard)),
  }
}

function publishedRow(row: Requirement, standard: LoadedStandard): StandardTable['requirements'][number] {
  const publish = (limit: Limit, clause: string) => publishedLimit(limit, clause, standard.firstUnit)
  const { requirement, clause, title, text, force, stage, quantity, howToMeasure, citation, scope } = row
  const { document = citation.source, where = '' } = standard.sources[citation.source] ?? {}
  return {
    ...{ requirement, clause, title, text, force, stage, quantity, howToMeasure },
    limit: publish(row.limit, clause),
    exceptions: row.exceptions.map((exception) => ({
      ...{ when: exception.when, clause: exception.clause, text: exception.text, exempt: exception.exempt },
      ...(exception.limit && { limit: publish(exception.limit, exception.clause) }),
    })),
    uses: [...scope.uses],
    ...(scope.parts && { parts: scope.parts }),
    ...(scope.sections && { sections: scope.sections }),
    when: [...scope.when],
    scopedBy: scope.clause,
    citation: {
      ...{ document, where, confidence: citation.confidence },
      ...(citation.note !== undefined && { note: citation.note }),
    },
  }
}
