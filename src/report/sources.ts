import { standardOfRequirement } from '../standards/requirement-id.js'
import type { Finding } from './finding-schema.js'
import type { Report } from './schema.js'

/** Where the requirements of a report were read, for people. */

export const CONFIDENCE_WORDS: Record<Finding['citation']['confidence'], string> = {
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

/**
 * Each document once for each standard and confidence, with the clauses read in it, and what to know of the reading; of what applies.
 * Clauses carry the name of their standard where a report holds the sign against several.
 */
export function sourcesOf({ standards, findings }: Pick<Report, 'standards' | 'findings'>): {
  documents: ReadDocument[]
  notes: string[]
} {
  const several = standards.length > 1
  const documents = new Map<string, ReadDocument>()
  const notes = new Set<string>()
  for (const { citation, requirement, verdict } of findings) {
    if (verdict === 'not-applicable') continue
    const { document, confidence, clause, note } = citation
    const standard = standards.find(({ id }) => id === standardOfRequirement(requirement))
    const named = several && standard ? `${standard.id} ${clause}` : clause
    const key = `${several ? (standard?.id ?? '') : ''}\n${document}\n${confidence}`
    const where = standard?.sources.find((source) => source.document === document)?.where ?? ''
    const read = documents.get(key) ?? { document, where, clauses: [], confidence: CONFIDENCE_WORDS[confidence] }
    if (!read.clauses.includes(named)) read.clauses.push(named)
    documents.set(key, read)
    if (note) notes.add(`${named}: ${note}`)
  }
  return { documents: [...documents.values()], notes: [...notes] }
}
