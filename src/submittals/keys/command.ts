import { parseArgs } from 'node:util'
import { z } from 'zod'
import { AtLimit, NotKept } from '../keeping.js'
import type { Database, KeyRow } from '../store/tables.js'
import { createKey, listKeys, revokeKey } from './keys.js'
import { Expires, Label, OrganisationName, Rate, Scopes } from './new-key.js'
import { findOrganisation, listOrganisations, organisationNamed } from './organisations.js'
import type { Scope } from './scopes.js'

/** `npm run keys -- …`: makes, lists and revokes keys of any organisation, while the service runs or not. */

export const USAGE = `Usage:
  npm run --silent keys -- create --organisation NAME --label LABEL [--scopes check,read,write] [--expires YYYY-MM-DD] [--rate REQUESTS-A-MINUTE]
  npm run --silent keys -- list [--organisation NAME]
  npm run --silent keys -- revoke ID
`

/** What is written: `out` is the result, `error` is told beside it. `status` is the exit status. */
export interface Said {
  out: string
  error: string
  status: 0 | 1
}

const OPTIONS = {
  organisation: { type: 'string' },
  label: { type: 'string' },
  scopes: { type: 'string' },
  expires: { type: 'string' },
  rate: { type: 'string' },
} as const

type Values = Partial<Record<keyof typeof OPTIONS, string>>

/** @param given the arguments behind `--` */
export async function runKeysCommand(given: string[], db: Database): Promise<Said> {
  let read
  try {
    read = parseArgs({ args: given, options: OPTIONS, allowPositionals: true })
  } catch (error) {
    return refused(`${error instanceof Error ? error.message : 'The arguments cannot be read.'}\n${USAGE}`)
  }
  const { values } = read
  const [action, id, ...rest] = read.positionals
  if (action === 'create' && id === undefined) return create(db, values)
  if (action === 'list' && id === undefined) return list(db, values.organisation)
  if (action === 'revoke' && id !== undefined && rest.length === 0) return revoke(db, id)
  return refused(USAGE)
}

const Create = z.object({
  organisation: z.string('is missing').pipe(OrganisationName),
  label: z.string('is missing').pipe(Label),
  scopes: Scopes,
  expires: Expires.nullable(),
  rate: Rate.nullable(),
})

/** What a key may do of which nothing else was said. */
const USUAL: Scope[] = ['check', 'read', 'write']

async function create(db: Database, { organisation, label, scopes, expires, rate }: Values): Promise<Said> {
  const parsed = Create.safeParse({
    organisation,
    label,
    scopes: scopes === undefined ? USUAL : scopes.split(',').map((scope) => scope.trim()),
    expires: expires ?? null,
    rate: rate === undefined ? null : Number(rate),
  })
  if (!parsed.success)
    return refused(parsed.error.issues.map(({ path, message }) => `--${String(path[0])} ${message}\n`).join(''))
  const { organisation: name, ...key } = parsed.data
  const owner = await organisationNamed(db, name.trim())
  try {
    const { row, token } = await createKey(db, owner.id, key)
    const told = `Key ${row.id} of ${owner.name}. It is shown this once and cannot be shown again:\n`
    return { out: `${token}\n`, error: told, status: 0 }
  } catch (error) {
    if (error instanceof AtLimit) return refused(`${error.message}\n`)
    throw error
  }
}

async function list(db: Database, name: string | undefined): Promise<Said> {
  const organisation = name === undefined ? undefined : await findOrganisation(db, name.trim())
  if (name !== undefined && !organisation) return refused(`There is no organisation “${name}”.\n`)
  const names = new Map((await listOrganisations(db)).map(({ id, name }) => [id, name]))
  const rows = await listKeys(db, organisation?.id)
  const lines = rows.map((row) => lineOf(row, names.get(row.organisation) ?? ''))
  const heading = ['id', 'organisation', 'label', 'scopes', 'made', 'ends', 'revoked', 'last used', 'rate']
  return { out: [heading, ...lines].map((line) => `${line.join('\t')}\n`).join(''), error: '', status: 0 }
}

const lineOf = (row: KeyRow, organisation: string): string[] => [
  row.id,
  organisation,
  row.label,
  (JSON.parse(row.scopes) as Scope[]).join(','),
  row.created_at,
  row.expires_at ?? '-',
  row.revoked_at ?? '-',
  row.last_used_at ?? '-',
  row.rate === null ? '-' : String(row.rate),
]

async function revoke(db: Database, id: string): Promise<Said> {
  try {
    await revokeKey(db, id)
    return { out: '', error: `Key ${id} is revoked.\n`, status: 0 }
  } catch (error) {
    if (error instanceof NotKept) return refused(`There is no key ${id}.\n`)
    throw error
  }
}

const refused = (error: string): Said => ({ out: '', error, status: 1 })
