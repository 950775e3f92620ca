import { table } from './html-table.js'
import { markup, NOTHING, type Html } from './html-tag.js'
import type { Report } from './schema.js'
import { sourcesOf } from './sources.js'

/** Where the requirements of one report, or of all of a set, were read. */
export function sourcesMarkup(report: Pick<Report, 'standards' | 'findings'>): Html {
  const { documents, notes } = sourcesOf(report)
  const rows = documents.map(
    ({ document, where, clauses, confidence }) =>
      markup`<tr>
        <th scope="row">${document}</th>
        <td>${where}</td>
        <td>${clauses.join(', ')}</td>
        <td>${confidence}</td>
      </tr>`,
  )
  return markup`${rows.length === 0 ? markup`<p>No clause applied.</p>` : table('Where the requirements were read', ['Document', 'Published at', 'Clauses', 'How surely'], rows)}
  ${
    notes.length === 0
      ? NOTHING
      : markup`<ul>
          ${notes.map((note) => markup`<li>${note}</li>`)}
        </ul>`
  }`
}
