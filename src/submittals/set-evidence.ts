import { gunzipSync } from 'node:zlib'
import type { Report } from '../report/schema.js'
import type { SetEvidence, SetSign } from '../report/set/evidence.js'
import type { MeasuredDescription } from '../sign/measured-description.js'
import { MEASURABLE } from '../sign/quantities.js'
import type { EvidenceRows } from './evidence-rows.js'
import type { SignRow } from './store/tables.js'
import { standingOf } from './waivers.js'

/** Rows of the store as the evidence that every form is written from. Reports are unpacked here, away from the event loop. */

/** @param today as YYYY-MM-DD: waivers end by it */
export function setEvidenceOf(rows: EvidenceRows, today: string): SetEvidence {
  const { submittal, asOf, signs } = rows
  const beside = { waivers: bySign(rows.waivers), notes: bySign(rows.notes), measurements: bySign(rows.measurements) }
  return {
    id: submittal.id,
    name: submittal.name,
    standards: parsed(submittal.standards),
    state: submittal.state,
    createdAt: submittal.created_at,
    asOf,
    signs: signs.map((sign) => setSign(sign, rows, beside, today)),
    ...partOf(rows),
    setFindings: parsed(submittal.set_findings),
    intakeProblems: parsed(submittal.problems),
    history: { events: submittal.event_count, head: submittal.event_head },
  }
}

/** Signs that were asked for by themselves are no part of the evidence on a set. */
function partOf({ submittal: { total }, from, signs }: EvidenceRows): Pick<SetEvidence, 'part'> {
  return from === null || signs.length === total ? {} : { part: { from, total } }
}

interface Beside {
  waivers: Map<string, EvidenceRows['waivers']>
  notes: Map<string, EvidenceRows['notes']>
  measurements: Map<string, EvidenceRows['measurements']>
}

function setSign(row: SignRow, { reports }: EvidenceRows, beside: Beside, today: string): SetSign {
  const { id, mark, location, door } = row
  const kept = reports.get(id)
  const report = kept ? parsed<Report>(unpacked(kept.body)) : null
  const findings = report?.findings ?? []
  return {
    id,
    mark,
    location,
    door,
    files: parsed(row.files),
    report,
    ...outdated(row),
    drawing: kept ? unpacked(kept.picture) : null,
    problem: row.problem === null ? null : problemOf(parsed(row.problem)),
    waivers: (beside.waivers.get(id) ?? []).map(({ sign: _, ...waiver }) => ({
      ...waiver,
      standing: standingOf(waiver, findings, today).standing,
    })),
    notes: (beside.notes.get(id) ?? []).map(({ text, author, at }) => ({ text, author, at })),
    measurements: (beside.measurements.get(id) ?? []).map(({ measured, author, at }) => {
      const { quantity, values, unit, expandedUncertainty = null, instrument } = parsed<MeasuredDescription>(measured)
      return {
        quantity,
        values,
        unit: unit ?? MEASURABLE[quantity],
        expandedUncertainty,
        instrument: instrument ?? null,
        author,
        at,
      }
    }),
  }
}

/** A report is of one revision of its sign. */
const outdated = ({ report_revision, revision, state }: SignRow): Pick<SetSign, 'outdated'> =>
  report_revision === null || report_revision === revision || state === 'done' ? {} : { outdated: state }

const problemOf = ({ title, detail }: { title: string; detail: string }) => ({ title, detail })

/** What we wrote ourselves, as it was written. */
const parsed = <T>(json: string): T => JSON.parse(json) as T

const unpacked = (bytes: Uint8Array): string => gunzipSync(bytes).toString('utf8')

function bySign<T extends { sign: string }>(rows: readonly T[]): Map<string, T[]> {
  const groups = new Map<string, T[]>()
  for (const row of rows) {
    const group = groups.get(row.sign)
    if (group) group.push(row)
    else groups.set(row.sign, [row])
  }
  return groups
}
