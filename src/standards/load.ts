import { createHash } from 'node:crypto'
import { Standard } from './standard.js'

/** A table with the digest that names exactly this state of it. */
export type LoadedStandard = Standard & { digest: string }

/** What is looked at of a table before it is read as a whole. */
export interface Table {
  id: string
  revision: number
}

/** JSON with the keys of every object in code-unit order and no white space, so that equal tables have equal text. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`
  if (value === null || typeof value !== 'object') return JSON.stringify(value)
  const members = Object.entries(value).filter(([, member]) => member !== undefined)
  members.sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${members.map(([key, member]) => `${JSON.stringify(key)}:${canonicalJson(member)}`).join(',')}}`
}

const loaded = new WeakMap<Table, LoadedStandard>()

/**
 * A table read by its schema, once. The digest (SHA-256, FIPS 180-4) is that of the table as it is written, so that it changes when the
 * table does and not when the row type gains a field.
 * @throws {ZodError} for a table that breaks its schema: a fault of ours
 */
export function load(table: Table): LoadedStandard {
  const before = loaded.get(table)
  if (before) return before
  const digest = `sha256-${createHash('sha256').update(canonicalJson(table)).digest('base64url')}`
  const standard = { ...Standard.parse(table), digest }
  loaded.set(table, standard)
  return standard
}
