import type { z } from 'zod'
import type { KeptSignRows } from '../../submittals/kept-sign.js'
import { progressOf } from '../../submittals/progress.js'
import type { SignRow, SubmittalRow, WaiverRow } from '../../submittals/store/tables.js'
import { standingOf, type WaivedFinding } from '../../submittals/waivers.js'
import type { BriefReport, SubmittalResource, WaiverResource } from './resources.js'

/** Rows of the store as resources. What was kept as JSON was written by us, so that it is taken as it is. */

export const parsed = <T>(json: string): T => JSON.parse(json) as T

export const addressOf = (submittal: string, ...rest: string[]): string =>
  ['/v1/submittals', submittal, ...rest].join('/')

export function submittalResource(row: SubmittalRow, verdicts: Record<string, number>): SubmittalResource {
  const { id, name } = row
  return {
    id,
    name,
    ...progressOf(row, verdicts),
    standards: parsed(row.standards),
    options: parsed(row.options),
    problems: parsed(row.problems),
    setFindings: parsed(row.set_findings),
    history: { events: row.event_count, head: row.event_head },
    createdAt: row.created_at,
    updatedAt: row.updated_at,
    links: { signs: addressOf(id, 'signs'), events: addressOf(id, 'events'), history: addressOf(id, 'history') },
  }
}

/** All of a sign but its report, which is put in as the text that is kept. */
export function signFields(row: SignRow) {
  return {
    id: row.id,
    mark: row.mark,
    location: row.location,
    door: row.door,
    files: parsed<string[]>(row.files),
    state: row.state,
    revision: row.revision,
    verdict: row.verdict,
    problem: row.problem === null ? null : parsed<object>(row.problem),
    updatedAt: row.updated_at,
  }
}

/** JSON of an object with one more member whose value is JSON already. */
export const withMember = (object: object, name: string, json: string): string =>
  `${JSON.stringify(object).slice(0, -1)},${JSON.stringify(name)}:${json}}`

export function briefReport(row: SignRow): z.infer<typeof BriefReport> | null {
  if (row.report === null || row.stages === null || row.summary === null) return null
  return {
    id: row.report,
    revision: row.report_revision ?? row.revision,
    verdict: row.verdict as z.infer<typeof BriefReport>['verdict'],
    stages: parsed(row.stages),
    summary: parsed(row.summary),
    address: addressOf(row.submittal, 'signs', row.id, 'reports', String(row.report_revision ?? row.revision)),
  }
}

export function waiverResource(row: WaiverRow, findings: readonly WaivedFinding[], today: string): WaiverResource {
  const { id, fingerprint, reason, author, authority, expires, at } = row
  return { id, fingerprint, ...standingOf(row, findings, today), reason, author, authority, expires, at }
}

/** What lies beside a sign. @param findings of its latest report */
export function besideSign(
  { sign, measurements, waivers, notes, reports }: KeptSignRows,
  findings: readonly WaivedFinding[],
  today: string,
) {
  return {
    installation: sign.installation === null ? null : parsed<object>(sign.installation),
    measurements: measurements.map(({ id, measured, author, at }) => ({
      id,
      measured: parsed<object>(measured),
      author,
      at,
    })),
    waivers: waivers.map((waiver) => waiverResource(waiver, findings, today)),
    notes: notes.map(({ id, text, author, at }) => ({ id, text, author, at })),
    reports: reports.map(({ revision, id, verdict, standards, made_at }) => ({
      revision,
      id,
      verdict,
      standards: parsed<object[]>(standards),
      madeAt: made_at,
      address: addressOf(sign.submittal, 'signs', sign.id, 'reports', String(revision)),
    })),
  }
}
