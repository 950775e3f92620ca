import { csvTable, type Cell } from './csv-table.js'
import type { Finding } from './finding-schema.js'
import type { Report } from './schema.js'

/** The columns of a finding in their order. Numbers are in `unit`, unrounded; `limit` is as printed. */
export const FINDING_COLUMNS: Record<string, (finding: Finding) => Cell> = {
  requirement: ({ requirement }) => requirement,
  clause: ({ clause }) => clause,
  title: ({ title }) => title,
  force: ({ force }) => force,
  stage: ({ stage }) => stage,
  verdict: ({ verdict }) => verdict,
  reason: ({ reason }) => reason,
  measured: ({ measured }) => measured?.value ?? null,
  measured_min: ({ measured }) => measured?.min ?? null,
  measured_max: ({ measured }) => measured?.max ?? null,
  basis: ({ measured }) => measured?.basis ?? null,
  unit: ({ measured, limit }) => measured?.unit ?? limit.unit,
  limit: ({ limit }) => limit.printed,
  limit_min: ({ limit }) => limit.min,
  limit_max: ({ limit }) => limit.max,
  margin: ({ margin }) => margin,
  message: ({ message }) => message,
  remedy: ({ remedy }) => remedy?.text ?? null,
  citation: ({ citation }) => `${citation.document}, ${citation.clause}`,
  confidence: ({ citation }) => citation.confidence,
  fingerprint: ({ fingerprint }) => fingerprint,
}

/** The findings as a table for spreadsheets: one row a finding, in the order of the report, under a row of heads. */
export function reportCsv({ id, mark, findings }: Report): string {
  const columns = Object.values(FINDING_COLUMNS)
  const rows = findings.map((finding) => [mark, ...columns.map((cell) => cell(finding)), id])
  return csvTable(['mark', ...Object.keys(FINDING_COLUMNS), 'report'], rows)
}
