import type { Paper } from './pdf-paper.js'
import type { Report } from './schema.js'
import { sourcesOf } from './sources.js'

/** Where the requirements of one report, or of all of a set, were read. */
export function sourcesSection(paper: Paper, report: Pick<Report, 'standards' | 'findings'>): void {
  const { documents, notes } = sourcesOf(report)
  paper.heading(2, 'Sources')
  if (documents.length === 0) return paper.paragraph('No clause applied.')
  paper.list(
    documents.map(({ document, where, clauses, confidence }) => ({
      label: `${document}, ${confidence}:`,
      text: `clauses ${clauses.join(', ')}.${where === '' ? '' : ` Published at ${where}`}`,
    })),
  )
  if (notes.length > 0) paper.list(notes.map((text) => ({ text })))
}
