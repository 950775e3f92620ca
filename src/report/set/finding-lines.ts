import type { Finding } from '../finding-schema.js'
import { placeWords } from '../place-words.js'
import { sentence } from '../sentences.js'

/** Places that are named; the report has them all. */
const MOST_PLACES = 3

/** A finding in lines of text, for formats that have one field for everything. Numbers are those of the report, unrounded. */
export function findingLines(finding: Finding): string[] {
  const { asks, message, measured, limit, margin, remedy, citation, where, whereTotal } = finding
  const named = where.slice(0, MOST_PLACES).map((place) => placeWords(place))
  return [
    message,
    `Asked: ${sentence(asks)}`,
    `Allowed: ${limit.printed}`,
    ...(measured ? [`Measured: ${measured.value} ${measured.unit} (${measured.basis}, ${measured.method})`] : []),
    ...(margin === null ? [] : [`Margin: ${margin} ${limit.unit}`]),
    ...(remedy ? [`Remedy: ${remedy.text}`] : []),
    ...(named.length > 0
      ? [`Where: ${named.join('; ')}${whereTotal > named.length ? ` and ${whereTotal - named.length} more` : ''}`]
      : []),
    `Clause: ${citation.document}, ${citation.clause}`,
    ...(citation.confidence === 'verified' ? [] : [`How surely the clause is known: ${citation.confidence}`]),
    ...(citation.note ? [`Note: ${citation.note}`] : []),
  ]
}
