import { z } from 'zod'
import { Options } from '../../check-options.js'
import { ReportVerdict } from '../../report/finding-schema.js'
import { Report, ReportSummary } from '../../report/schema.js'
import { InstallationDescription } from '../../sign/installation-description.js'
import { MeasuredDescription } from '../../sign/measured-description.js'
import { EVENT_KINDS } from '../../submittals/history.js'
import { Problem } from '../problems.js'

/** What the routes of submittals answer with; the sources of its JSON Schemas. Times are ISO 8601 in UTC. */

const count = z.int().nonnegative()
const Time = z.string().describe('ISO 8601, UTC.')
const Address = z.string().describe('Path of the resource.')

export const SUBMITTAL_STATES = ['queued', 'running', 'done', 'cancelled'] as const

export const IntakeProblemSchema = z
  .strictObject({
    file: z.string(),
    row: z.int().positive().nullable().describe('Of a schedule, as a spreadsheet numbers it: the first row is 1.'),
    column: z.string().nullable().describe('Heading of the column.'),
    detail: z.string(),
  })
  .meta({
    id: 'IntakeProblem',
    description: 'A file, or a row of a schedule, that could not be used; the others were.',
  })

export const SetFindingSchema = z
  .strictObject({
    kind: z.enum(['same-mark', 'wording-differs', 'typefaces-differ', 'braille-spacing-differs', 'door-without-sign']),
    marks: z.array(z.string()).describe('Marks of the signs that it is about.'),
    message: z.string(),
  })
  .meta({ id: 'SetFinding', description: 'Something that is wrong with the set as a whole; it changes no verdict.' })

export const SubmittalResource = z
  .strictObject({
    id: z.string(),
    name: z.string(),
    state: z.enum(SUBMITTAL_STATES).describe('`running` again while signs that changed wait for a new report.'),
    signs: z.strictObject({ total: count, done: count }),
    verdicts: z
      .strictObject({ pass: count, fail: count, undetermined: count, notApplicable: count, none: count })
      .describe('How many signs have which verdict; `none`: no report yet, or none possible.'),
    standards: z.array(z.string()).describe('Pinned to the revisions of the day on which it was made.'),
    options: Options,
    problems: z.array(IntakeProblemSchema),
    setFindings: z.array(SetFindingSchema).describe('Made anew whenever the last sign has its report.'),
    history: z.strictObject({ events: count, head: z.string().describe('Hash of the last event.') }),
    createdAt: Time,
    updatedAt: Time,
    links: z.strictObject({ signs: Address, events: Address, history: Address }),
  })
  .meta({ id: 'Submittal', description: 'A set of signs that is kept.' })
export type SubmittalResource = z.infer<typeof SubmittalResource>

export const SubmittalList = z
  .strictObject({
    submittals: z.array(SubmittalResource),
    next: z.string().nullable().describe('Cursor of the next page; null at the end.'),
  })
  .meta({ id: 'SubmittalList', description: 'Submittals, the newest first.' })

export const WaiverResource = z
  .strictObject({
    id: z.string(),
    fingerprint: z.string(),
    requirement: z.string().nullable().describe('Of the finding that it lets stand; null when there is none.'),
    reason: z.string(),
    author: z.string(),
    authority: z.string(),
    expires: z.string().nullable().describe('The last day on which it holds.'),
    standing: z
      .enum(['in-force', 'expired', 'unused'])
      .describe('`unused`: no finding of the latest report fails or is undecided with this fingerprint.'),
    at: Time,
  })
  .meta({
    id: 'Waiver',
    description: 'A finding that an authority lets stand. The finding and its verdict stay as they are.',
  })
export type WaiverResource = z.infer<typeof WaiverResource>

export const NoteResource = z
  .strictObject({ id: z.string(), text: z.string(), author: z.string(), at: Time })
  .meta({ id: 'Note', description: 'A remark on a sign.' })

export const AddedMeasurement = z
  .strictObject({ id: z.string(), measured: MeasuredDescription, author: z.string(), at: Time })
  .meta({ id: 'AddedMeasurement', description: 'Readings that were added after the upload.' })

export const BriefReport = z
  .strictObject({
    id: z.string(),
    revision: z.int().positive().describe('Of the sign. It may be an earlier one while the sign is queued.'),
    verdict: ReportVerdict,
    stages: Report.shape.stages,
    summary: ReportSummary,
    address: Address.describe('Where the whole report is.'),
  })
  .meta({ id: 'BriefReport', description: 'What a report comes to.' })

const sign = {
  id: z.string(),
  mark: z.string(),
  location: z.string().nullable(),
  door: z.string().nullable(),
  files: z.array(z.string()).describe('Names of the files that it came from.'),
  state: z.enum(['queued', 'done', 'cancelled']),
  revision: z.int().positive().describe('Raised whenever something that is judged was added.'),
  verdict: ReportVerdict.nullable().describe('Of the latest report; null without one.'),
  problem: Problem.omit({ instance: true }).nullable().describe('Why no report could be made.'),
  updatedAt: Time,
}

export const SignEntry = z
  .strictObject({
    ...sign,
    report: z
      .union([Report, BriefReport])
      .nullable()
      .describe('The latest report, whole unless `report=brief` is asked for.'),
  })
  .meta({ id: 'SubmittalSignEntry', description: 'One sign of a submittal in a list.' })

export const SignList = z
  .strictObject({
    signs: z.array(SignEntry),
    next: z.string().nullable().describe('Cursor of the next page; null at the end.'),
  })
  .meta({ id: 'SubmittalSignList', description: 'Signs of a submittal in the order of the upload.' })

export const ReportEntry = z
  .strictObject({
    revision: z.int().positive(),
    id: z.string(),
    verdict: ReportVerdict,
    standards: z.array(z.strictObject({ id: z.string(), revision: z.int(), digest: z.string() })),
    madeAt: Time,
    address: Address,
  })
  .meta({ id: 'ReportEntry', description: 'A report that was made of a sign at one of its revisions.' })

export const SignResource = z
  .strictObject({
    ...sign,
    report: Report.nullable().describe('The latest report.'),
    installation: InstallationDescription.nullable().describe(
      'Facts of its place that were added; they take the place of those described.',
    ),
    measurements: z.array(AddedMeasurement),
    waivers: z.array(WaiverResource),
    notes: z.array(NoteResource),
    reports: z.array(ReportEntry).describe('Every report that was made of it, the latest first.'),
  })
  .meta({ id: 'KeptSign', description: 'One sign of a submittal with all that is kept about it.' })

export const HistoryResource = z
  .strictObject({
    submittal: z.string(),
    intact: z.boolean().describe('Whether every hash is what it must be.'),
    brokenAt: z.int().positive().nullable().describe('The first event that is not what it must be.'),
    head: z
      .string()
      .describe('Hash of the last event: who has noted it can tell later that nothing before it was changed.'),
    method: z.string(),
    events: z.array(
      z.strictObject({
        number: z.int().positive(),
        at: Time,
        actor: z.string(),
        kind: z.enum(EVENT_KINDS),
        data: z.record(z.string(), z.unknown()),
        previous: z.string(),
        hash: z.string(),
      }),
    ),
  })
  .meta({ id: 'History', description: 'Every change of a submittal, in a chain of hashes.' })
