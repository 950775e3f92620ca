import type { Limit } from '../../src/standards/standard.js'

/** Small tables of invented standards, as they stand in files. No number in them is that of a standard, unless a test says so. */

type Json = Record<string, unknown>

export interface InventedTable extends Json {
  id: string
  revision: number
}

/** @param name `<standard>/<clause>/<slug>` */
export function row(name: string, quantity: string, limit: Partial<Limit> & Json, changes: Json = {}): Json {
  const { scope = {}, ...others } = changes
  return {
    requirement: name,
    clause: name.split('/')[1],
    title: `Row ${name}`,
    text: 'What an invented clause asks.',
    force: 'shall',
    stage: 'drawing',
    quantity,
    limit: { printed: 'as invented', ...limit },
    howToMeasure: 'With a rule.',
    citation: { source: 'I', confidence: 'verified' },
    scope: { uses: ['permanent-room'], clause: '1', ...(scope as Json) },
    ...others,
  }
}

export const length = (min?: number, max?: number): Json => ({
  kind: 'length',
  mm: { ...(min !== undefined && { min }), ...(max !== undefined && { max }) },
})

export const table = (id: string, requirements: Json[], changes: Json = {}): InventedTable => ({
  id,
  revision: 1,
  title: `The invented standard ${id}`,
  edition: '1',
  jurisdiction: 'Nowhere',
  kind: 'code',
  changes: [{ revision: 1, date: '2026-01-01', text: 'First table.' }],
  firstUnit: 'mm',
  sources: { I: { document: 'An invented document', where: 'nowhere' } },
  gaps: [],
  requirements,
  ...changes,
})
