import { createHash } from 'node:crypto'
import { Refusal, type Fault } from '../refusal.js'
import { Standard } from './standard.js'
import usAda2010 from './us-ada-2010.json' with { type: 'json' }

/** A table with the digest that names exactly this state of it. */
export type LoadedStandard = Standard & { digest: string }

/** Every table, in the order in which it is listed. One line per edition. */
const TABLES: unknown[] = [usAda2010]

/** JSON with the keys of every object in code-unit order and no white space, so that equal tables have equal text. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`
  if (value === null || typeof value !== 'object') return JSON.stringify(value)
  const members = Object.entries(value).filter(([, member]) => member !== undefined)
  members.sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${members.map(([key, member]) => `${JSON.stringify(key)}:${canonicalJson(member)}`).join(',')}}`
}

function load(table: unknown): LoadedStandard {
  const standard = Standard.parse(table)
  const digest = `sha256-${createHash('sha256').update(canonicalJson(standard)).digest('base64url')}`
  return { ...standard, digest }
}

const LOADED = TABLES.map(load)

export const listStandards = (): LoadedStandard[] => [...LOADED]

/**
 * The standards that a client names, each once, in the order named. An id may be pinned to a revision: `us-ada-2010@1`.
 * @throws {Refusal} `unknown-standard`, with a pointer to each name that is not known.
 */
export function findStandards(ids: string[]): LoadedStandard[] {
  const errors: Fault[] = []
  const found = new Set<LoadedStandard>()
  ids.forEach((id, i) => {
    const standard = find(id)
    if (standard) found.add(standard)
    else errors.push({ detail: whyUnknown(id), pointer: `/standards/${i}` })
  })
  if (errors.length > 0) throw new Refusal('unknown-standard', errors.map((e) => e.detail).join(' '), errors)
  return [...found]
}

const named = ({ id, revision }: LoadedStandard): string[] => [id, `${id}@${revision}`]

const find = (id: string): LoadedStandard | undefined => LOADED.find((standard) => named(standard).includes(id))

/** Names are echoed in messages up to this many characters. */
const LONGEST_ECHO = 60

function whyUnknown(id: string): string {
  const known = LOADED.map((s) => s.id).join(', ')
  const [name] = id.split('@')
  const standard = LOADED.find((s) => s.id === name)
  if (standard)
    return `The standard ${standard.id} is here in revision ${standard.revision} only; send ${standard.id}@${standard.revision}.`
  return `The standard “${id.slice(0, LONGEST_ECHO)}” is not known here. Known are: ${known}.`
}
