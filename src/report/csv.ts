import type { Finding } from './finding-schema.js'
import { plain } from './markup.js'
import type { Report } from './schema.js'

/**
 * The findings as a table for spreadsheets (RFC 4180, UTF-8 with a byte order mark: without one, common spreadsheets take
 * braille and letters with accents for another encoding).
 */

const BYTE_ORDER_MARK = '\ufeff'
const LINE_END = '\r\n'

type Cell = string | number | boolean | null

/** The columns in their order. Numbers are in `unit`, unrounded; `limit` is as printed. */
const COLUMNS: Record<string, (finding: Finding, report: Report) => Cell> = {
  mark: (_, { mark }) => mark,
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
  report: (_, { id }) => id,
}

/** One row a finding, in the order of the report, under a row of heads. */
export function reportCsv(report: Report): string {
  const columns = Object.values(COLUMNS)
  const rows = report.findings.map((finding) => columns.map((cell) => written(cell(finding, report))).join(','))
  return `${BYTE_ORDER_MARK}${[Object.keys(COLUMNS).join(','), ...rows, ''].join(LINE_END)}`
}

/** Numbers stay numbers, a minus included; every text is quoted. */
function written(cell: Cell): string {
  if (cell === null) return ''
  return typeof cell === 'string' ? `"${inert(cell).replaceAll('"', '""')}"` : String(cell)
}

/**
 * What a spreadsheet would take for the beginning of a formula: OWASP, CSV Injection, with the full-width forms. Also behind a
 * semicolon, at which spreadsheets of many countries divide a line whatever its quotes. Tabs and line ends are blanks by then.
 */
const FORMULA_START = /(^|;)(\s*)(?=[=+\-@＝＋－＠])/g

const inert = (text: string): string => plain(text).replace(FORMULA_START, "$1$2'")
