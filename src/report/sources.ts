import type { Finding } from './finding-schema.js'
import type { Report } from './schema.js'

/** Where the requirements of a report were read, for people. */

const CONFIDENCE_WORDS: Record<Finding['citation']['confidence'], string> = {
  verified: 'read in the document itself',
  secondary: 'read in a secondary source',
  'earlier-edition': 'read in an earlier edition',
  'our-reading': 'our reading',
}

export interface ReadDocument {
  document: string
  /** Where it is published; empty when the table does not say. */
  where: string
  clauses: string[]
  confidence: string
}

/** Each document once for each confidence, with the clauses read in it, and what to know of the reading; of what applies. */
export function sourcesOf({ standards, findings }: Report): { documents: ReadDocument[]; notes: string[] } {
  const published = new Map(standards.flatMap((s) => s.sources.map(({ document, where }) => [document, where])))
  const applying = findings.filter(({ verdict }) => verdict !== 'not-applicable').map(({ citation }) => citation)
  const documents = new Map<string, ReadDocument>()
  for (const { document, confidence, clause } of applying) {
    const key = `${document}\n${confidence}`
    const where = published.get(document) ?? ''
    const read = documents.get(key) ?? { document, where, clauses: [], confidence: CONFIDENCE_WORDS[confidence] }
    if (!read.clauses.includes(clause)) read.clauses.push(clause)
    documents.set(key, read)
  }
  const notes = applying.flatMap(({ clause, note }) => (note ? [`${clause}: ${note}`] : []))
  return { documents: [...documents.values()], notes: [...new Set(notes)] }
}
